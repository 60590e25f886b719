// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"
#include "core/review/known_unit.h"
#include "core/review/unit_forecast.h"
#include "core/review/unit_review.h"

#include <memory>

namespace padside {

/// One unit's record and what it means today, read together; the page's models are windows on it.
struct UnitSnapshot
{
    UnitRecord record;
    UnitReview review;
    UnitForecast forecast{};
    KnownUnit known{}; ///< what both were drawn from
};

using UnitSnapshotPtr = std::shared_ptr<const UnitSnapshot>;

} // namespace padside

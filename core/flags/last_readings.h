// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/flags/unit_view.h"
#include "core/verdict/measured.h"
#include "core/verdict/verdict.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// What was said of the readings of one visit, as left where a subject was taken again.
struct LastReadings
{
    const Visit* visit = nullptr;
    std::vector<Verdict> verdicts;
};

/// Of the last visit that took a reading; for `kind`, of the last that took one of it. Empty if there is none.
[[nodiscard]] std::optional<LastReadings> lastReadings(const UnitView& unit, const std::string& kind = {});

/// The readings a verdict was drawn from.
[[nodiscard]] std::vector<ReadingId> readingsBehind(const UnitView& unit, const Visit& visit, const Verdict& verdict);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"

#include <optional>

namespace padside {

/// When something is spent: the days on which its chance reaches 10, 50 and 90 %; empty where that is too far away.
struct SpentDates
{
    std::optional<Date> early;
    std::optional<Date> middle;
    std::optional<Date> late;

    friend bool operator==(const SpentDates&, const SpentDates&) = default;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"

#include <array>

namespace padside {

/// The days an outlook is told for: the next visit at the latest, and what one plans for.
enum class Horizon { nextVisit, oneYear, twoYears, fiveYears };

/// How far ahead each of them lies, in months.
constexpr std::array horizonMonths{6, 12, 24, 60};
constexpr std::size_t horizonCount = horizonMonths.size();

/// The horizons reckoned from `today`.
[[nodiscard]] inline std::array<Date, horizonCount> horizonsAfter(Date today)
{
    std::array<Date, horizonCount> days{};
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon)
        days[horizon] = addMonths(today, horizonMonths[horizon]);
    return days;
}

} // namespace padside

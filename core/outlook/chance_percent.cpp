// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/chance_percent.h"

#include <algorithm>
#include <cmath>

namespace padside {

Number chancePercent(double chance)
{
    constexpr double fineBelow = 9.95; // as one decimal shows it: 10.0
    constexpr double most = 99;
    const double percent = std::min(100 * chance, most);
    return {percent, percent < fineBelow ? 1 : 0};
}

std::pair<Number, Number> chancePercents(double before, double after)
{
    std::pair<Number, Number> both{chancePercent(before), chancePercent(after)};
    auto& [one, other] = both;
    if (one.decimals == 0 && other.decimals == 0 && std::round(one.value) == std::round(other.value))
        one.decimals = other.decimals = 1;
    return both;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/chance_percent.h"

#include <algorithm>

namespace padside {

Number chancePercent(double chance)
{
    constexpr double fineBelow = 9.95; // as one decimal shows it: 10.0
    constexpr double most = 99;
    const double percent = std::min(100 * chance, most);
    return {percent, percent < fineBelow ? 1 : 0};
}

} // namespace padside

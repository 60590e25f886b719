// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/inspection_interval.h"

#include "core/quantity/date.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace padside {

double halfLifeInterval(double remainingYears, double mostYears)
{
    assert(remainingYears >= 0);
    return std::min(remainingYears / 2, mostYears);
}

double vesselInterval(double remainingYears)
{
    constexpr double mostYears = 10;
    constexpr double shortLifeYears = 4;
    constexpr double mostYearsOfShortLife = 2;
    if (remainingYears < shortLifeYears)
        return std::min(remainingYears, mostYearsOfShortLife);
    return halfLifeInterval(remainingYears, mostYears);
}

double outsideLookInterval(double remainingYears)
{
    constexpr double mostYears = 5;
    return std::min(vesselInterval(remainingYears), mostYears);
}

Date dayAfter(Date last, double intervalYears)
{
    assert(intervalYears >= 0 && intervalYears <= 1000);
    return last + std::chrono::days(static_cast<int>(std::floor(intervalYears * daysInAYear)));
}

} // namespace padside

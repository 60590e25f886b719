// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/energy_use.h"

#include "core/worth/compound_interest.h"

#include <cmath>

namespace padside {

namespace {

constexpr double wattsPerBtuPerHour = 0.29307107017;

bool isUsable(double value)
{
    return value > 0 && std::isfinite(value);
}

} // namespace

Result<double> coolingEnergyKwh(double capacityW, double fullLoadHours, double seer)
{
    if (!isUsable(capacityW) || !isUsable(fullLoadHours) || !isUsable(seer)) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("Capacity, hours and seasonal efficiency must be above 0. Check the three."));
    }
    return capacityW / wattsPerBtuPerHour * fullLoadHours / (seer * 1000);
}

Result<double> efficiencyLeft(double yearlyLoss, double years)
{
    constexpr double largestLoss = 0.5;
    if (!(yearlyLoss >= 0 && yearlyLoss <= largestLoss) || !(years >= 0 && years <= mostYears)) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("A yearly loss of efficiency lies between 0 and 50 %, over at most {0} years."),
                       {static_cast<std::int64_t>(mostYears)});
    }
    return std::pow(1 - yearlyLoss, years);
}

} // namespace padside

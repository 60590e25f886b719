// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/verdict/electrical.h"

#include <cmath>
#include <numbers>

namespace padside {

Result<double> capacitanceUnderLoad(double currentA, double voltageV, double hertz)
{
    const auto usable = [](double value) { return value > 0 && std::isfinite(value); };
    if (!usable(currentA) || !usable(voltageV) || !usable(hertz)) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("A capacitor under load needs a current and a voltage above zero."));
    }
    return currentA / (2 * std::numbers::pi * hertz * voltageV);
}

double extraWindingHeat(double imbalance)
{
    const double percent = imbalance * 100;
    return 2 * percent * percent / 100;
}

double insulationAt40C(double ohms, double temperatureK)
{
    constexpr double fortyK = 313.15;
    constexpr double halvingK = 10;
    return ohms * std::pow(0.5, (fortyK - temperatureK) / halvingK);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/refrigerant/saturation.h"

#include "core/quantity/amounts.h"
#include "core/quantity/inverse.h"

#include <cmath>

namespace padside {

namespace {

// An end of the range typed in another unit differs in its last bits.
constexpr double sameEnd = 1e-8;

bool within(double value, double low, double high)
{
    return value >= low * (1 - sameEnd) && value <= high * (1 + sameEnd);
}

Result<double> pressureOn(const SaturationCurve& curve, const Refrigerant& refrigerant, double temperatureK)
{
    if (!std::isfinite(temperatureK))
        return problem(ProblemKind::badInput, PADSIDE_SAY("The temperature of the refrigerant is not a number."));
    const double highest = highestSaturationK(refrigerant);
    if (!within(temperatureK, refrigerant.lowestK, highest)) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("{0} is outside the range in which the pressure of {1} is known, {2} to {3}."),
                       {temperatureAmount(temperatureK), refrigerant.code, temperatureAmount(refrigerant.lowestK),
                        temperatureAmount(highest)});
    }
    return curvePressurePa(curve, temperatureK);
}

Result<double> temperatureOn(const SaturationCurve& curve, const Refrigerant& refrigerant, double absolutePa)
{
    if (!std::isfinite(absolutePa))
        return problem(ProblemKind::badInput, PADSIDE_SAY("The pressure of the refrigerant is not a number."));
    if (absolutePa <= 0) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("An absolute pressure of {0} can't be: even a vacuum has 0. Is it a gauge pressure?"),
            {absolutePressureAmount(absolutePa)});
    }
    const double highest = highestSaturationK(refrigerant);
    const double lowestPa = curvePressurePa(curve, refrigerant.lowestK);
    const double highestPa = curvePressurePa(curve, highest);
    if (!within(absolutePa, lowestPa, highestPa)) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("{0} is outside the range in which the temperature of {1} is known, {2} to {3} ({4} to {5})."),
            {absolutePressureAmount(absolutePa), refrigerant.code, absolutePressureAmount(lowestPa),
             absolutePressureAmount(highestPa), temperatureAmount(refrigerant.lowestK), temperatureAmount(highest)});
    }
    // The logarithm is nearly straight in 1/T, which the search likes.
    const auto logPressure = [&curve](double reciprocal) { return std::log(curvePressurePa(curve, -1 / reciprocal)); };
    return -1 / inverseOfRising(logPressure, std::log(absolutePa), -1 / refrigerant.lowestK, -1 / highest);
}

} // namespace

Result<double> bubblePressurePa(const Refrigerant& refrigerant, double temperatureK)
{
    return pressureOn(refrigerant.bubble, refrigerant, temperatureK);
}

Result<double> dewPressurePa(const Refrigerant& refrigerant, double temperatureK)
{
    return pressureOn(refrigerant.dew, refrigerant, temperatureK);
}

Result<double> bubbleTemperatureK(const Refrigerant& refrigerant, double absolutePa)
{
    return temperatureOn(refrigerant.bubble, refrigerant, absolutePa);
}

Result<double> dewTemperatureK(const Refrigerant& refrigerant, double absolutePa)
{
    return temperatureOn(refrigerant.dew, refrigerant, absolutePa);
}

} // namespace padside

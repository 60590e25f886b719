// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/water_vapour.h"

#include "core/air/psychrometry.h"
#include "core/quantity/amounts.h"
#include "core/quantity/inverse.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double rounding = 1e-12; ///< a pressure from the end of the range may lie beside it by its last digits

} // namespace

Result<double> saturationPressureOfWaterPa(double temperatureK)
{
    if (!std::isfinite(temperatureK))
        return problem(ProblemKind::badInput, PADSIDE_SAY("The temperature is not a number."));
    if (temperatureK < lowestVapourTemperatureK || temperatureK > highestVapourTemperatureK) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("{0} is outside the range in which the pressure of water vapour is known, {1} to {2}."),
            {temperatureAmount(temperatureK), temperatureAmount(lowestVapourTemperatureK),
             temperatureAmount(highestVapourTemperatureK)});
    }
    return waterSaturationPa(temperatureK);
}

Result<double> dewPointOfVapourK(double vapourPressurePa)
{
    if (!std::isfinite(vapourPressurePa))
        return problem(ProblemKind::badInput, PADSIDE_SAY("The pressure of the vapour is not a number."));
    const double lowest = waterSaturationPa(lowestVapourTemperatureK);
    const double highest = waterSaturationPa(highestVapourTemperatureK);
    if (vapourPressurePa < lowest * (1 - rounding)) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("Air this dry has its dew point below {0}, where it is not known any more."),
                       {temperatureAmount(lowestVapourTemperatureK)});
    }
    if (vapourPressurePa > highest * (1 + rounding)) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("Vapour of this pressure has its dew point above {0}, where it is not known any more."),
            {temperatureAmount(highestVapourTemperatureK)});
    }
    return inverseOfRising(waterSaturationPa, std::clamp(vapourPressurePa, lowest, highest), lowestVapourTemperatureK,
                           highestVapourTemperatureK);
}

} // namespace padside

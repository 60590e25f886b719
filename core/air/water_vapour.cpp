// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/water_vapour.h"

#include "core/air/psychrometry.h"
#include "core/quantity/amounts.h"
#include "core/quantity/inverse.h"

#include <cmath>

namespace padside {

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
    if (vapourPressurePa < waterSaturationPa(lowestVapourTemperatureK)) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("Air this dry has its dew point below {0}, where it is not known any more."),
                       {temperatureAmount(lowestVapourTemperatureK)});
    }
    if (vapourPressurePa > waterSaturationPa(highestVapourTemperatureK)) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("Vapour of this pressure has its dew point above {0}, where it is not known any more."),
            {temperatureAmount(highestVapourTemperatureK)});
    }
    return inverseOfRising(waterSaturationPa, vapourPressurePa, lowestVapourTemperatureK, highestVapourTemperatureK);
}

} // namespace padside

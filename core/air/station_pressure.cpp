// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/station_pressure.h"

#include <cmath>

namespace padside {

namespace {

// ICAO Doc 7488, table A.
constexpr double seaLevelTemperatureK = 288.15;
constexpr double lapseKPerM = 0.0065;
constexpr double gravity = 9.80665; // m/s2
constexpr double airConstant = 287.05287; // J/(kg K)

} // namespace

Result<double> standardTemperatureK(double altitudeM)
{
    if (!std::isfinite(altitudeM))
        return problem(ProblemKind::badInput, PADSIDE_SAY("The altitude is not a number."));
    if (altitudeM < lowestAltitudeM || altitudeM > highestAltitudeM) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("An altitude of {0} m is outside {1} to {2} m. Give the height above the sea."),
                       {Number{altitudeM, 0}, Number{lowestAltitudeM, 0}, Number{highestAltitudeM, 0}});
    }
    return seaLevelTemperatureK - lapseKPerM * altitudeM;
}

Result<double> stationPressurePa(double altitudeM)
{
    return standardTemperatureK(altitudeM).map([](double temperatureK) {
        return seaLevelPressurePa * std::pow(temperatureK / seaLevelTemperatureK, gravity / (airConstant * lapseKPerM));
    });
}

} // namespace padside

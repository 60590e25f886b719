// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/air_from_pairs.h"

#include "core/air/psychrometry.h"
#include "core/air/water_vapour.h"
#include "core/quantity/amounts.h"
#include "core/quantity/inverse.h"

#include <algorithm>

namespace padside {

namespace {

// Two equal temperatures typed in different units differ in their last bits.
constexpr double sameTemperatureK = 1e-6;

tl::unexpected<Problem> colderExpected(double shouldBeColderK, double thanK, std::string pattern)
{
    return problem(ProblemKind::badInput, std::move(pattern),
                   {temperatureAmount(shouldBeColderK), temperatureAmount(thanK)});
}

Result<AirAndVapour> fromBulbs(double dryBulbK, double wetBulbK, double stationPa)
{
    if (wetBulbK > dryBulbK + sameTemperatureK) {
        return colderExpected(
            wetBulbK, dryBulbK,
            PADSIDE_SAY("The wet bulb ({0}) is above the dry bulb ({1}), which never happens. Look at the two again."));
    }
    const double ratio = humidityRatioFromBulbs(dryBulbK, std::min(wetBulbK, dryBulbK), stationPa);
    if (ratio <= 0) {
        return colderExpected(
            wetBulbK, dryBulbK,
            PADSIDE_SAY("A wet bulb of {0} is colder than even dry air of {1} makes it. Look at the two again."));
    }
    return AirAndVapour{dryBulbK, vapourFromHumidityRatio(ratio, stationPa)};
}

Result<AirAndVapour> fromDryBulbAndDewPoint(double dryBulbK, double dewPointK)
{
    if (dewPointK > dryBulbK + sameTemperatureK) {
        return colderExpected(
            dewPointK, dryBulbK,
            PADSIDE_SAY(
                "The dew point ({0}) is above the dry bulb ({1}), which never happens. Look at the two again."));
    }
    return AirAndVapour{dryBulbK, waterSaturationPa(std::min(dewPointK, dryBulbK))};
}

Result<AirAndVapour> fromWetBulbAndDewPoint(double wetBulbK, double dewPointK, double stationPa)
{
    if (dewPointK > wetBulbK + sameTemperatureK) {
        return colderExpected(
            dewPointK, wetBulbK,
            PADSIDE_SAY(
                "The dew point ({0}) is above the wet bulb ({1}), which never happens. Look at the two again."));
    }
    const double vapour = waterSaturationPa(std::min(dewPointK, wetBulbK));
    const double dryBulb = dryBulbFromWetBulb(wetBulbK, humidityRatioFromVapour(vapour, stationPa), stationPa);
    if (!(dryBulb <= highestVapourTemperatureK)) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("A wet bulb of {0} beside a dew point of {1} asks for air hotter than {2}."),
            {temperatureAmount(wetBulbK), temperatureAmount(dewPointK), temperatureAmount(highestVapourTemperatureK)});
    }
    return AirAndVapour{std::max(dryBulb, wetBulbK), vapour};
}

Result<AirAndVapour> fromHumidityAndDewPoint(double humidity, double dewPointK)
{
    const double vapour = waterSaturationPa(dewPointK);
    const double saturated = vapour / humidity;
    if (saturated > waterSaturationPa(highestVapourTemperatureK)) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("A dew point of {0} at {1} % relative humidity asks for air hotter than {2}."),
            {temperatureAmount(dewPointK), Number{humidity * 100, 1}, temperatureAmount(highestVapourTemperatureK)});
    }
    return AirAndVapour{inverseOfRising(waterSaturationPa, saturated, dewPointK, highestVapourTemperatureK), vapour};
}

Result<AirAndVapour> fromHumidityAndWetBulb(double humidity, double wetBulbK, double stationPa)
{
    // Beside one wet bulb, the hotter the air the drier it is.
    const auto vapourAt = [=](double dryBulbK) {
        return vapourFromHumidityRatio(humidityRatioFromBulbs(dryBulbK, wetBulbK, stationPa), stationPa);
    };
    const auto dryness = [&](double dryBulbK) { return -vapourAt(dryBulbK) / waterSaturationPa(dryBulbK); };
    const double hottest = std::min(dryBulbFromWetBulb(wetBulbK, 0, stationPa), highestVapourTemperatureK);
    if (dryness(hottest) < -humidity) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("A wet bulb of {0} at {1} % relative humidity asks for air hotter than {2}."),
            {temperatureAmount(wetBulbK), Number{humidity * 100, 1}, temperatureAmount(highestVapourTemperatureK)});
    }
    const double dryBulb = inverseOfRising(dryness, -humidity, wetBulbK, hottest);
    return AirAndVapour{dryBulb, humidity * waterSaturationPa(dryBulb)};
}

} // namespace

Result<AirAndVapour> airFromPair(const AirReadings& readings, double stationPressurePa)
{
    const auto& [dryBulb, humidity, wetBulb, dewPoint] = readings;
    if (dryBulb && humidity)
        return AirAndVapour{*dryBulb, *humidity * waterSaturationPa(*dryBulb)};
    if (dryBulb && wetBulb)
        return fromBulbs(*dryBulb, *wetBulb, stationPressurePa);
    if (dryBulb)
        return fromDryBulbAndDewPoint(*dryBulb, *dewPoint);
    if (humidity && dewPoint)
        return fromHumidityAndDewPoint(*humidity, *dewPoint);
    if (humidity)
        return fromHumidityAndWetBulb(*humidity, *wetBulb, stationPressurePa);
    return fromWetBulbAndDewPoint(*wetBulb, *dewPoint, stationPressurePa);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/moist_air.h"

#include "core/air/air_from_pairs.h"
#include "core/air/psychrometry.h"
#include "core/air/water_vapour.h"
#include "core/quantity/amounts.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace padside {

namespace {

constexpr double bisectedToK = 1e-9;
constexpr double freezingK = 273.15;

using Trouble = std::optional<Problem>;

Problem badReading(std::string pattern, std::vector<Argument> arguments = {})
{
    return Problem{ProblemKind::badInput, Sentence{std::move(pattern), std::move(arguments)}};
}

Trouble troubleWithTemperature(const std::optional<double>& temperatureK, const char* name)
{
    if (!temperatureK)
        return std::nullopt;
    if (!std::isfinite(*temperatureK))
        return badReading(PADSIDE_SAY("The {0} is not a number."), {Word{name}});
    if (*temperatureK >= lowestVapourTemperatureK && *temperatureK <= highestVapourTemperatureK)
        return std::nullopt;
    return badReading(PADSIDE_SAY("The {0} of {1} is outside {2} to {3}, where air can be worked out."),
                      {Word{name}, temperatureAmount(*temperatureK), temperatureAmount(lowestVapourTemperatureK),
                       temperatureAmount(highestVapourTemperatureK)});
}

Trouble troubleWithHumidity(const std::optional<double>& humidity)
{
    if (!humidity)
        return std::nullopt;
    if (!std::isfinite(*humidity))
        return badReading(PADSIDE_SAY("The {0} is not a number."), {Word{PADSIDE_SAY("relative humidity")}});
    if (*humidity > 0 && *humidity <= 1)
        return std::nullopt;
    return badReading(PADSIDE_SAY("A relative humidity of {0} % can't be: it is above 0 and at most 100 %."),
                      {Number{*humidity * 100, 1}});
}

Trouble troubleWithStation(double stationPressurePa)
{
    if (!std::isfinite(stationPressurePa))
        return badReading(PADSIDE_SAY("The {0} is not a number."), {Word{PADSIDE_SAY("station pressure")}});
    if (stationPressurePa >= lowestStationPressurePa && stationPressurePa <= highestStationPressurePa)
        return std::nullopt;
    return badReading(PADSIDE_SAY("A station pressure of {0} is outside {1} to {2}: no air outdoors has that."),
                      {absolutePressureAmount(stationPressurePa), absolutePressureAmount(lowestStationPressurePa),
                       absolutePressureAmount(highestStationPressurePa)});
}

Trouble troubleWith(const AirReadings& readings, double stationPressurePa)
{
    const auto& [dryBulb, humidity, wetBulb, dewPoint] = readings;
    const std::int64_t given
        = int{dryBulb.has_value()} + int{humidity.has_value()} + int{wetBulb.has_value()} + int{dewPoint.has_value()};
    if (given != 2) {
        return badReading(
            PADSIDE_SAY("Exactly two of dry bulb, relative humidity, wet bulb and dew point are needed to "
                        "know the air; {0} are given."),
            {given});
    }
    for (const Trouble& trouble :
         {troubleWithTemperature(dryBulb, PADSIDE_SAY("dry bulb")), troubleWithHumidity(humidity),
          troubleWithTemperature(wetBulb, PADSIDE_SAY("wet bulb")),
          troubleWithTemperature(dewPoint, PADSIDE_SAY("dew point")), troubleWithStation(stationPressurePa)}) {
        if (trouble)
            return trouble;
    }
    return std::nullopt;
}

/// Vapour at the pressure of the air around it boils: the equations end there.
bool boils(const AirReadings& readings, double stationPressurePa)
{
    for (const auto& temperature : {readings.dryBulbK, readings.wetBulbK, readings.dewPointK}) {
        if (temperature && waterSaturationPa(*temperature) >= stationPressurePa)
            return true;
    }
    return false;
}

Problem boiling(double stationPressurePa)
{
    return badReading(
        PADSIDE_SAY("Air this hot makes water boil at a station pressure of {0}; it can't be worked out."),
        {absolutePressureAmount(stationPressurePa)});
}

double wetBulbBetween(double dewPointK, double dryBulbK, double humidityRatio, double stationPressurePa)
{
    double low = dewPointK;
    double high = dryBulbK;
    while (high - low > bisectedToK) {
        const double middle = low + (high - low) / 2;
        const bool tooWet = humidityRatioFromBulbs(dryBulbK, middle, stationPressurePa) > humidityRatio;
        (tooWet ? high : low) = middle;
    }
    return low + (high - low) / 2;
}

} // namespace

Result<MoistAir> moistAir(const AirReadings& readings, double stationPressurePa)
{
    if (auto trouble = troubleWith(readings, stationPressurePa))
        return tl::unexpected(*std::move(trouble));
    if (boils(readings, stationPressurePa))
        return tl::unexpected(boiling(stationPressurePa));
    const auto found = airFromPair(readings, stationPressurePa);
    if (!found)
        return tl::unexpected(found.error());
    const double saturation = waterSaturationPa(found->dryBulbK);
    if (saturation >= stationPressurePa)
        return tl::unexpected(boiling(stationPressurePa));
    const double vapour = std::min(found->vapourPressurePa, saturation);
    const auto dewPoint = readings.dewPointK ? Result<double>(*readings.dewPointK) : dewPointOfVapourK(vapour);
    if (!dewPoint)
        return tl::unexpected(dewPoint.error());

    MoistAir air;
    air.dryBulbK = found->dryBulbK;
    air.stationPressurePa = stationPressurePa;
    air.saturationPressurePa = saturation;
    air.relativeHumidity = readings.relativeHumidity.value_or(vapour / saturation);
    air.humidityRatio = humidityRatioFromVapour(vapour, stationPressurePa);
    air.dewPointK = std::min(*dewPoint, air.dryBulbK);
    air.wetBulbK = readings.wetBulbK
        ? std::min(*readings.wetBulbK, air.dryBulbK)
        : wetBulbBetween(air.dewPointK, air.dryBulbK, air.humidityRatio, stationPressurePa);
    air.dewPointK = std::min(air.dewPointK, air.wetBulbK);
    return air;
}

double moistAirEnthalpyJPerKg(double dryBulbK, double humidityRatio)
{
    const double celsius = dryBulbK - freezingK;
    return 1e3 * (1.006 * celsius + humidityRatio * (2501 + 1.86 * celsius));
}

double moistAirVolumeM3PerKg(double dryBulbK, double humidityRatio, double stationPressurePa)
{
    return 287.042 * dryBulbK * (1 + 1.607858 * humidityRatio) / stationPressurePa;
}

} // namespace padside

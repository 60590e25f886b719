// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/commands/calc/site_altitude.h"
#include "app/commands/calc/topics.h"
#include "core/air/moist_air.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <optional>

namespace padside {

namespace {

/// What was typed behind each option; empty: not given.
struct TypedAir
{
    std::string dryBulb;
    std::string humidity;
    std::string wetBulb;
    std::string dewPoint;
    std::string altitude;
};

std::optional<double> ifTyped(const std::string& option, const std::string& text, QuantityKind kind)
{
    return text.empty() ? std::nullopt : std::optional(typedSi(option, text, kind));
}

/// dew_point_C, wet_bulb_C, rh_percent, humidity_ratio, saturation_pressure_Pa, station_pressure_Pa, and beside them
/// dry_bulb_C and enthalpy_kJ_per_kg, from any two readings.
nlohmann::ordered_json airAnswer(const TypedAir& typed)
{
    const AirReadings readings{ifTyped("--dry-bulb", typed.dryBulb, QuantityKind::temperature),
                               ifTyped("--rh", typed.humidity, QuantityKind::ratio),
                               ifTyped("--wet-bulb", typed.wetBulb, QuantityKind::temperature),
                               ifTyped("--dew-point", typed.dewPoint, QuantityKind::temperature)};
    const MoistAir air = orThrow(moistAir(readings, typedStationPressurePa(typed.altitude)));
    return {{"dry_bulb_C", inCelsius(air.dryBulbK)},
            {"rh_percent", air.relativeHumidity * 100},
            {"wet_bulb_C", inCelsius(air.wetBulbK)},
            {"dew_point_C", inCelsius(air.dewPointK)},
            {"humidity_ratio", air.humidityRatio},
            {"enthalpy_kJ_per_kg", moistAirEnthalpyJPerKg(air.dryBulbK, air.humidityRatio) / 1e3},
            {"saturation_pressure_Pa", air.saturationPressurePa},
            {"station_pressure_Pa", air.stationPressurePa}};
}

} // namespace

void addAirTopics(CLI::App& calc, Command& chosen)
{
    const auto typed = std::make_shared<TypedAir>();
    CLI::App* topic = addTopic(calc, chosen, "air", "Dew point, wet bulb and humidity of air from any two of them",
                               [typed] { return airAnswer(*typed); });
    topic->add_option("--dry-bulb", typed->dryBulb, "temperature of the air")->type_name("TEMPERATURE");
    topic->add_option("--rh", typed->humidity, "relative humidity")->type_name("PERCENT");
    topic->add_option("--wet-bulb", typed->wetBulb, "temperature of the wet bulb")->type_name("TEMPERATURE");
    topic->add_option("--dew-point", typed->dewPoint, "dew point")->type_name("TEMPERATURE");
    addAltitudeOption(*topic, typed->altitude);
}

} // namespace padside

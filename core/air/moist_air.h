// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <optional>

namespace padside {

/// Air with water in it. All of it is finite and agrees with itself: dew point <= wet bulb <= dry bulb.
struct MoistAir
{
    double dryBulbK = 0;
    double relativeHumidity = 0; ///< above 0, at most 1; over ice up to the triple point, as ASHRAE has it
    double wetBulbK = 0; ///< thermodynamic; an ice bulb below 0 °C
    double dewPointK = 0; ///< frost point up to the triple point
    double humidityRatio = 0; ///< kg of water per kg of dry air
    double saturationPressurePa = 0; ///< of water at dry bulb
    double stationPressurePa = 0;

    friend bool operator==(const MoistAir&, const MoistAir&) = default;
};

/// What was read of the air; two of them are enough.
struct AirReadings
{
    std::optional<double> dryBulbK = std::nullopt;
    std::optional<double> relativeHumidity = std::nullopt; ///< 0..1
    std::optional<double> wetBulbK = std::nullopt;
    std::optional<double> dewPointK = std::nullopt;
};

constexpr double lowestStationPressurePa = 20e3; ///< above every mountain
constexpr double highestStationPressurePa = 120e3;

/// The state of the air from exactly two readings, whichever (ASHRAE Handbook, Fundamentals, ch. 1). What was given is
/// given back as it is.
///
/// A Problem says what can't be: fewer or more than two readings, no numbers, a relative humidity that is 0 or outside
/// 0..1, temperatures outside -100..200 °C, wet bulb above dry bulb, dew point above either, a wet bulb lower than dry
/// air gives, a dew point below -100 °C, air so hot that water boils at its station pressure.
///
/// Close to freezing the two equations for a wet and for an iced bulb overlap: for some air (about 0.5 K wide) a bulb
/// just above and one just below 0 °C are both right. The one that halving the way from dew point to dry bulb comes
/// upon is given, as is usual.
[[nodiscard]] Result<MoistAir> moistAir(const AirReadings& readings, double stationPressurePa);

/// Enthalpy per kg of dry air, J, from 0 °C dry air and liquid water (ASHRAE eq. 30). NaN where an argument is.
[[nodiscard]] double moistAirEnthalpyJPerKg(double dryBulbK, double humidityRatio);

/// Volume of moist air per kg of dry air, m3 (ASHRAE eq. 26).
[[nodiscard]] double moistAirVolumeM3PerKg(double dryBulbK, double humidityRatio, double stationPressurePa);

} // namespace padside

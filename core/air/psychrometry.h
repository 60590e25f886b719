// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace padside {

// The bare formulas of the ASHRAE Handbook, Fundamentals, ch. 1. Arguments are not checked here: what a person or a
// file gives goes through water_vapour.h and moist_air.h.

constexpr double iceBulbBelowK = 273.15; ///< a wet bulb colder than this is covered with ice
constexpr double triplePointK = 273.16; ///< below it water vapour settles as ice

/// Saturation pressure of water, Pa: over ice up to the triple point, over liquid water above (Hyland and Wexler 1983;
/// eq. 5 and 6). 173.15 to 473.15 K.
[[nodiscard]] double waterSaturationPa(double temperatureK);

/// kg of water per kg of dry air, from the pressure of the vapour (eq. 20); vapour below station pressure.
[[nodiscard]] double humidityRatioFromVapour(double vapourPressurePa, double stationPressurePa);

/// The pressure of the vapour, Pa, from the humidity ratio.
[[nodiscard]] double vapourFromHumidityRatio(double humidityRatio, double stationPressurePa);

/// Humidity ratio of air of which a wet and a dry bulb are read (eq. 33; below freezing eq. 35). Negative where no air
/// is that dry.
[[nodiscard]] double humidityRatioFromBulbs(double dryBulbK, double wetBulbK, double stationPressurePa);

/// The dry bulb beside which this wet bulb is read in air of this humidity ratio (the same equations turned round).
[[nodiscard]] double dryBulbFromWetBulb(double wetBulbK, double humidityRatio, double stationPressurePa);

} // namespace padside

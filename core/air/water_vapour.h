// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

namespace padside {

constexpr double lowestVapourTemperatureK = 173.15; ///< -100 °C
constexpr double highestVapourTemperatureK = 473.15; ///< 200 °C

/// Saturation pressure of water vapour, Pa, over ice up to the triple point (273.16 K) and over liquid water above:
/// Hyland and Wexler (1983), as in the ASHRAE Handbook, Fundamentals, ch. 1. Outside
/// lowestVapourTemperatureK..highestVapourTemperatureK, or no number: a Problem.
[[nodiscard]] Result<double> saturationPressureOfWaterPa(double temperatureK);

/// The temperature at which vapour of this pressure begins to settle, K: the same equations turned round, to the last
/// few bits. A pressure whose dew point lies outside their range, or no number: a Problem.
[[nodiscard]] Result<double> dewPointOfVapourK(double vapourPressurePa);

} // namespace padside

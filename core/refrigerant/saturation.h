// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/refrigerant.h"
#include "core/quantity/problem.h"

namespace padside {

// Saturation of a refrigerant from its published curves. Pressures are absolute: a gauge pressure becomes one with the
// station pressure (core/air/station_pressure.h). Superheat goes by the dew curve, subcooling by the bubble curve; of a
// pure fluid they are the same. Outside the curves' range (refrigerant.lowestK to highestSaturationK(), 3 K below the
// critical temperature), or for no number, each gives a Problem that says the range. From pressure to temperature the
// curves are turned round to the last few bits.

/// The pressure at which the liquid begins to boil, Pa absolute.
[[nodiscard]] Result<double> bubblePressurePa(const Refrigerant& refrigerant, double temperatureK);

/// The pressure at which the vapour begins to condense, Pa absolute.
[[nodiscard]] Result<double> dewPressurePa(const Refrigerant& refrigerant, double temperatureK);

/// The temperature at which the liquid begins to boil, K.
[[nodiscard]] Result<double> bubbleTemperatureK(const Refrigerant& refrigerant, double absolutePa);

/// The temperature at which the vapour begins to condense, K.
[[nodiscard]] Result<double> dewTemperatureK(const Refrigerant& refrigerant, double absolutePa);

} // namespace padside

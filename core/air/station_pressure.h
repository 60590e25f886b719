// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

namespace padside {

constexpr double seaLevelPressurePa = 101325;
constexpr double lowestAltitudeM = -1000; ///< below every dry shore
constexpr double highestAltitudeM = 11000; ///< where the lowest layer of the standard atmosphere ends

/// The usual pressure of the air at an altitude, Pa: ICAO standard atmosphere (Doc 7488; ISO 2533), lowest layer, the
/// altitude taken as geopotential (12 Pa at 3000 m). Outside lowestAltitudeM..highestAltitudeM, or no number: a
/// Problem.
[[nodiscard]] Result<double> stationPressurePa(double altitudeM);

/// The temperature of the same atmosphere, K; same range.
[[nodiscard]] Result<double> standardTemperatureK(double altitudeM);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/refrigerant.h"
#include "core/quantity/problem.h"

namespace padside {

/// A pressure and the line it was taken at.
struct LineReading
{
    double gaugePa = 0; ///< above the air around a gauge zeroed on site
    double lineTemperatureK = 0;
    double altitudeM = 0; ///< of the site; its station pressure makes the gauge pressure absolute
};

/// How far a line is from saturation.
struct LineState
{
    double stationPressurePa = 0;
    double absolutePa = 0;
    double saturationK = 0; ///< dew temperature for superheat, bubble temperature for subcooling
    double differenceK = 0; ///< the superheat or subcooling; negative as it comes, never hidden
};

/// Gauge pressure and the air's own, Pa; not above 0, or no number: a Problem.
[[nodiscard]] Result<double> absolutePressurePa(double gaugePa, double stationPressurePa);

/// Superheat: the suction line above the dew temperature of its pressure. Below 0 liquid comes back, or a reading is
/// wrong. A Problem for a pressure outside the curves, a line at or below absolute zero, an altitude out of range.
[[nodiscard]] Result<LineState> superheat(const Refrigerant& refrigerant, const LineReading& suction);

/// Subcooling: the bubble temperature of the pressure above the liquid line. Below 0 there is flash gas, or a reading
/// is wrong. Problems as superheat().
[[nodiscard]] Result<LineState> subcooling(const Refrigerant& refrigerant, const LineReading& liquid);

} // namespace padside

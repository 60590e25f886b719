// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/problem.h"

#include <vector>

namespace padside {

/// What a wall must bear. Any one unit of pressure serves, here Pa.
struct VesselLoad
{
    double pressurePa = 0; ///< inside, above the air around (gauge); > 0
    double stressPa = 0; ///< allowable stress of the steel at its temperature; > 0
    double efficiency = 1; ///< of the welded joint (UW-12: 1.0 full radiography, 0.85 spot, 0.70 none); 0..1
};

/// Which diameter was measured. The inside diameter is the one when corroded.
enum class DiameterOf { inside, outside };

/// Wall that must be left, without any allowance for corrosion to come.
struct RequiredWall
{
    double shellM = 0; ///< cylinder: the larger of the hoop and the lengthwise formula
    double headM = 0; ///< 2:1 ellipsoidal head
    double mostM = 0; ///< the larger of shell, head and the least wall of UG-16
    std::vector<Sentence> cautions; ///< limits of validity that were met, and what the figure is not
};

/// Least wall after forming, UG-16 (from memory).
constexpr double leastVesselWallM = 1.5e-3;

/// Required wall by ASME BPVC VIII-1, UG-27 (cylinder under internal pressure) and UG-32 (2:1 ellipsoidal head), from
/// inside or outside diameter. An engineering check, not the basis on which a small refrigerant vessel was approved.
/// Problem: a value that is not above 0, an efficiency above 1, or a pressure so high that the thin-wall formulas do
/// not hold (P > 0.385 S E, or a wall over half the inside radius).
[[nodiscard]] Result<RequiredWall> requiredWall(const VesselLoad& load, double diameterM, DiameterOf which);

/// The pressure (Pa above the air around) that a cylinder of this wall bears by UG-27: the lower of hoop and
/// lengthwise. Problem: as above, or a wall that leaves no inside.
[[nodiscard]] Result<double> pressureOfCylinder(double wallM, double stressPa, double efficiency, double diameterM,
                                                DiameterOf which);

/// The same along the cylinder only (girth joints), which hoop stress almost always beats.
[[nodiscard]] Result<double> lengthwisePressureOfCylinder(double wallM, double stressPa, double efficiency,
                                                          double diameterM, DiameterOf which);

} // namespace padside

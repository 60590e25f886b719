// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/required_wall.h"

#include "core/quantity/measure.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace padside {

namespace {

constexpr double mostOfStress = 0.385; // UG-27(c)(1): P <= 0.385 S E

bool isPositive(double value)
{
    return value > 0 && std::isfinite(value);
}

/// UG-27(c)(1), and Appendix 1-1 for the outside diameter: the seam along the cylinder.
double hoopWall(double pressure, double strength, double diameter, DiameterOf which)
{
    return which == DiameterOf::inside ? pressure * diameter / 2 / (strength - 0.6 * pressure)
                                       : pressure * diameter / 2 / (strength + 0.4 * pressure);
}

/// UG-27(c)(2): seams around the cylinder.
double lengthwiseWall(double pressure, double strength, double diameter, DiameterOf which)
{
    return which == DiameterOf::inside ? pressure * diameter / 2 / (2 * strength + 0.4 * pressure)
                                       : pressure * diameter / 2 / (2 * strength + 1.4 * pressure);
}

/// UG-32(d), and Appendix 1-4 for the outside diameter: half as high as its radius.
double ellipsoidalWall(double pressure, double strength, double diameter, DiameterOf which)
{
    return which == DiameterOf::inside ? pressure * diameter / (2 * strength - 0.2 * pressure)
                                       : pressure * diameter / (2 * strength + 1.8 * pressure);
}

tl::unexpected<Problem> notPositive()
{
    return problem(ProblemKind::badInput,
                   PADSIDE_SAY("Pressure, stress, joint efficiency and sizes must be above 0, the efficiency not above "
                               "1. Check the values."));
}

std::vector<Sentence> cautionsOf(double shellM, double insideDiameterM)
{
    constexpr double smallVesselM = 0.1524; // 6 in; U-1(c)(2), from memory
    constexpr double thinHead = 0.002; // UG-32(b): t/L, L = 0.9 D; from memory
    std::vector<Sentence> cautions;
    if (shellM < leastVesselWallM)
        cautions.push_back({PADSIDE_SAY("UG-16 asks for at least {0} after forming, whatever the pressure."),
                            {Amount{leastVesselWallM, QuantityKind::length}}});
    if (insideDiameterM <= smallVesselM)
        cautions.push_back({PADSIDE_SAY("Vessels of at most {0} inside lie outside the scope of ASME VIII-1: take this "
                                        "as an engineering check, and the maker's least wall where it is known."),
                            {Amount{smallVesselM, QuantityKind::length}}});
    if (shellM < thinHead * 0.9 * insideDiameterM)
        cautions.push_back({PADSIDE_SAY("The head is so thin for its size that it can buckle at the knuckle: UG-32 "
                                        "asks for a further check (Appendix 1-4)."),
                            {}});
    cautions.push_back({PADSIDE_SAY("No allowance for rust to come is added. Never grind or weld a charged vessel; "
                                    "local codes and a licensed technician decide."),
                        {}});
    return cautions;
}

/// What a formula for wanted pressure needs: both radii. Empty if the wall leaves no inside.
struct Radii
{
    double inside;
    double outside;
};

std::optional<Radii> radiiOf(double wallM, double diameterM, DiameterOf which)
{
    const double measured = diameterM / 2;
    const Radii radii
        = which == DiameterOf::inside ? Radii{measured, measured + wallM} : Radii{measured - wallM, measured};
    if (radii.inside <= 0)
        return std::nullopt;
    return radii;
}

Result<Radii> checkedRadii(double wallM, double stressPa, double efficiency, double diameterM, DiameterOf which)
{
    if (!isPositive(wallM) || !isPositive(stressPa) || !isPositive(efficiency) || efficiency > 1
        || !isPositive(diameterM))
        return notPositive();
    const auto radii = radiiOf(wallM, diameterM, which);
    if (!radii || wallM > radii->inside / 2)
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("The wall is more than half the inside radius: the thin-wall formulas of UG-27 do "
                                   "not hold. Check wall and diameter."));
    return *radii;
}

} // namespace

Result<RequiredWall> requiredWall(const VesselLoad& load, double diameterM, DiameterOf which)
{
    const double pressure = load.pressurePa;
    const double strength = load.stressPa * load.efficiency;
    if (!isPositive(pressure) || !isPositive(load.stressPa) || !isPositive(load.efficiency) || load.efficiency > 1
        || !isPositive(strength) || !isPositive(diameterM))
        return notPositive();
    RequiredWall wall;
    wall.shellM = std::max(hoopWall(pressure, strength, diameterM, which),
                           lengthwiseWall(pressure, strength, diameterM, which));
    wall.headM = ellipsoidalWall(pressure, strength, diameterM, which);
    const auto radii = radiiOf(wall.shellM, diameterM, which);
    if (pressure > mostOfStress * strength || !radii || wall.shellM > radii->inside / 2)
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("The pressure is more than 0.385 times stress and joint efficiency: the thin-wall "
                                   "formulas of UG-27 do not hold. Check the values and their units."));
    wall.mostM = std::max({wall.shellM, wall.headM, leastVesselWallM});
    if (!std::isfinite(wall.mostM))
        return notPositive();
    wall.cautions = cautionsOf(std::max(wall.shellM, wall.headM), 2 * radii->inside);
    return wall;
}

Result<double> pressureOfCylinder(double wallM, double stressPa, double efficiency, double diameterM, DiameterOf which)
{
    const auto radii = checkedRadii(wallM, stressPa, efficiency, diameterM, which);
    if (!radii)
        return tl::unexpected(radii.error());
    return std::min(stressPa * efficiency * wallM / (radii->inside + 0.6 * wallM),
                    2 * stressPa * efficiency * wallM / (radii->inside - 0.4 * wallM));
}

Result<double> lengthwisePressureOfCylinder(double wallM, double stressPa, double efficiency, double diameterM,
                                            DiameterOf which)
{
    const auto radii = checkedRadii(wallM, stressPa, efficiency, diameterM, which);
    if (!radii)
        return tl::unexpected(radii.error());
    return 2 * stressPa * efficiency * wallM / (radii->inside - 0.4 * wallM);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/required_wall_of.h"

#include "core/air/station_pressure.h"
#include "core/corrosion/required_wall.h"
#include "core/refrigerant/saturation.h"
#include "core/verdict/known_figures.h"

namespace padside {

namespace {

std::optional<WallAsked> byVesselCode(const Unit& unit, const Catalogue& catalogue)
{
    const auto diameter = plateOf(unit, "vessel-diameter");
    const Refrigerant* refrigerant = catalogue.refrigerant(unit.refrigerant);
    if (!diameter || refrigerant == nullptr)
        return std::nullopt;
    const double warm = limitOf(catalogue, "vessel-temperature");
    const auto absolute = bubblePressurePa(*refrigerant, warm);
    if (!absolute)
        return std::nullopt;
    const VesselLoad load{*absolute - seaLevelPressurePa, limitOf(catalogue, "vessel-stress"),
                          limitOf(catalogue, "vessel-efficiency")};
    const auto wall = requiredWall(load, *diameter, DiameterOf::outside);
    if (!wall)
        return std::nullopt;
    return WallAsked{wall->mostM,
                     {PADSIDE_SAY("must be left by ASME VIII-1 for {0} at {1} ({2}) and an outside diameter of {3}"),
                      {refrigerant->code, Amount{warm, QuantityKind::temperature},
                       Amount{load.pressurePa, QuantityKind::gaugePressure}, Amount{*diameter, QuantityKind::length}}}};
}

} // namespace

WallAsked requiredWallOf(const Unit& unit, const Catalogue& catalogue, double firstReadingM)
{
    if (const auto named = plateOf(unit, "minimum-wall"))
        return {*named, {PADSIDE_SAY("must be left by the nameplate or the maker's data"), {}}};
    if (auto computed = byVesselCode(unit, catalogue))
        return *std::move(computed);
    const double share = limitOf(catalogue, "wall-share-left");
    return {firstReadingM * share,
            {PADSIDE_SAY("{0} of the first reading; note the vessel's diameter or the maker's smallest wall for a "
                         "better figure"),
             {Amount{share, QuantityKind::ratio}}}};
}

} // namespace padside

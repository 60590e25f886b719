// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/zone_belief.h"

namespace padside {

ZoneBelief believe(ZoneTrail trail, const OutlookModel& model)
{
    const auto& chain = model.chainOf(trail.partKind, trail.soils);
    Followed followed = follow(trail.steps, trail.fittedOn.has_value(), *chain);
    followed.belief.carryForward(*chain, trail.exposureSince);
    return {std::move(trail), std::move(followed.belief), chain->rates(), chain, std::move(followed.unexplained)};
}

std::vector<ZoneBelief> zoneBeliefs(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                                    Date today)
{
    std::vector<ZoneBelief> beliefs;
    for (ZoneTrail& trail : zoneTrails(record, catalogue, today))
        beliefs.push_back(believe(std::move(trail), model));
    return beliefs;
}

std::optional<ZoneBelief> zoneBelief(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                                     ZoneId zone, Date today)
{
    for (ZoneTrail& trail : zoneTrails(record, catalogue, today)) {
        if (trail.zoneId == zone)
            return believe(std::move(trail), model);
    }
    return std::nullopt;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/zone_chances.h"

namespace padside {

std::vector<ZoneChances> zoneChances(const KnownUnit& known, std::span<const MeasuredOutlook> measured)
{
    const std::array<Date, horizonCount> by = horizonsAfter(known.today);
    std::vector<ZoneChances> all;
    all.reserve(known.beliefs.size());
    for (const ZoneBelief& zone : known.beliefs) {
        ZoneChances& chances = all.emplace_back(ZoneChances{zone.trail.partId, zone.trail.zoneId, {}, {}});
        for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) {
            const LeadingChance leads
                = leadingChance(chanceSpentBy(zone, by[horizon]), chances.zoneId, measured, by[horizon]);
            chances.spent[horizon] = leads.chance;
            chances.by[horizon] = leads.by;
        }
    }
    return all;
}

std::vector<ZoneChances> zoneChances(const KnownUnit& known, const Catalogue& catalogue)
{
    if (known.isRetired())
        return {};
    return zoneChances(known, measuredOutlooks(known.record, catalogue, known.today));
}

std::vector<ZoneChances> zoneChances(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                                     Date today)
{
    return zoneChances(knownUnit(record, catalogue, model, today), catalogue);
}

std::optional<std::array<double, horizonCount>> chancesOfPart(PartId part, std::span<const ZoneChances> zones)
{
    std::array<double, horizonCount> none{};
    none.fill(1);
    bool any = false;
    for (const ZoneChances& zone : zones) {
        if (zone.partId != part)
            continue;
        any = true;
        for (std::size_t horizon = 0; horizon < horizonCount; ++horizon)
            none[horizon] *= 1 - zone.spent[horizon];
    }
    if (!any)
        return std::nullopt;
    std::array<double, horizonCount> chances{};
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon)
        chances[horizon] = 1 - none[horizon];
    return chances;
}

} // namespace padside

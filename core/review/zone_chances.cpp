// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/zone_chances.h"

#include <algorithm>

namespace padside {

std::vector<ZoneChances> zoneChances(const KnownUnit& known, const Catalogue& catalogue)
{
    if (known.isRetired())
        return {};
    const std::array<Date, horizonCount> by = horizonsAfter(known.today);
    std::vector<ZoneChances> all;
    for (const ZoneBelief& zone : known.beliefs) {
        ZoneChances& chances = all.emplace_back(ZoneChances{zone.trail.partId, zone.trail.zoneId, {}, {}});
        for (std::size_t day = 0; day < horizonCount; ++day)
            chances.spent[day] = chanceSpentBy(zone, by[day]);
    }
    for (const MeasuredOutlook& measured : measuredOutlooks(known.record, catalogue, known.today)) {
        const auto zone = std::ranges::find(all, measured.zoneId, &ZoneChances::zoneId);
        if (zone == all.end())
            continue;
        for (std::size_t day = 0; day < horizonCount; ++day) {
            const double chance = measured.chanceBy(by[day]);
            if (chance <= zone->spent[day])
                continue;
            zone->spent[day] = chance;
            zone->by[day] = measured.by;
        }
    }
    return all;
}

std::vector<ZoneChances> zoneChances(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                                     Date today)
{
    return zoneChances(knownUnit(record, catalogue, model, today), catalogue);
}

} // namespace padside

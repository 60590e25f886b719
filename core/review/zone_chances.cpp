// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/zone_chances.h"

#include <algorithm>
#include <cmath>

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
    const Date furthest = addMonths(known.today, static_cast<int>(std::lround(12 * catalogue.outlook().furthestYears)));
    for (const ZoneMeasure& measure : zoneMeasures(known.record, catalogue)) {
        const auto zone = std::ranges::find(all, measure.zoneId, &ZoneChances::zoneId);
        const auto measured = measuredOutlook(measure, catalogue, known.today, furthest);
        if (zone == all.end() || !measured)
            continue;
        for (std::size_t day = 0; day < horizonCount; ++day) {
            const double chance = measured->chanceBy(by[day]);
            if (chance <= zone->spent[day])
                continue;
            zone->spent[day] = chance;
            zone->by[day] = measured->by;
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

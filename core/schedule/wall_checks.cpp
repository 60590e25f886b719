// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/subject.h"
#include "core/corrosion/inspection_interval.h"
#include "core/schedule/next_checks.h"
#include "core/schedule/zone_due.h"
#include "core/verdict/zone_measure.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr auto wallKind = "wall-thickness";

Sentence whyOf(const ZoneMeasure& measure, Date lastOn, Date latest)
{
    const WallOutlook& wall = *measure.wall;
    const Amount thickness{wall.thicknessM, QuantityKind::length};
    if (wall.remainingYears) {
        return {PADSIDE_SAY("The wall was {0} on {1} and has about {2} years left; it is measured again after half of "
                            "that at most, by {3}."),
                {thickness, lastOn, Number{*wall.remainingYears, 1}, latest}};
    }
    return {PADSIDE_SAY("The wall was {0} on {1}; no loss could be measured yet, so it is measured again by {2}."),
            {thickness, lastOn, latest}};
}

} // namespace

std::vector<Check> wallChecks(const UnitRecord& record, const Catalogue& catalogue, Date today)
{
    std::vector<Check> checks;
    if (std::ranges::find(record.readings, wallKind, &Reading::kind) == record.readings.end())
        return checks;
    for (const ZoneMeasure& measure : zoneMeasures(record, catalogue)) {
        const Part* part = findPart(record, measure.partId);
        if (measure.readingKind != wallKind || !measure.wall || part == nullptr || part->removedOn)
            continue;
        const Date lastOn{std::chrono::days(static_cast<int>(std::floor(measure.points.back().time)))};
        const Date latest = dayAfter(lastOn, measure.wall->nextIntervalYears);
        const Date earliest = std::min(latest, openingOf(catalogue, lastOn, latest));
        if (earliest > addMonths(today, 12))
            continue;
        Check check;
        check.unitId = record.unit.id;
        check.partId = measure.partId;
        check.zoneId = measure.zoneId;
        check.zones = {measure.zoneId};
        check.what = about(subjectOf(record, catalogue, *part, findZone(record, measure.zoneId)),
                           PADSIDE_SAY("{0}{1}, {2}: measure the wall"));
        check.earliest = earliest;
        check.latest = latest;
        if (const ReadingKind* kind = catalogue.readingKind(wallKind))
            check.conditions = kind->needs;
        check.why = whyOf(measure, lastOn, latest);
        checks.push_back(std::move(check));
    }
    return checks;
}

} // namespace padside

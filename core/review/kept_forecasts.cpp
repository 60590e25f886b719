// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/kept_forecasts.h"

#include "core/review/known_unit.h"
#include "core/review/unit_forecast.h"
#include "core/trend/zone_history.h"

#include <algorithm>
#include <unordered_map>

namespace padside {

std::vector<KeptForecast> keptForecasts(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                                        VisitId visit)
{
    std::vector<KeptForecast> kept;
    const Visit* closing = findVisit(record, visit);
    if (closing == nullptr)
        return kept;
    const Date on = closing->on;
    const KnownUnit known = knownUnit(record, catalogue, model, on);
    if (known.isRetired())
        return kept;
    std::unordered_map<ZoneId, Grade> grades;
    for (const ZoneHistory& history : zoneHistories(known.record)) {
        if (history.known)
            grades.emplace(history.zoneId, history.known->grade);
    }
    const UnitForecast forecast = unitForecast(known, catalogue);
    for (const ZoneBelief& belief : known.beliefs) {
        const LeadingOutlook& foretold = *forecast.leadingOf(belief.trail.zoneId);
        KeptForecast& one = kept.emplace_back();
        one.unitId = known.record.unit.id;
        one.visitId = visit;
        one.on = on;
        one.zoneId = foretold.zoneId;
        if (const auto grade = grades.find(foretold.zoneId); grade != grades.end())
            one.grade = grade->second;
        for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) // sums of many chances may end above 1
            one.chances[horizon] = std::clamp(foretold.spent[horizon].chance, 0.0, 1.0);
        one.dates = foretold.dates;
    }
    return kept;
}

} // namespace padside

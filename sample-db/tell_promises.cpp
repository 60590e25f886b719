// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/tell_work.h"

#include <algorithm>

namespace padside {

namespace {

using std::chrono::days;

bool alreadyPromised(const Telling& telling, ZoneId zone)
{
    return std::ranges::any_of(telling.life.record.followUps,
                               [&](const FollowUp& one) { return one.zoneId == zone && !one.settledAt; });
}

void promise(Telling& telling, ZoneId zone, int earliestDays, int latestDays, const std::string& conditions,
             const std::string& why)
{
    if (alreadyPromised(telling, zone))
        return;
    FollowUp followUp;
    followUp.id = telling.ids.make<FollowUpId>();
    followUp.unitId = telling.life.record.unit.id;
    followUp.zoneId = zone;
    followUp.madeAt = telling.visit.id;
    followUp.earliest = telling.visit.on + days(earliestDays);
    followUp.latest = telling.visit.on + days(latestDays);
    followUp.conditions = conditions;
    followUp.why = why;
    telling.life.record.followUps.push_back(std::move(followUp));
}

/// Promises of earlier visits that today's look has settled.
void settle(Telling& telling)
{
    for (FollowUp& followUp : telling.life.record.followUps) {
        if (followUp.settledAt || followUp.madeAt == telling.visit.id || !followUp.zoneId
            || telling.visit.on < followUp.earliest)
            continue;
        const Finding* finding = findingToday(telling, *followUp.zoneId);
        if (!finding || !finding->seen() || finding->wetness == Wetness::wet)
            continue;
        followUp.settledAt = telling.visit.id;
        followUp.settledNote = "seen today";
    }
}

} // namespace

void tellPromises(Telling& telling)
{
    settle(telling);
    if (telling.visit.reason == VisitReason::callOut)
        return;
    for (Finding& finding : telling.life.record.findings) {
        if (finding.visitId != telling.visit.id || !finding.seen() || finding.phase != Phase::asFound)
            continue;
        const auto zone = std::ranges::find(telling.life.zones, finding.zoneId, &ZoneState::id);
        if (zone == telling.life.zones.end())
            continue;
        const bool wetAndBad
            = finding.wetness == Wetness::wet && *finding.grade() >= Grade::marked && zone->nature->coatable;
        if (wetAndBad && telling.dice.chance(0.6)) {
            const std::string name = zone->nature->zone == "bottom" ? "bottom" : std::string(zone->nature->zone);
            finding.note = name + " was wet, look again when dry";
            promise(telling, zone->id, 14, 180, "dry off", finding.note);
        }
        if (zone->treatedOn == telling.visit.on && zone->nature->coatable && zone->coat > 0.9
            && telling.dice.chance(0.4))
            promise(telling, zone->id, 90, 250, "dry", "see whether the coat holds");
    }
}

void tellWork(Telling& telling, const Catalogue& catalogue)
{
    tellTreatments(telling, catalogue);
    tellReplacements(telling, catalogue);
    tellRefrigerant(telling);
    tellPromises(telling);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/tell_work.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <string_view>

namespace padside {

namespace {

constexpr std::array mendings{Mending{"cabinet", "panels", "panel from a scrapped unit, painted", 85},
                              Mending{"cabinet", "seams", "cut back, strip riveted on and sealed", 55},
                              Mending{"base-pan", "pan", "patch plate bedded in sealant, drain kept open", 95},
                              Mending{"suction-accumulator", "strap", "new strap on a rubber strip", 24},
                              Mending{"suction-accumulator", "jacket-edge", "jacket cut back and taped", 12},
                              Mending{"compressor", "mounts", "new grommets and bolts", 48},
                              Mending{"fins", "faces", "combed; the worst corner left", 60},
                              Mending{"pad", "pad", "levelled on new blocks", 70},
                              Mending{"defrost-control", "sensor", "new sensor clipped on", 38}};

} // namespace

const Finding* findingToday(const Telling& telling, ZoneId zone)
{
    const auto& findings = telling.life.record.findings;
    const auto found = std::find_if(findings.rbegin(), findings.rend(), [&](const Finding& one) {
        return one.zoneId == zone && one.visitId == telling.visit.id && one.phase == Phase::asFound;
    });
    return found == findings.rend() ? nullptr : &*found;
}

Treatment& treat(Telling& telling, TreatmentKind kind, const ZoneState& zone, const std::string& product,
                 const std::string& note)
{
    auto treatment = telling.entry<Treatment, TreatmentId>();
    treatment.kind = kind;
    treatment.partId = zone.partId;
    treatment.zoneId = zone.id;
    treatment.product = product;
    treatment.note = note;
    return telling.life.record.treatments.emplace_back(std::move(treatment));
}

const Mending* mendingOf(std::string_view part, std::string_view zone)
{
    const auto* row
        = std::ranges::find_if(mendings, [&](const Mending& one) { return one.part == part && one.zone == zone; });
    return row == mendings.end() ? nullptr : row;
}

void leave(Telling& telling, ZoneState& zone, Grade grade)
{
    auto finding = telling.entry<Finding, FindingId>();
    finding.zoneId = zone.id;
    finding.phase = Phase::asLeft;
    finding.sight = grade;
    finding.wetness = zone.nature->remarks == Remarks::dirt ? Wetness::wet : Wetness::dry;
    telling.life.record.findings.push_back(std::move(finding));
    zone.lastSeen = grade;
    zone.lastSeenOn = telling.visit.on;
    zone.fresh = true;
}

namespace {

void coat(Telling& telling, ZoneState& zone)
{
    Treatment& treatment = treat(telling, TreatmentKind::brushAndCoat, zone,
                                 telling.metric() ? "Dunmar 7 primer, Dunmar 12 top coat" : "Dunmar 7 primer",
                                 "loose scale only, wiped, two thin coats");
    const double dryingHours = telling.metric() ? 6 : 4;
    const auto moment = treatment.enteredAt.utc + std::chrono::seconds(static_cast<int>(dryingHours * 3600));
    treatment.dryBy = Instant{moment, treatment.enteredAt.offset};
    treatment.cost = 38;
    zone.coat = 1;
    zone.treatedOn = telling.visit.on;
    leave(telling, zone, std::min(Grade::worn, zone.lastSeen.value_or(Grade::worn)));
}

void wash(Telling& telling, ZoneState& zone)
{
    const bool isCoil = zone.nature->part == "outdoor-coil";
    Treatment& treatment = treat(telling, TreatmentKind::clean, zone, isCoil ? "plain water, low pressure" : "",
                                 isCoil ? "washed from the inside out" : "raked out by hand");
    treatment.cost = isCoil ? 25 : 8;
    zone.decay = 1;
    zone.treatedOn = telling.visit.on;
    leave(telling, zone, Grade::sound);
}

void mend(Telling& telling, ZoneState& zone, const Mending& mending)
{
    treat(telling, TreatmentKind::repair, zone, "", std::string(mending.how)).cost = mending.cost;
    zone.decay = 1.6;
    zone.coat = 0;
    zone.treatedOn = telling.visit.on;
    leave(telling, zone, Grade::worn);
}

/// What is spent always is; what is poor, when there is time.
bool wantsMending(Telling& telling, const ZoneState& zone, Grade grade)
{
    return mendingOf(zone.nature->part, zone.nature->zone) != nullptr
        && (grade == Grade::spent || (grade == Grade::poor && telling.dice.chance(0.25)));
}

bool wantsCoat(Telling& telling, const ZoneState& zone, const Finding& finding)
{
    if (!zone.nature->coatable || finding.wetness != Wetness::dry || *finding.grade() < Grade::marked)
        return false;
    if (zone.treatedOn && yearsBetween(*zone.treatedOn, telling.visit.on) < 1.4)
        return false;
    const bool careful = telling.life.scenario->story == Story::wellKept;
    return telling.dice.chance(careful ? 0.9 : telling.visit.reason == VisitReason::fall ? 0.6 : 0.3);
}

} // namespace

void tellTreatments(Telling& telling, const Catalogue&)
{
    if (telling.visit.reason == VisitReason::callOut)
        return;
    const bool scriptedVessel = telling.life.scenario->story == Story::seafrontVessel;
    for (ZoneState& zone : telling.life.zones) {
        const Finding* finding = findingToday(telling, zone.id);
        if (!finding || !finding->seen())
            continue;
        const Grade grade = *finding->grade();
        const bool scripted
            = scriptedVessel && zone.nature->part == "suction-accumulator" && zone.nature->zone == "bottom";
        if (zone.nature->remarks == Remarks::dirt && grade >= Grade::worn && telling.dice.chance(0.75))
            wash(telling, zone);
        else if (wantsMending(telling, zone, grade))
            mend(telling, zone, *mendingOf(zone.nature->part, zone.nature->zone));
        else if (!scripted && wantsCoat(telling, zone, *finding))
            coat(telling, zone);
        else if (zone.nature->zone == "bearings" && grade == Grade::worn && telling.dice.chance(0.35)) {
            treat(telling, TreatmentKind::lubricate, zone, "Wexlo turbine oil", "two drops each port").cost = 5;
            zone.pace *= 0.7;
        } else if (zone.nature->part == "disconnect" && grade >= Grade::worn && telling.dice.chance(0.25)) {
            treat(telling, TreatmentKind::grease, zone, "Wexlo contact grease", "blades and hinge").cost = 5;
            zone.pace *= 0.8;
        } else if (zone.nature->part == "service-valves" && grade >= Grade::marked && telling.dice.chance(0.6)) {
            treat(telling, TreatmentKind::repair, zone, "", "new core and metal cap with seal").cost = 22;
            zone.decay = 1.2;
            leave(telling, zone, Grade::sound);
        }
    }
}

/// The script's own treatments: the same work, on the days the story needs it.
void coatVesselBottom(Telling& telling)
{
    if (ZoneState* bottom = telling.life.zone("suction-accumulator", "bottom"))
        coat(telling, *bottom);
}

} // namespace padside

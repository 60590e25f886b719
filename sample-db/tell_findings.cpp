// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/unit_life.h"

#include <algorithm>
#include <array>

namespace padside {

namespace {

/// The bottom of the seafront unit's accumulator, visit by visit over eight years.
struct VesselStep
{
    double decay;
    double coat;
    bool treat;
};

constexpr std::array<VesselStep, 16> vesselScript{{{1.15, 0, false},
                                                   {1.25, 0, false},
                                                   {1.42, 0, false},
                                                   {1.75, 0, false},
                                                   {2.05, 0, false},
                                                   {2.40, 0, false},
                                                   {2.75, 0, false},
                                                   {3.10, 0, true},
                                                   {3.12, 0.80, false},
                                                   {3.20, 0.52, false},
                                                   {3.32, 0.22, false},
                                                   {3.46, 0.08, true},
                                                   {3.48, 0.72, false},
                                                   {3.60, 0.30, false},
                                                   {3.75, 0.14, false},
                                                   {4.25, 0, false}}};

/// Which step the visit is at; a shorter record leaps through the same story.
std::size_t vesselStep(std::size_t visitIndex, std::size_t visitCount)
{
    const std::size_t last = vesselScript.size() - 1;
    return visitCount < 2 ? last : visitIndex * last / (visitCount - 1);
}

bool isAccumulator(const ZoneState& zone)
{
    return zone.nature->part == "suction-accumulator";
}

bool isScripted(const Telling& telling, const ZoneState& zone)
{
    return telling.life.scenario->story == Story::seafrontVessel && isAccumulator(zone)
        && zone.nature->zone == "bottom";
}

/// The zone that the customer rang about, if the story names one.
ZoneState* failedZone(const Telling& telling)
{
    UnitLife& life = telling.life;
    if (telling.visit.reason != VisitReason::callOut)
        return nullptr;
    switch (life.scenario->story) {
    case Story::motorFailure:
        return life.zone("fan-motor", "bearings");
    case Story::capacitorFailure:
    case Story::corrected:
        return life.zone("run-capacitor", "body");
    case Story::newAccumulator:
        return life.zone("suction-accumulator", "bottom");
    case Story::ordinary:
        return life.zone("contactor", "points");
    case Story::slowLeak:
        return isLeakFound(telling) ? life.zone("outdoor-coil", "joints") : nullptr;
    case Story::retires:
        return life.record.unit.retiredOn && yearsBetween(telling.visit.on, *life.record.unit.retiredOn) < 0.1
            ? life.zone("outdoor-coil", "joints")
            : nullptr;
    default:
        return nullptr;
    }
}

/// How likely this zone is looked at: what worried last time always is, and what is on the list because it was passed
/// over at the last visits.
double lookChance(const Telling& telling, const ZoneState& zone)
{
    if (telling.visit.reason == VisitReason::callOut)
        return 0.08 + (zone.lastSeen && *zone.lastSeen >= Grade::poor ? 0.4 : 0.0);
    if (isScripted(telling, zone))
        return 1;
    if (zone.lastSeen && *zone.lastSeen >= Grade::marked)
        return 0.95;
    constexpr double onTheList = 0.4; // years
    const double usual = zone.nature->looked * 0.6;
    const bool passedOver = !zone.lastSeenOn || yearsBetween(*zone.lastSeenOn, telling.visit.on) > onTheList;
    return passedOver ? 0.82 + 0.18 * usual : usual;
}

Wetness wetnessOf(Telling& telling, const ZoneState& zone)
{
    const Sky sky = telling.visit.conditions.sky;
    double chance = zone.nature->wetChance * (telling.visit.reason == VisitReason::fall ? 0.4 : 0.8);
    if (sky == Sky::rain || sky == Sky::fog || sky == Sky::snow)
        chance = chance * 1.3 + 0.08;
    if (!telling.dice.chance(chance))
        return Wetness::dry;
    return telling.dice.chance(0.45) ? Wetness::wet : Wetness::damp;
}

/// It is coated in fall, when it is dry; in spring it sweats.
Wetness vesselWetness(Grade grade, VisitReason reason)
{
    if (reason == VisitReason::spring)
        return grade >= Grade::marked ? Wetness::wet : Wetness::damp;
    return grade >= Grade::poor ? Wetness::damp : Wetness::dry;
}

Grade seenGrade(Telling& telling, ZoneState& zone)
{
    const Grade shown = zone.shown();
    if (zone.lastSeen && !zone.fresh && shown < *zone.lastSeen)
        return *zone.lastSeen;
    // Two technicians do not always agree.
    if (shown == Grade::marked && (!zone.lastSeen || *zone.lastSeen <= Grade::worn) && telling.dice.chance(0.04))
        return Grade::worn;
    return shown;
}

} // namespace

void followVesselScript(UnitLife& life, std::size_t visitIndex, std::size_t visitCount)
{
    if (ZoneState* bottom = life.zone("suction-accumulator", "bottom")) {
        const VesselStep& step = vesselScript[vesselStep(visitIndex, visitCount)];
        bottom->decay = step.decay;
        bottom->coat = step.coat;
    }
}

bool vesselScriptTreats(std::size_t visitIndex, std::size_t visitCount)
{
    const std::size_t now = vesselStep(visitIndex, visitCount);
    const std::size_t since = visitIndex > 0 ? vesselStep(visitIndex - 1, visitCount) + 1 : 0;
    for (std::size_t step = since; step <= now; ++step) {
        if (vesselScript[step].treat)
            return true;
    }
    return false;
}

void tellFindings(Telling& telling)
{
    const bool hurried = telling.dice.chance(0.2);
    const ZoneState* failed = failedZone(telling);
    for (ZoneState& zone : telling.life.zones) {
        if (&zone == failed) {
            zone.decay = 5;
            zone.coat = 0;
        } else if (!telling.dice.chance(lookChance(telling, zone))) {
            // Most of what is passed over stays unwritten; some is owned up to.
            if (telling.visit.reason == VisitReason::callOut || !telling.dice.chance(hurried ? 0.22 : 0.06))
                continue;
            auto finding = telling.entry<Finding, FindingId>();
            finding.zoneId = zone.id;
            finding.sight = NotSeenReason::noTime;
            telling.life.record.findings.push_back(std::move(finding));
            continue;
        }
        auto finding = telling.entry<Finding, FindingId>();
        finding.zoneId = zone.id;
        const bool scripted = isScripted(telling, zone);
        if (!scripted && &zone != failed && telling.dice.chance(zone.nature->hidden * 0.6)) {
            finding.sight = zone.nature->because;
            if (zone.nature->because == NotSeenReason::covered && telling.dice.chance(0.3))
                finding.note = "jacket left on";
        } else {
            const Grade grade = seenGrade(telling, zone);
            finding.sight = grade;
            finding.wetness = wetnessOf(telling, zone);
            if (scripted)
                finding.wetness = vesselWetness(grade, telling.visit.reason);
            const double talkative = scripted ? 0.9 : grade == Grade::sound ? 0.06 : grade == Grade::worn ? 0.30 : 0.80;
            if (zone.coat > 0.12 && grade >= Grade::worn && telling.dice.chance(0.7))
                finding.note = grade >= Grade::marked ? "coat is lifting, rust coming through" : "coat holds";
            else if (telling.dice.chance(talkative))
                finding.note = telling.dice.of(remarksFor(zone.nature->remarks, grade));
            zone.lastSeen = grade;
            zone.lastSeenOn = telling.visit.on;
            zone.fresh = false;
        }
        telling.life.record.findings.push_back(std::move(finding));
    }
}

} // namespace padside

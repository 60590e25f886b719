// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/tell_work.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace padside {

namespace {

struct Exchangeable
{
    const char* partKind;
    double cost;
    const char* because;
};

constexpr std::array exchanged{Exchangeable{"contactor", 64, "points burnt"},
                               Exchangeable{"fan-motor", 260, "bearings gone"},
                               Exchangeable{"crankcase-heater", 75, "element open"},
                               Exchangeable{"line-insulation", 48, "sun has eaten it"},
                               Exchangeable{"filter-drier", 120, "shell rusting through"},
                               Exchangeable{"disconnect", 55, "clip burnt"},
                               Exchangeable{"start-device", 46, "case split"},
                               Exchangeable{"whip", 62, "sheath cracked through"},
                               Exchangeable{"bonding", 18, "lug eaten away"}};

Grade worstSeen(const UnitLife& life, std::string_view partKind)
{
    Grade worst = Grade::sound;
    for (const ZoneState& zone : life.zones) {
        if (zone.nature->part == partKind && zone.lastSeen)
            worst = std::max(worst, *zone.lastSeen);
    }
    return worst;
}

bool refrigerantPart(std::string_view kind)
{
    return kind == "filter-drier" || kind == "suction-accumulator";
}

void charge(Telling& telling, ChargeDirection direction, double kilograms, const std::string& because)
{
    auto entry = telling.entry<ChargeEntry, ChargeId>();
    entry.direction = direction;
    entry.refrigerant = telling.life.record.unit.refrigerant;
    entry.mass = typedMeasure(std::max(0.05, kilograms), *unitByCode(telling.metric() ? "kg" : "oz"),
                              telling.metric() ? 2 : 0);
    const char* bottle = direction == ChargeDirection::recovered ? "recovery 3"
        : telling.metric()                                       ? "cylinder 14"
                                                                 : "cylinder 9";
    entry.cylinder = bottle;
    entry.because = because;
    telling.life.record.charges.push_back(std::move(entry));
}

/// The circuit is opened: what is in it is recovered first, weighed, and the full charge put back afterwards.
void recoverAndRecharge(Telling& telling, const std::string& because)
{
    UnitLife& life = telling.life;
    charge(telling, ChargeDirection::recovered, life.chargeKg * (1 - life.missingCharge) * 0.97,
           "recovered before the repair");
    charge(telling, ChargeDirection::added, life.chargeKg, because);
    life.missingCharge = 0;
}

} // namespace

void replaceNow(Telling& telling, const Catalogue& catalogue, const std::string& partKind, const std::string& because,
                double cost)
{
    UnitLife& life = telling.life;
    const auto old = std::ranges::find_if(life.record.parts,
                                          [&](const Part& one) { return one.kind == partKind && !one.removedOn; });
    if (old == life.record.parts.end())
        return;
    auto treatment = telling.entry<Treatment, TreatmentId>();
    treatment.kind = TreatmentKind::replace;
    treatment.partId = old->id;
    treatment.note = because;
    treatment.cost = cost;
    life.record.treatments.push_back(std::move(treatment));

    old->removedOn = telling.visit.on;
    old->removedBecause = because;
    const PartId oldId = old->id;
    const std::string position = old->position;
    for (FollowUp& followUp : life.record.followUps) {
        const bool ofOld
            = followUp.zoneId && std::ranges::find(old->zones, *followUp.zoneId, &Zone::id) != old->zones.end();
        if (ofOld && !followUp.settledAt) {
            followUp.settledAt = telling.visit.id;
            followUp.settledNote = "part replaced";
        }
    }
    std::erase_if(life.zones, [&](const ZoneState& zone) { return zone.partId == oldId; });
    Part& fresh = fitPart(life, catalogue, partKind, position, telling.visit.on, telling.ids, telling.dice);
    fresh.replaces = oldId;
    fresh.maker = "Brumwell spares";
    const PartId freshId = fresh.id;
    for (ZoneState& zone : life.zones) {
        if (zone.partId == freshId)
            leave(telling, zone, Grade::sound);
    }
}

void tellReplacements(Telling& telling, const Catalogue& catalogue)
{
    UnitLife& life = telling.life;
    const bool callOut = telling.visit.reason == VisitReason::callOut;
    if (callOut && life.scenario->story == Story::motorFailure)
        return replaceNow(telling, catalogue, "fan-motor", "seized in the heat, fan would not start", 260);
    if (callOut && life.scenario->story == Story::capacitorFailure) {
        replaceNow(telling, catalogue, "run-capacitor", "compressor section open, top risen", 58);
        life.capacitorDrift = 0;
        return;
    }
    if (callOut && life.scenario->story == Story::corrected) {
        replaceNow(telling, catalogue, "run-capacitor", "compressor hums and trips, section open", 58);
        life.capacitorDrift = 0;
        return;
    }
    if (callOut && life.scenario->story == Story::ordinary)
        return replaceNow(telling, catalogue, "contactor", "points burnt through, would not pull in", 64);
    if (callOut && life.scenario->story == Story::newAccumulator) {
        recoverAndRecharge(telling, "full charge after the new accumulator, nameplate weight");
        replaceNow(telling, catalogue, "suction-accumulator", "pinhole at the bottom, charge lost", 540);
        replaceNow(telling, catalogue, "filter-drier", "circuit was open", 120);
        life.wallMm = 3.2;
        return;
    }
    if (callOut)
        return;
    if (life.capacitorDrift > 0.07 && telling.dice.chance(0.7)) {
        replaceNow(telling, catalogue, "run-capacitor", "compressor section below its label", 58);
        life.capacitorDrift = 0;
    }
    for (const Exchangeable& part : exchanged) {
        const Grade worst = worstSeen(life, part.partKind);
        if (worst == Grade::spent
            || (worst == Grade::poor && telling.dice.chance(refrigerantPart(part.partKind) ? 0.15 : 0.3))) {
            if (refrigerantPart(part.partKind))
                recoverAndRecharge(telling, "full charge after the new drier");
            replaceNow(telling, catalogue, part.partKind, part.because, part.cost);
        }
    }
}

bool isLeakFound(const Telling& telling)
{
    const double yearsToEnd = yearsBetween(telling.visit.on, telling.life.lastDay);
    return telling.life.scenario->story == Story::slowLeak && telling.visit.reason == VisitReason::callOut
        && yearsToEnd > 2 && yearsToEnd < 2.6;
}

void tellRefrigerant(Telling& telling)
{
    UnitLife& life = telling.life;
    const bool callOut = telling.visit.reason == VisitReason::callOut;
    const bool leaks = life.scenario->story == Story::slowLeak || life.scenario->story == Story::retires;
    if (!leaks || telling.visit.conditions.running != Running::cooling)
        return;
    if (life.scenario->story == Story::retires && callOut && telling.life.record.unit.retiredOn
        && yearsBetween(telling.visit.on, *telling.life.record.unit.retiredOn) < 0.1)
        return charge(telling, ChargeDirection::recovered, life.chargeKg * 0.83, "unit taken out of service");
    if (isLeakFound(telling)) {
        if (ZoneState* joint = life.zone("outdoor-coil", "joints")) {
            recoverAndRecharge(telling, "full charge after the repair, by weight");
            treat(telling, TreatmentKind::repair, *joint, "silver braze, nitrogen purged",
                  "leak at the header joint, held 35 bar for an hour")
                .cost
                = 310;
            joint->decay = 2.0;
            life.leakPerYear = 0.10; // there is a second, smaller one
            leave(telling, *joint, Grade::worn);
        }
        return;
    }
    if (life.missingCharge > 0.04) {
        charge(telling, ChargeDirection::added, life.chargeKg * life.missingCharge * 0.9,
               "low, oil mark at the header; leak not found today");
        life.missingCharge *= 0.1;
    }
}

} // namespace padside

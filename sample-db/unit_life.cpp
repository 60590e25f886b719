// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/unit_life.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>

namespace padside {

namespace {

std::uint64_t keyOf(const UnitLife& life, std::size_t index, std::uint64_t seed)
{
    return mixed(seed + index * 65537 + life.block);
}

/// What is simply exchanged, mended or washed may be spent before anybody minds; what carries the unit is looked after
/// before that, but for the stories.
bool isLetGo(const ZoneNature& nature)
{
    constexpr std::array<std::string_view, 10> kinds{"contactor",       "fan-motor",    "crankcase-heater",
                                                     "line-insulation", "filter-drier", "disconnect",
                                                     "run-capacitor",   "start-device", "whip",
                                                     "bonding"};
    return nature.remarks == Remarks::dirt || mendingOf(nature.part, nature.zone)
        || std::ranges::find(kinds, nature.part) != kinds.end();
}

void printNameplate(UnitLife& life)
{
    const ScenarioUnit& scenario = *life.scenario;
    life.chargeKg = std::round(scenario.coolingKw * 23) / 100; // about 0.23 kg per kW
    life.ratedAmps = std::round(scenario.coolingKw * 15.5) / 10;
    life.capacitorUf = scenario.coolingKw > 9 ? 45 : 35;
    life.fanCapacitorUf = 5;
    const auto line = [&](const char* item, double si, const char* unit, int decimals) {
        life.record.unit.nameplate.push_back({item, typedMeasure(si, *unitByCode(unit), decimals)});
    };
    line("charge", life.chargeKg, "kg", 2);
    line("compressor-rla", life.ratedAmps, "A", 1);
    line("compressor-lra", life.ratedAmps * 5.4, "A", 0);
    line("fan-fla", 1.4, "A", 1);
    line("minimum-circuit-ampacity", life.ratedAmps * 1.25 + 1.4, "A", 1);
    line("maximum-overcurrent", std::ceil(life.ratedAmps * 1.75 / 5) * 5, "A", 0);
    line("supply-voltage", 230, "V", 0);
    line("capacitor-compressor", life.capacitorUf * 1e-6, "uF", 0);
    line("capacitor-fan", life.fanCapacitorUf * 1e-6, "uF", 0);
    line("rated-cooling", scenario.coolingKw * 1000, "kW", 1);
    if (scenario.kind == "heat-pump")
        line("rated-heating", scenario.coolingKw * 1050, "kW", 1);
    if (scenario.metering != Metering::fixedOrifice)
        line("subcooling-target", 5.5, "dK", 1);
    line("design-pressure-high", scenario.refrigerant == "R-22" ? 2.07e6 : 3.10e6, "psig", 0);
    line("minimum-wall", 2.0e-3, "mm", 1);
}

} // namespace

Grade ZoneState::shown() const
{
    double seen = decay;
    if (coat > 0.42)
        seen = std::min(seen, 2.2);
    else if (coat > 0.12)
        seen = std::min(seen, 3.2);
    return *gradeFromNumeral(std::clamp(static_cast<int>(std::lround(seen)), 1, 5));
}

const Part* UnitLife::fitted(std::string_view partKind) const
{
    const auto part
        = std::ranges::find_if(record.parts, [&](const Part& one) { return one.kind == partKind && !one.removedOn; });
    return part == record.parts.end() ? nullptr : &*part;
}

ZoneState* UnitLife::zone(std::string_view partKind, std::string_view zoneKind)
{
    const auto found = std::ranges::find_if(
        zones, [&](const ZoneState& one) { return one.nature->part == partKind && one.nature->zone == zoneKind; });
    return found == zones.end() ? nullptr : &*found;
}

bool Telling::metric() const
{
    return visit.technician == scenarioTechnicians()[0];
}

Measure typedMeasure(double si, const MeasuringUnit& unit, int decimals)
{
    const std::string typed = fmt::format("{:.{}f} {}", fromSi(si, unit), decimals, unit.symbol);
    const Result<Measure> measure = parseMeasure(typed, unit.kind);
    return measure.value(); // what we wrote ourselves can be read; anything else must not pass unseen
}

Part& fitPart(UnitLife& life, const Catalogue& catalogue, const std::string& kind, const std::string& position,
              std::optional<Date> on, IdMaker& ids, Dice& dice)
{
    Part part;
    part.id = ids.make<PartId>();
    part.unitId = life.record.unit.id;
    part.kind = kind;
    part.position = position;
    part.fittedOn = on;
    const PartKind* known = catalogue.partKind(kind);
    for (const ZoneKind& zone : known->zones) {
        part.zones.push_back({ids.make<ZoneId>(), part.id, zone.code, zone.name});
        ZoneState state;
        state.nature = &natureOf(kind, zone.code);
        state.id = part.zones.back().id;
        state.partId = part.id;
        state.lastSeenOn = on;
        state.pace = std::exp(0.5 * dice.bell() - 0.12);
        if (life.scenario->story == Story::wellKept)
            state.pace *= 0.25;
        life.zones.push_back(state);
    }
    return life.record.parts.emplace_back(std::move(part));
}

void ageLife(UnitLife& life, Date from, Date to)
{
    const double years = std::max(0.0, yearsBetween(from, to));
    Dice dice(mixed(life.skin ^ static_cast<std::uint64_t>(to.time_since_epoch().count())));
    for (ZoneState& zone : life.zones) {
        const ZoneNature& nature = *zone.nature;
        double pace = nature.yearly * zone.pace * (0.72 + 0.16 * zone.decay);
        if (nature.salt)
            pace *= life.place->pace * (0.8 + 0.5 * nature.wetChance);
        pace *= 1 - 0.75 * zone.coat;
        if (isLetGo(nature))
            pace *= 1.25;
        // It goes in fits and starts.
        pace *= dice.chance(0.25) ? 2.8 : 0.4;
        zone.decay = std::min(zone.decay + pace * years, isLetGo(nature) ? 5.0 : 4.45);
        const double coatLife = nature.salt && life.place->pace > 1.4 ? 3.0 : 4.2;
        zone.coat = std::max(0.0, zone.coat - years / coatLife);
    }
    const double drift = life.scenario->story == Story::capacitorFailure ? 0.011 : 0.0055;
    life.capacitorDrift += years * drift * (1 + 6 * life.capacitorDrift);
    if (life.scenario->story == Story::slowLeak)
        life.missingCharge = std::min(0.6, life.missingCharge + years * life.leakPerYear);
    else if (life.scenario->story == Story::retires)
        life.missingCharge = std::min(0.5, life.missingCharge + years * 0.14);
    else if (life.scenario->story == Story::newAccumulator)
        life.missingCharge = std::min(0.5, life.missingCharge + years * 0.02);
    const double wallLoss = life.scenario->story == Story::seafrontVessel ? 0.105 : 0.06;
    life.wallMm -= years * wallLoss * life.place->pace / 2.3;
}

UnitLife beginLife(const Catalogue& catalogue, std::size_t index, Date firstDay, Date lastDay, const Site& site,
                   IdMaker& ids, std::uint64_t seed)
{
    UnitLife life;
    life.scenario = &scenarioUnits()[index % scenarioUnits().size()];
    life.place = &scenarioSites()[life.scenario->site];
    life.block = index / scenarioUnits().size();
    life.lastDay = lastDay;
    life.record.site = site;
    life.skin = keyOf(life, index, seed);
    Dice dice(life.skin);

    const ScenarioUnit& scenario = *life.scenario;
    Unit& unit = life.record.unit;
    unit.id = ids.make<UnitId>();
    unit.siteId = site.id;
    unit.tag = life.block == 0 ? fmt::format("{}-{}", life.place->prefix, scenario.number)
                               : fmt::format("{}{}-{}", life.place->prefix, life.block + 1, scenario.number);
    unit.kind = scenario.kind;
    unit.maker = scenario.maker;
    unit.model = scenario.model;
    unit.place = scenario.place;
    unit.refrigerant = scenario.refrigerant;
    unit.metering = scenario.metering;
    unit.installedOn = installedOn(scenario, lastDay);
    unit.retiredOn = retiredOn(scenario, lastDay);
    unit.note = scenario.note;
    unit.serial = fmt::format("{}{:02}{:02}-{:05}", scenario.maker.substr(0, 2), yearOf(*unit.installedOn) % 100,
                              1 + dice.below(52), 10000 + dice.below(89999));
    printNameplate(life);

    const UnitKind* kind = catalogue.unitKind(unit.kind);
    for (const UnitKind::Fitted& fitted : kind->parts) {
        if (fitted.partKind == "start-device" && dice.chance(0.6))
            continue; // not every unit has one
        fitPart(life, catalogue, fitted.partKind, fitted.position, unit.installedOn, ids, dice);
    }
    ageLife(life, *unit.installedOn, firstDay);
    for (ZoneState& zone : life.zones) {
        // Parts that are simply exchanged were so before the record began; dirt was washed off last time.
        const bool simple = zone.nature->remarks == Remarks::electrical || zone.nature->remarks == Remarks::moving
            || zone.nature->remarks == Remarks::general;
        if (zone.nature->remarks == Remarks::dirt)
            zone.decay = 1 + dice.between(0, 1.2);
        else
            zone.decay = std::min(zone.decay, simple ? 1 + dice.between(0, 1.9) : 2.9);
    }
    life.capacitorDrift = std::min(life.capacitorDrift, 0.035);
    life.missingCharge = std::min(life.missingCharge, 0.12);
    life.wallMm = std::max(life.wallMm, scenario.story == Story::seafrontVessel ? 3.15 : 2.85);
    return life;
}

} // namespace padside

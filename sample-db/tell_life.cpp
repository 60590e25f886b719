// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/tell_work.h"
#include "sample-db/unit_life.h"

#include <algorithm>
#include <array>

namespace padside {

namespace {

using std::chrono::minutes;
using std::chrono::seconds;

Conditions conditionsOf(const UnitLife& life, const PlannedVisit& planned, Dice& dice)
{
    Conditions conditions;
    double celsius = 15.5;
    if (planned.reason == VisitReason::callOut)
        celsius = 26;
    else if (planned.reason == VisitReason::fall)
        celsius = 10.5;
    celsius += 3.2 * dice.bell() - 0.0065 * life.place->altitudeM;
    conditions.airTemperatureK = std::round(celsius * 2) / 2 + 273.15;
    conditions.relativeHumidity
        = std::round(std::clamp(life.place->humidity - 0.08 + 0.10 * dice.bell(), 0.35, 0.99) * 100) / 100;
    constexpr std::array<Sky, 7> skies{Sky::clear,  Sky::clear, Sky::cloudy, Sky::cloudy,
                                       Sky::cloudy, Sky::rain,  Sky::fog};
    conditions.sky = planned.reason == VisitReason::callOut ? Sky::clear : skies[dice.below(skies.size())];
    const bool heats = life.record.unit.kind == "heat-pump";
    if (planned.open)
        conditions.running = Running::off;
    else if (planned.reason == VisitReason::fall)
        conditions.running = heats && dice.chance(0.8) ? Running::heating : Running::off;
    else
        conditions.running = celsius >= 13 ? Running::cooling : Running::off;
    return conditions;
}

Instant arrivalOn(Date on, Dice& dice)
{
    // Merrowmouth keeps UTC, an hour more from April to October.
    const unsigned month = static_cast<unsigned>(std::chrono::year_month_day(on).month());
    const minutes offset{month >= 4 && month <= 10 ? 60 : 0};
    const auto local = std::chrono::sys_seconds(on) + minutes(8 * 60 + static_cast<int>(dice.below(400)));
    return {local - offset, offset};
}

std::string noteOf(const PlannedVisit& planned, Dice& dice)
{
    if (planned.reason == VisitReason::callOut) {
        constexpr std::array<std::string_view, 3> lines{"Customer rang: not cooling.",
                                                        "Stopped in the night, breaker holds.", "Blows warm."};
        return std::string(lines[dice.below(lines.size())]);
    }
    constexpr std::array<std::string_view, 5> lines{"Nothing to report from the customer.",
                                                    "A bit louder this year, they say.", "Bill was higher last season.",
                                                    "Asked to keep the gate shut.", "No complaints."};
    return dice.chance(0.45) ? std::string(lines[dice.below(lines.size())]) : std::string();
}

/// What is entered before the phone rings and the visit has to wait.
void keepOnlyBeginning(UnitLife& life, VisitId visit)
{
    std::size_t kept = 0;
    std::erase_if(life.record.findings, [&](const Finding& one) { return one.visitId == visit && ++kept > 9; });
}

} // namespace

void tellCorrection(UnitLife& life, IdMaker& ids)
{
    // Not the newest visits: it should be part of the history.
    const auto& visits = life.record.visits;
    for (std::size_t i = visits.size() / 2; i < visits.size(); ++i) {
        auto& findings = life.record.findings;
        const auto wrong = std::ranges::find_if(findings, [&](const Finding& one) {
            return one.visitId == visits[i].id && one.phase == Phase::asFound && one.grade() == Grade::worn
                && !visits[i].isOpen();
        });
        if (wrong == findings.end())
            continue;
        Finding right = *wrong;
        right.id = ids.make<FindingId>();
        right.enteredAt.utc = visits[i].closedAt->utc + std::chrono::hours(26);
        right.correction = Correction<FindingId>{wrong->id, "typed 4 for 2; looked at it again the next day"};
        wrong->sight = Grade::poor;
        const auto after = std::ranges::find_if(wrong, findings.end(),
                                                [&](const Finding& one) { return one.visitId != right.visitId; });
        findings.insert(after, right);
        return;
    }
}

UnitLife tellLife(const Catalogue& catalogue, std::size_t index, int years, Date lastDay, const Site& site,
                  std::uint64_t seed)
{
    const ScenarioUnit& scenario = scenarioUnits()[index % scenarioUnits().size()];
    const Date firstDay = mondayOfWeek(yearOf(lastDay) - years + 1, 2);
    std::int64_t now = std::chrono::duration_cast<std::chrono::milliseconds>(
                           std::max(firstDay, installedOn(scenario, lastDay)).time_since_epoch())
                           .count();
    IdMaker ids([&now] { return now; }, mixed(seed + index));

    UnitLife life
        = beginLife(catalogue, index, std::max(firstDay, installedOn(scenario, lastDay)), lastDay, site, ids, seed);
    life.photographed = life.block == 0;
    const std::vector<PlannedVisit> planned = plannedVisits(scenario, life.block, years, lastDay, seed);
    const auto seasonal = static_cast<std::size_t>(
        std::ranges::count_if(planned, [](const PlannedVisit& one) { return one.reason != VisitReason::callOut; }));

    Date at = std::max(firstDay, installedOn(scenario, lastDay));
    std::size_t season = 0;
    for (const PlannedVisit& plan : planned) {
        ageLife(life, at, plan.on);
        at = plan.on;
        Dice dice(mixed(life.skin + static_cast<std::uint64_t>(plan.on.time_since_epoch().count()) * 8
                        + static_cast<std::uint64_t>(plan.reason)));
        Instant moment = arrivalOn(plan.on, dice);
        now = std::chrono::duration_cast<std::chrono::milliseconds>(moment.utc.time_since_epoch()).count();

        Visit visit;
        visit.id = ids.make<VisitId>();
        visit.unitId = life.record.unit.id;
        visit.on = plan.on;
        visit.reason = plan.reason;
        Dice rota(mixed(seed + life.scenario->site * 3 + life.block * 77
                        + static_cast<std::uint64_t>(plan.on.time_since_epoch().count())));
        visit.technician = scenarioTechnicians()[rota.below(2)];
        visit.conditions = conditionsOf(life, plan, dice);
        visit.note = noteOf(plan, dice);
        visit.openedAt = moment;

        const bool scripted = scenario.story == Story::seafrontVessel && plan.reason != VisitReason::callOut;
        if (scripted)
            followVesselScript(life, season, seasonal);
        Telling telling{
            life, visit, ids, dice, [&] {
                moment.utc += seconds(25 + static_cast<int>(dice.below(70)));
                now = std::chrono::duration_cast<std::chrono::milliseconds>(moment.utc.time_since_epoch()).count();
                return moment;
            }};
        tellFindings(telling);
        if (plan.open) {
            keepOnlyBeginning(life, visit.id);
        } else {
            tellPhotosAsFound(telling);
            tellReadings(telling);
            if (scripted && vesselScriptTreats(season, seasonal))
                coatVesselBottom(telling);
            tellWork(telling, catalogue);
            tellPhotosAsLeft(telling);
            visit.closedAt = telling.tick();
        }
        if (plan.reason != VisitReason::callOut)
            ++season;
        life.record.visits.push_back(visit);
    }
    if (scenario.story == Story::corrected)
        tellCorrection(life, ids);
    return life;
}

} // namespace padside

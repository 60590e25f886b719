// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/outlook/simulated_fleet.h"

#include "core/outlook/misgrading.h"
#include "core/outlook/zone_trail.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace padside::test {

namespace {

constexpr double daysInYear = 365.25;
constexpr double unseenShare = 0.15;
constexpr double runningShare = 0.3; ///< of those not seen
constexpr double coatedShare = 0.25; ///< of visits that find worn or marked
constexpr double unknownShare = 0.2;
constexpr double wetnessNotedShare = 0.6;
constexpr double wetShare = 0.25; ///< of those
constexpr double farAway = 1e6; ///< days

double daysOf(Date date)
{
    return static_cast<double>(date.time_since_epoch().count());
}

} // namespace

/// One zone as it really is.
struct FleetSimulation::Life
{
    const Part* part = nullptr;
    ZoneId zone;
    Rates rates{};
    double pace = 1;
    bool soils = false;
    bool stops = false;
    bool corrodes = false;
    bool beginsUnknown = false;
    bool foundSpent = false;
    bool wetnessNoted = false; ///< at this visit
    std::size_t grade = 0; ///< 0 sound … 4 spent
    double left = 0; ///< exposure until the next grade, years
    double now = 0; ///< days
    double spentOn = farAway;
    double wetFactor = 1;
    double coatEffect = 0;
    double coatUntil = 0; ///< days
    bool paint = false; ///< hides what is under it until then

    void draw(std::mt19937_64& random)
    {
        left = grade < 4 ? std::exponential_distribution<double>(pace * rates[grade])(random) : farAway;
    }

    /// Time passes at one speed of the clock.
    void ageUniformly(double until, double speed, std::mt19937_64& random)
    {
        while (now < until && grade < 4) {
            const double reached = now + left / speed * daysInYear;
            if (reached > until) {
                left -= (until - now) * speed / daysInYear;
                break;
            }
            now = reached;
            ++grade;
            if (grade == 4)
                spentOn = now;
            draw(random);
        }
        now = std::max(now, until);
    }

    void age(double until, std::mt19937_64& random)
    {
        if (now < coatUntil)
            ageUniformly(std::min(until, coatUntil), wetFactor * (1 - coatEffect), random);
        if (now < until)
            ageUniformly(until, wetFactor, random);
    }

    [[nodiscard]] bool isSpent() const { return grade == 4; }
    [[nodiscard]] bool isHidden() const { return paint && now < coatUntil; }
};

FleetSimulation::FleetSimulation(const Catalogue& catalogue, const OutlookModel& truth, unsigned seed)
    : m_catalogue(catalogue)
    , m_truth(truth)
    , m_random(seed)
    , m_ids([] { return std::int64_t{1'700'000'000'000}; }, seed)
{
}

bool FleetSimulation::happens(double chance)
{
    return std::uniform_real_distribution<double>()(m_random) < chance;
}

Part FleetSimulation::addPart(const std::string& kind, const std::vector<std::string>& zones)
{
    Part part;
    part.id = m_ids.make<PartId>();
    part.kind = kind;
    for (const std::string& zone : zones)
        part.zones.push_back({m_ids.make<ZoneId>(), part.id, zone, zone});
    return part;
}

FleetSimulation::Life FleetSimulation::begin(const Part& part, const Zone& zone, Date firstVisit)
{
    const OutlookFigures& figures = m_catalogue.outlook();
    Life life;
    life.part = &part;
    life.zone = zone.id;
    life.soils = m_catalogue.zoneKind(part.kind, zone.kind)->soiling;
    life.stops = stopsUnit(*m_catalogue.partKind(part.kind));
    life.corrodes = !life.soils && figures.corrodes(part.kind, zone.kind);
    life.rates = m_truth.ratesOf(part.kind, life.soils);
    const double sigma = figures.paceSigma;
    life.pace = std::exp(-sigma * sigma / 2 + sigma * std::normal_distribution<double>()(m_random));
    life.beginsUnknown = !part.fittedOn;
    life.now = daysOf(part.fittedOn.value_or(firstVisit));
    if (life.beginsUnknown)
        life.grade = std::uniform_int_distribution<std::size_t>(0, 3)(m_random);
    life.draw(m_random);
    return life;
}

void FleetSimulation::write(SimulatedUnit& unit, const Visit& visit, const Life& life,
                            std::variant<Grade, NotSeenReason> sight)
{
    Finding& finding = unit.record.findings.emplace_back();
    finding.id = m_ids.make<FindingId>();
    finding.visitId = visit.id;
    finding.on = visit.on;
    finding.enteredAt = visit.openedAt;
    finding.zoneId = life.zone;
    finding.sight = sight;
    if (life.wetnessNoted)
        finding.wetness = life.wetFactor != 1 ? Wetness::wet : Wetness::dry;
}

void FleetSimulation::treat(SimulatedUnit& unit, const Visit& visit, Life& life, TreatmentKind kind)
{
    Treatment& treatment = unit.record.treatments.emplace_back();
    treatment.id = m_ids.make<TreatmentId>();
    treatment.visitId = visit.id;
    treatment.on = visit.on;
    treatment.enteredAt = visit.openedAt;
    treatment.partId = life.part->id;
    treatment.zoneId = life.zone;
    treatment.kind = kind;
    if (kind == TreatmentKind::clean) {
        life.grade = 0;
        life.spentOn = farAway;
        life.draw(m_random);
        return;
    }
    const Protection& protection = m_catalogue.outlook().protections.at(kind);
    life.coatEffect = protection.effect;
    life.coatUntil = life.now + static_cast<double>(std::lround(protection.years * daysInYear));
    life.paint = true;
}

void FleetSimulation::attend(SimulatedUnit& unit, const Visit& visit, Life& life)
{
    if (life.foundSpent)
        return;
    life.age(daysOf(visit.on), m_random);
    life.wetnessNoted = life.corrodes && happens(wetnessNotedShare);
    if (life.wetnessNoted) // and so it stays until it is noted again
        life.wetFactor = happens(wetShare) ? m_catalogue.outlook().wetFactor : 1;
    const bool firstOfUnknown = life.beginsUnknown && visit.id == unit.record.visits.front().id;
    const bool unseen = !firstOfUnknown && happens(unseenShare);
    const bool running = unseen && happens(runningShare);
    const bool stopped = life.stops && life.isSpent();
    if (unseen && !(running && stopped)) { // what stopped the unit is looked at
        write(unit, visit, life, running ? NotSeenReason::running : NotSeenReason::covered);
        return;
    }
    std::size_t seen = life.grade;
    if (!life.isSpent()) {
        const GradeChances& row = misgrading[life.grade];
        seen = std::discrete_distribution<std::size_t>(row.begin(), row.end())(m_random);
        if (life.isHidden())
            seen = 0;
    }
    write(unit, visit, life, static_cast<Grade>(seen + 1));
    if (life.soils && (seen == 4 || (seen >= 2 && happens(0.8))))
        treat(unit, visit, life, TreatmentKind::clean);
    else if (!life.soils && seen == 4)
        life.foundSpent = true;
    else if (!life.soils && !life.isHidden() && (seen == 1 || seen == 2) && happens(coatedShare))
        treat(unit, visit, life, TreatmentKind::brushAndCoat);
}

SimulatedUnit FleetSimulation::next()
{
    SimulatedUnit unit;
    unit.record.unit.id = m_ids.make<UnitId>();
    unit.record.unit.kind = "split-air-conditioner";
    const Date first = Date(std::chrono::year(2004) / 4 / 20) + std::chrono::days(m_random() % 1500);
    unit.record.parts
        = {addPart("suction-accumulator", {"crown", "shell", "bottom"}), addPart("fan-blade", {"root"}),
           addPart("fins", {"face"}), addPart("base-pan", {"corners"}), addPart("run-capacitor", {"case"})};
    for (Part& part : unit.record.parts) {
        if (!happens(unknownShare))
            part.fittedOn = first - std::chrono::days(m_random() % 4000);
    }
    std::vector<Life> lives;
    for (const Part& part : unit.record.parts) {
        for (const Zone& zone : part.zones)
            lives.push_back(begin(part, zone, first));
    }
    const auto visits = 2 + m_random() % 13;
    for (unsigned number = 0; number < visits; ++number) {
        Visit visit;
        visit.id = m_ids.make<VisitId>();
        visit.unitId = unit.record.unit.id;
        visit.on = first + std::chrono::days(number * 183);
        if (number > 0)
            visit.on += std::chrono::days(static_cast<int>(m_random() % 61) - 30);
        visit.openedAt = Instant{visit.on + std::chrono::hours(9), {}};
        visit.closedAt = visit.openedAt;
        unit.record.visits.push_back(visit);
        for (Life& life : lives)
            attend(unit, visit, life);
    }
    unit.today = unit.record.visits.back().on + std::chrono::days(m_random() % 120);
    for (Life& life : lives) {
        if (life.foundSpent)
            continue;
        life.age(farAway, m_random);
        unit.fates.push_back({life.zone, life.spentOn});
    }
    return unit;
}

} // namespace padside::test

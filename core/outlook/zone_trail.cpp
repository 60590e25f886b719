// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/zone_trail.h"

#include "core/quantity/date.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace padside {

namespace {

/// What one visit says of one zone.
struct Attended
{
    Date on{};
    std::size_t rank = 0; ///< of the visit among the record's
    VisitId visitId;
    const Visit* visit = nullptr;
    const Finding* asFound = nullptr;
    const Finding* asLeft = nullptr;
    std::set<TreatmentKind> work;
};

/// In order of day; those of one day as the record has them.
using AttendedVisits = std::vector<Attended>;

template <typename AnyEntry> void keepLatest(const AnyEntry*& kept, const AnyEntry& entry)
{
    if (kept == nullptr || std::tie(kept->enteredAt.utc, kept->id) < std::tie(entry.enteredAt.utc, entry.id))
        kept = &entry;
}

/// Sorts standing findings and treatments up to a day into zones.
class Attendance
{
public:
    Attendance(const UnitRecord& record, Date today)
        : m_visits(record.visits)
    {
        for (const Part& part : record.parts) {
            for (const Zone& zone : part.zones) {
                m_placesOf[part.id].push_back(m_ofZone.size());
                m_zones.push_back(zone.id);
                m_ofZone.emplace_back().reserve(record.visits.size());
            }
        }
        for (const Finding* finding : standingAmong(record.findings)) {
            const std::size_t place = placeOf(finding->zoneId);
            if (finding->on > today || place == m_zones.size())
                continue;
            Attended& visit = at(place, finding->on, finding->visitId);
            keepLatest(finding->phase == Phase::asFound ? visit.asFound : visit.asLeft, *finding);
        }
        for (const Treatment* treatment : standingAmong(record.treatments)) {
            if (treatment->on <= today)
                sort(*treatment);
        }
    }

    /// Of the zone with this number, counted through the record's parts.
    [[nodiscard]] const AttendedVisits& ofZone(std::size_t number) const { return m_ofZone[number]; }

private:
    void sort(const Treatment& treatment)
    {
        if (treatment.zoneId) {
            if (const std::size_t place = placeOf(*treatment.zoneId); place < m_zones.size())
                at(place, treatment.on, treatment.visitId).work.insert(treatment.kind);
        } else if (const auto places = m_placesOf.find(treatment.partId); places != m_placesOf.end()) {
            for (const std::size_t place : places->second)
                at(place, treatment.on, treatment.visitId).work.insert(treatment.kind);
        }
    }

    /// Zones are mostly looked at in the record's order: the next one is tried first. The number of zones if it is
    /// none.
    [[nodiscard]] std::size_t placeOf(ZoneId zone)
    {
        ++m_lastPlace;
        if (m_lastPlace >= m_zones.size() || m_zones[m_lastPlace] != zone)
            m_lastPlace = static_cast<std::size_t>(std::ranges::find(m_zones, zone) - m_zones.begin());
        return m_lastPlace;
    }

    /// Entries of one visit mostly stand together.
    [[nodiscard]] std::size_t rankOf(VisitId id)
    {
        if (m_lastRank >= m_visits.size() || m_visits[m_lastRank].id != id)
            m_lastRank = static_cast<std::size_t>(std::ranges::find(m_visits, id, &Visit::id) - m_visits.begin());
        return m_lastRank;
    }

    /// Entries mostly come in order of day: it is nearly always the last visit or a new one.
    Attended& at(std::size_t zone, Date on, VisitId visitId)
    {
        const auto order = [](const Attended& one) { return std::tie(one.on, one.rank, one.visitId); };
        Attended wanted{on, rankOf(visitId), visitId, nullptr, nullptr, nullptr, {}};
        if (wanted.rank < m_visits.size())
            wanted.visit = &m_visits[wanted.rank];
        AttendedVisits& visits = m_ofZone[zone];
        if (visits.empty() || order(visits.back()) < order(wanted))
            return visits.emplace_back(std::move(wanted));
        const auto place = std::ranges::lower_bound(visits, order(wanted), {}, order);
        if (place != visits.end() && order(*place) == order(wanted))
            return *place;
        return *visits.insert(place, std::move(wanted));
    }

    const std::vector<Visit>& m_visits;
    std::unordered_map<PartId, std::vector<std::size_t>> m_placesOf;
    std::vector<ZoneId> m_zones;
    std::vector<AttendedVisits> m_ofZone; ///< as m_zones
    std::size_t m_lastRank = 0;
    std::size_t m_lastPlace = 0;
};

/// Turns the visits of one zone into steps.
class TrailMaker
{
public:
    TrailMaker(ZoneTrail& trail, const OutlookFigures& figures, bool stops)
        : m_trail(trail)
        , m_figures(figures)
        , m_stops(stops)
    {
    }

    void attend(const Attended& visit)
    {
        const Date on = visit.on;
        const auto found = visit.asFound != nullptr ? visit.asFound->grade() : std::nullopt;
        const auto left = visit.asLeft != nullptr ? visit.asLeft->grade() : std::nullopt;
        const bool closerLook = found && left && *left > *found && !makesBetter(visit);
        if (found && !closerLook)
            add(on, paintedOn(on) ? TrailEvent::seenOnPaint : TrailEvent::seen, *found);
        else if (visit.asFound != nullptr && !found && ranAt(visit))
            add(on, TrailEvent::notSpent);
        takeWork(on, visit, found, left);
        noteSight(on, visit, found ? found : left);
        if (visit.asFound != nullptr && visit.asFound->wetness && m_trail.corrodes)
            wetness.push_back({on, *visit.asFound->wetness});
        for (const TreatmentKind kind : visit.work)
            protect(on, kind);
    }

    std::vector<WetnessFrom> wetness;
    std::vector<Coat> coats;

private:
    [[nodiscard]] bool makesBetter(const Attended& visit) const
    {
        return visit.work.contains(TreatmentKind::replace) || visit.work.contains(TreatmentKind::repair)
            || (m_trail.soils && visit.work.contains(TreatmentKind::clean));
    }

    void takeWork(Date on, const Attended& visit, const std::optional<Grade>& found, const std::optional<Grade>& left)
    {
        if (visit.work.contains(TreatmentKind::replace)) {
            add(on, TrailEvent::renewed);
            m_paintedUntil.reset();
            coats.clear();
            if (left)
                add(on, TrailEvent::seen, *left);
        } else if (makesBetter(visit)) {
            if (left)
                add(on, TrailEvent::madeGood, *left);
            else
                add(on,
                    m_trail.soils && !visit.work.contains(TreatmentKind::repair) ? TrailEvent::cleaned
                                                                                 : TrailEvent::repaired);
        } else if (left && !found) {
            const bool painted = visit.work.contains(TreatmentKind::brushAndCoat) || paintedOn(on);
            add(on, painted ? TrailEvent::seenOnPaint : TrailEvent::seen, *left);
        } else if (left && *left > *found) {
            add(on, TrailEvent::seen, *left);
        } else if (left && *left < *found && visit.work.empty()) {
            add(on, TrailEvent::madeGood, *left);
        }
    }

    void noteSight(Date on, const Attended& visit, const std::optional<Grade>& grade)
    {
        if (grade) {
            m_trail.seenOn = on;
            m_trail.seenGrade = grade;
            m_trail.notSeenOn.reset();
        } else if (visit.asFound != nullptr) {
            m_trail.notSeenOn = on;
        }
    }

    void protect(Date on, TreatmentKind kind)
    {
        const auto protection = m_figures.protections.find(kind);
        if (protection == m_figures.protections.end() || m_trail.soils)
            return;
        const Date until = on + std::chrono::days(std::lround(protection->second.years * daysInAYear));
        coats.push_back({on, until, protection->second.effect});
        if (kind == TreatmentKind::brushAndCoat)
            m_paintedUntil = until;
    }

    [[nodiscard]] bool paintedOn(Date on) const { return m_paintedUntil && on < *m_paintedUntil; }

    [[nodiscard]] bool ranAt(const Attended& visit) const
    {
        if (!m_stops)
            return false;
        if (std::get<NotSeenReason>(visit.asFound->sight) == NotSeenReason::running)
            return true;
        if (visit.visit == nullptr)
            return false;
        const Running running = visit.visit->conditions.running;
        return running == Running::cooling || running == Running::heating || running == Running::defrosting;
    }

    void add(Date on, TrailEvent event, Grade grade = Grade::sound)
    {
        m_trail.steps.push_back({on, 0, 0, event, grade});
    }

    ZoneTrail& m_trail;
    const OutlookFigures& m_figures;
    bool m_stops;
    std::optional<Date> m_paintedUntil;
};

/// The times between the steps on the zone's clock, once that is known.
void putOnClock(ZoneTrail& trail)
{
    std::optional<Date> before = trail.fittedOn;
    for (TrailStep& step : trail.steps) {
        step.exposureYears = before ? trail.clock.yearsBetween(*before, step.on) : 0;
        step.clockSpeed = before ? trail.clock.oneSpeedBetween(*before, step.on) : 0;
        before = before ? std::max(*before, step.on) : step.on;
    }
    trail.exposureSince = before ? trail.clock.yearsBetween(*before, trail.today) : 0;
    trail.exposureSinceFitted = trail.fittedOn ? trail.clock.yearsBetween(*trail.fittedOn, trail.today) : 0;
}

void noteCoat(ZoneTrail& trail, const std::vector<Coat>& coats)
{
    const auto longest = std::ranges::max_element(coats, {}, &Coat::until);
    if (longest != coats.end() && longest->until > trail.today)
        trail.coat = *longest;
}

} // namespace

bool stopsUnit(const PartKind& kind)
{
    return std::ranges::any_of(kind.consequences, [](Consequence one) {
        return one == Consequence::endsUnit || one == Consequence::lossOfCharge || one == Consequence::compressorAtRisk
            || one == Consequence::lossOfCooling;
    });
}

std::vector<ZoneTrail> zoneTrails(const UnitRecord& record, const Catalogue& catalogue, Date today)
{
    const OutlookFigures& figures = catalogue.outlook();
    const AirFactor air = airFactor(record.site.air, figures);
    const Attendance attendance(record, today);
    std::vector<ZoneTrail> trails;
    std::size_t nextZone = 0;
    for (const Part& part : record.parts) {
        std::size_t number = std::exchange(nextZone, nextZone + part.zones.size());
        if (part.removedOn && *part.removedOn <= today)
            continue;
        if (part.fittedOn && *part.fittedOn > today)
            continue;
        const PartKind* partKind = catalogue.partKind(part.kind);
        for (const Zone& zone : part.zones) {
            const ZoneKind* zoneKind = catalogue.zoneKind(part.kind, zone.kind);
            ZoneTrail& trail = trails.emplace_back();
            trail.partId = part.id;
            trail.zoneId = zone.id;
            trail.partKind = part.kind;
            trail.zoneKind = zone.kind;
            trail.soils = zoneKind != nullptr && zoneKind->soiling;
            trail.fittedOn = part.fittedOn;
            trail.today = today;
            trail.corrodes = !trail.soils && figures.corrodes(part.kind, zone.kind);
            trail.air = air;
            TrailMaker maker(trail, figures, partKind != nullptr && stopsUnit(*partKind));
            for (const Attended& visit : attendance.ofZone(number++))
                maker.attend(visit);
            trail.clock = ExposureClock(trail.corrodes ? air.factor : 1, maker.wetness, maker.coats, figures);
            putOnClock(trail);
            noteCoat(trail, maker.coats);
        }
    }
    return trails;
}

} // namespace padside

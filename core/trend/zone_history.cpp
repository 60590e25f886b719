// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/zone_history.h"

#include <algorithm>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace padside {

namespace {

/// All that one visit says of one zone.
struct Attendance
{
    const Finding* asFound = nullptr;
    const Finding* asLeft = nullptr;
    const Treatment* work = nullptr;
};

/// Visits of one day keep the order the record gives them.
using VisitOrder = std::tuple<Date, std::size_t, VisitId>;
using Attendances = std::vector<std::pair<VisitOrder, Attendance>>;

/// The zone's attendance at that visit. Entries mostly come in order of date, so it is nearly always the last or a new
/// one.
Attendance& attendanceAt(Attendances& visits, const VisitOrder& order)
{
    if (!visits.empty() && visits.back().first == order)
        return visits.back().second;
    if (visits.empty() || visits.back().first < order)
        return visits.emplace_back(order, Attendance{}).second;
    const auto place = std::ranges::lower_bound(visits, order, {}, &Attendances::value_type::first);
    if (place != visits.end() && place->first == order)
        return place->second;
    return visits.emplace(place, order, Attendance{})->second;
}

template <typename AnyEntry> void keepLater(const AnyEntry*& kept, const AnyEntry& entry)
{
    const auto order = [](const AnyEntry& one) { return std::tuple(one.enteredAt.utc, one.id); };
    if (kept == nullptr || order(*kept) < order(entry))
        kept = &entry;
}

/// The entries of a record sorted into the zones of its fitted parts.
class ZoneSorter
{
public:
    explicit ZoneSorter(const UnitRecord& record)
    {
        for (const Part& part : record.parts) {
            if (part.removedOn)
                continue;
            for (const Zone& zone : part.zones) {
                m_placeOf.emplace(zone.id, zones.size());
                m_placesOf[part.id].push_back(zones.size());
                zones.emplace_back();
            }
        }
        for (const Visit& visit : record.visits)
            m_rankOf.emplace(visit.id, m_rankOf.size());
        for (const Finding& finding : record.findings)
            sort(finding);
        for (const Treatment& treatment : record.treatments)
            sort(treatment);
    }

    std::vector<Attendances> zones; ///< in the record's order of parts and zones

private:
    template <typename AnyEntry> Attendance& at(std::size_t place, const AnyEntry& entry)
    {
        const auto rank = m_rankOf.find(entry.visitId);
        return attendanceAt(zones[place],
                            {entry.on, rank == m_rankOf.end() ? m_rankOf.size() : rank->second, entry.visitId});
    }

    void sort(const Finding& finding)
    {
        const auto place = m_placeOf.find(finding.zoneId);
        if (place == m_placeOf.end())
            return; // a zone of a part no longer fitted
        Attendance& attendance = at(place->second, finding);
        keepLater(finding.phase == Phase::asFound ? attendance.asFound : attendance.asLeft, finding);
    }

    void sort(const Treatment& treatment)
    {
        if (treatment.zoneId) {
            if (const auto place = m_placeOf.find(*treatment.zoneId); place != m_placeOf.end())
                keepLater(at(place->second, treatment).work, treatment);
        } else if (const auto places = m_placesOf.find(treatment.partId); places != m_placesOf.end()) {
            for (const std::size_t place : places->second)
                keepLater(at(place, treatment).work, treatment);
        }
    }

    std::unordered_map<ZoneId, std::size_t> m_placeOf;
    std::unordered_map<PartId, std::vector<std::size_t>> m_placesOf;
    std::unordered_map<VisitId, std::size_t> m_rankOf;
};

/// Walks through the visits of one zone, oldest first.
class Walk
{
public:
    explicit Walk(ZoneHistory& history)
        : m_history(history)
    {
    }

    void attend(Date on, const Attendance& visit)
    {
        const std::optional<Grade> found = visit.asFound != nullptr ? visit.asFound->grade() : std::nullopt;
        const std::optional<Grade> left = visit.asLeft != nullptr ? visit.asLeft->grade() : std::nullopt;
        if (found || left)
            forgetNotSeen();
        else if (visit.asFound != nullptr)
            notSeen(on, std::get<NotSeenReason>(visit.asFound->sight));
        if (found) {
            m_history.known = SeenGrade{on, *found, visit.asFound->id};
            m_history.seen.push_back(*m_history.known);
            m_history.earlierWork = m_lastWork;
            m_history.asLeft.reset();
        }
        if (left) {
            m_history.known = SeenGrade{on, *left, visit.asLeft->id};
            m_history.asLeft = left;
        }
        if (visit.asFound != nullptr && visit.asFound->wetness) {
            m_history.lastWetness = visit.asFound->wetness;
            m_history.lastWetnessOn = on;
        }
        if (visit.work != nullptr) {
            m_history.lastTreatedOn = on;
            m_lastWork = EarlierWork{on, visit.work->kind, m_history.known};
        }
    }

private:
    void forgetNotSeen()
    {
        m_history.notSeenSince.reset();
        m_history.notSeenLast.reset();
        m_history.lastNotSeenReason.reset();
        m_history.timesNotSeen = 0;
    }

    void notSeen(Date on, NotSeenReason reason)
    {
        if (!m_history.notSeenSince)
            m_history.notSeenSince = on;
        m_history.notSeenLast = on;
        m_history.lastNotSeenReason = reason;
        ++m_history.timesNotSeen;
    }

    ZoneHistory& m_history;
    std::optional<EarlierWork> m_lastWork;
};

int steps(const SeenGrade& from, const SeenGrade& to)
{
    return numeral(to.grade) - numeral(from.grade);
}

/// Grades per year from the sighting `back` + 1 before the last to the one `back` before it.
std::optional<double> intervalRate(const std::vector<SeenGrade>& seen, std::size_t back)
{
    if (seen.size() < back + 2)
        return std::nullopt;
    const SeenGrade& to = seen[seen.size() - 1 - back];
    const SeenGrade& from = seen[seen.size() - 2 - back];
    if (to.on <= from.on)
        return std::nullopt; // two visits on one day make no rate
    return steps(from, to) / yearsBetween(from.on, to.on);
}

void summarize(ZoneHistory& history)
{
    const std::vector<SeenGrade>& seen = history.seen;
    if (seen.empty())
        return;
    history.lastSeen = seen.back();
    history.worstEver = std::ranges::max_element(seen, {}, &SeenGrade::grade)->grade;
    auto run = seen.rbegin();
    while (std::next(run) != seen.rend() && std::next(run)->grade == seen.back().grade)
        ++run;
    history.atGradeSince = run->on;
    if (seen.size() < 2)
        return;
    history.previousSeen = seen[seen.size() - 2];
    history.delta = steps(*history.previousSeen, *history.lastSeen);
    history.rate = intervalRate(seen, 0);
    history.rateBefore = intervalRate(seen, 1);
}

} // namespace

std::vector<ZoneHistory> zoneHistories(const UnitRecord& record)
{
    const ZoneSorter sorter(record);
    std::vector<ZoneHistory> histories;
    histories.reserve(sorter.zones.size());
    for (const Part& part : record.parts) {
        if (part.removedOn)
            continue;
        for (const Zone& zone : part.zones) {
            ZoneHistory& history = histories.emplace_back();
            history.partId = part.id;
            history.zoneId = zone.id;
            Walk walk(history);
            for (const auto& [order, visit] : sorter.zones[histories.size() - 1])
                walk.attend(std::get<Date>(order), visit);
            summarize(history);
        }
    }
    return histories;
}

} // namespace padside

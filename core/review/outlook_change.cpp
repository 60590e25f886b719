// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/outlook_change.h"

#include "core/review/record_at.h"
#include "core/review/visit_changes.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace padside {

namespace {

constexpr auto oneYear = static_cast<std::size_t>(Horizon::oneYear);
constexpr double leastChangeTold = 0.02;

/// What was believed on a day, for chances at once and dates where they are asked for: those take most of the time.
class Believed
{
public:
    Believed(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model, Date on)
        : m_catalogue(catalogue)
        , m_on(on)
    {
        const UnitRecord known = recordAt(record, on);
        m_beliefs = zoneBeliefs(known, catalogue, model, on);
        m_measured = measuredOutlooks(known, catalogue, on);
    }

    [[nodiscard]] const std::vector<ZoneBelief>& zones() const { return m_beliefs; }
    /// Empty: nothing is believed of this zone.
    [[nodiscard]] std::optional<double> withinAYear(ZoneId zone) const
    {
        const ZoneBelief* belief = beliefOf(zone);
        if (belief == nullptr)
            return std::nullopt;
        const Date by = horizonsAfter(m_on)[oneYear];
        return leadingChance(chanceSpentBy(*belief, by), zone, m_measured, by).chance;
    }
    /// Of a zone something is believed of.
    [[nodiscard]] LeadingOutlook leading(ZoneId zone) const
    {
        return leadingOutlook(forecastZone(*beliefOf(zone), m_catalogue.outlook(), horizonsAfter(m_on)), m_measured,
                              m_on);
    }
    [[nodiscard]] double pace(ZoneId zone) const { return beliefOf(zone)->belief.meanPace(); }

private:
    [[nodiscard]] const ZoneBelief* beliefOf(ZoneId zone) const
    {
        const auto found = std::ranges::find(m_beliefs, zone, [](const ZoneBelief& one) { return one.trail.zoneId; });
        return found == m_beliefs.end() ? nullptr : &*found;
    }

    const Catalogue& m_catalogue;
    Date m_on;
    std::vector<ZoneBelief> m_beliefs;
    std::vector<MeasuredOutlook> m_measured;
};

/// Everything a change is told from.
struct Told
{
    const UnitRecord& record;
    const Catalogue& catalogue;
    const VisitChanges& changes;
    const Believed& now;
};

const Zone* sameZone(const Part& part, const std::string& kind)
{
    const auto found = std::ranges::find(part.zones, kind, &Zone::kind);
    return found == part.zones.end() ? nullptr : &*found;
}

/// The zone in whose place a part fitted at this visit has come; the zone itself for any other.
ZoneId zoneBefore(const Told& told, const Part& part, const Zone& zone)
{
    if (std::ranges::find(told.changes.partsFitted, part.id) == told.changes.partsFitted.end() || !part.replaces)
        return zone.id;
    const Part* old = findPart(told.record, *part.replaces);
    const Zone* same = old != nullptr ? sameZone(*old, zone.kind) : nullptr;
    return same != nullptr ? same->id : zone.id;
}

bool treatedAs(const VisitChanges& changes, const Part& part, ZoneId zone, TreatmentKind kind)
{
    return std::ranges::any_of(changes.treatments, [&](const Treatment& one) {
        return one.kind == kind && (one.zoneId == zone || (!one.zoneId && one.partId == part.id));
    });
}

bool soils(const Catalogue& catalogue, const Part& part, const Zone& zone)
{
    const ZoneKind* kind = catalogue.zoneKind(part.kind, zone.kind);
    return kind != nullptr && kind->soiling;
}

/// Of work done at the visit; empty if none bears on the outlook.
std::optional<Sentence> becauseOfWork(const Told& told, const Part& part, const Zone& zone)
{
    const VisitChanges& changes = told.changes;
    if (std::ranges::find(changes.partsFitted, part.id) != changes.partsFitted.end()
        || treatedAs(changes, part, zone.id, TreatmentKind::replace))
        return Sentence{PADSIDE_SAY("A new part: its outlook begins afresh."), {}};
    if (treatedAs(changes, part, zone.id, TreatmentKind::repair))
        return Sentence{PADSIDE_SAY("Repaired at this visit."), {}};
    if (soils(told.catalogue, part, zone) && treatedAs(changes, part, zone.id, TreatmentKind::clean))
        return Sentence{PADSIDE_SAY("Cleaned: the dirt begins anew."), {}};
    for (const auto& protection : told.catalogue.outlook().protections) {
        if (treatedAs(changes, part, zone.id, protection.first))
            return Sentence{PADSIDE_SAY("Protected: it gets worse more slowly now; what lies under it is not better "
                                        "for it."),
                            {}};
    }
    return std::nullopt;
}

Sentence becauseOfGrade(Grade grade, double pace, bool worse)
{
    std::vector<Argument> arguments{std::int64_t{numeral(grade)}, Word{std::string(wordOf(grade))}};
    const bool fast = pace >= fastPace;
    const bool slow = pace <= slowPace;
    if (worse && !fast)
        return {PADSIDE_SAY("Found {0} {1}: more than was expected by now."), std::move(arguments)};
    if (!worse && !slow)
        return {PADSIDE_SAY("Found {0} {1}: less than might have been by now."), std::move(arguments)};
    arguments.emplace_back(Number{pace, 1});
    return {worse ? PADSIDE_SAY("Found {0} {1}: it gets worse faster than its kind, at about {2} times the pace.")
                  : PADSIDE_SAY("Found {0} {1}: it gets worse more slowly than its kind, at about {2} times the pace."),
            std::move(arguments)};
}

/// Why a zone's outlook, which `leads` now, is another one; empty if the visit says nothing of it.
std::optional<Sentence> becauseOf(const Told& told, const Part& part, const Zone& zone, OutlookBy leads, bool worse)
{
    if (auto work = becauseOfWork(told, part, zone))
        return work;
    const auto change = std::ranges::find(told.changes.zones, zone.id, &ZoneChange::zoneId);
    const bool measured = std::ranges::any_of(told.changes.readings,
                                              [&](const ReadingChange& one) { return one.reading.zoneId == zone.id; });
    if (measured && leads != OutlookBy::grades)
        return Sentence{PADSIDE_SAY("What was measured at this visit leads: {0}."), {Word{std::string(wordOf(leads))}}};
    if (change == told.changes.zones.end())
        return std::nullopt;
    if (change->kind == ZoneChangeKind::notSeen)
        return Sentence{PADSIDE_SAY("Not seen: less certain than when it was last told."), {}};
    const auto grade = change->asFound ? change->asFound : change->asLeft;
    if (!grade)
        return std::nullopt;
    return becauseOfGrade(*grade, told.now.pace(zone.id), worse);
}

bool notSeenAt(const VisitChanges& changes, ZoneId zone)
{
    return std::ranges::any_of(changes.zones, [zone](const ZoneChange& one) {
        return one.zoneId == zone && one.kind == ZoneChangeKind::notSeen;
    });
}

const Visit* visitBefore(const UnitRecord& record, const Visit& visit)
{
    const Visit* last = nullptr;
    for (const Visit& one : record.visits) {
        if (one.id != visit.id && one.on < visit.on && (last == nullptr || one.on >= last->on))
            last = &one;
    }
    return last;
}

} // namespace

std::vector<OutlookChange> outlookChanges(const UnitRecord& record, const Catalogue& catalogue,
                                          const OutlookModel& model, VisitId visitId)
{
    const auto visit = std::ranges::find(record.visits, visitId, &Visit::id);
    if (visit == record.visits.end())
        return {};
    const VisitChanges changes = visitChanges(record, catalogue, visitId);
    const Believed now(record, catalogue, model, visit->on);
    const Believed before(recordBefore(record, *visit), catalogue, model, visit->on);
    const Visit* earlier = visitBefore(record, *visit);
    std::optional<Believed> told; // at the visit before; only where a zone was looked for in vain
    if (earlier != nullptr && changes.count(ZoneChangeKind::notSeen) > 0)
        told.emplace(record, catalogue, model, earlier->on);
    const Told all{record, catalogue, changes, now};
    std::vector<OutlookChange> found;
    for (const ZoneBelief& zone : now.zones()) {
        const Part* part = findPart(record, zone.trail.partId);
        const Zone* place = findZone(record, zone.trail.zoneId);
        const Believed& then = told && notSeenAt(changes, place->id) ? *told : before;
        const ZoneId old = zoneBefore(all, *part, *place);
        const auto was = then.withinAYear(old);
        OutlookChange change{part->id, place->id, was.value_or(0), *now.withinAYear(place->id), {}, {}, {}};
        if (!was || std::abs(change.now - change.before) < leastChangeTold)
            continue;
        const LeadingOutlook leads = now.leading(place->id);
        if (auto because = becauseOf(all, *part, *place, leads.by, change.now > change.before)) {
            change.datesBefore = then.leading(old).dates;
            change.datesNow = leads.dates;
            change.because = *std::move(because);
            found.push_back(std::move(change));
        }
    }
    std::ranges::stable_sort(found, std::ranges::greater{},
                             [](const OutlookChange& one) { return std::abs(one.now - one.before); });
    return found;
}

} // namespace padside

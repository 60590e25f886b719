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

/// Everything a change is told from.
struct Told
{
    const UnitRecord& record;
    const Catalogue& catalogue;
    const VisitChanges& changes;
    const UnitForecast& now;
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
    const PartKind* kind = catalogue.partKind(part.kind);
    return kind != nullptr && std::ranges::any_of(kind->zones, [&zone](const ZoneKind& one) {
               return one.code == zone.kind && one.soiling;
           });
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
                  : PADSIDE_SAY("Found {0} {1}: it gets worse slower than its kind, at about {2} times the pace."),
            std::move(arguments)};
}

/// Why a zone's outlook is another one; empty if the visit says nothing of it.
std::optional<Sentence> becauseOf(const Told& told, const Part& part, const Zone& zone, bool worse)
{
    if (auto work = becauseOfWork(told, part, zone))
        return work;
    const auto change = std::ranges::find(told.changes.zones, zone.id, &ZoneChange::zoneId);
    const LeadingOutlook* leading = told.now.leadingOf(zone.id);
    const bool measured = std::ranges::any_of(told.changes.readings,
                                              [&](const ReadingChange& one) { return one.reading.zoneId == zone.id; });
    if (measured && leading->by != OutlookBy::grades)
        return Sentence{PADSIDE_SAY("What was measured at this visit leads: {0}."),
                        {Word{std::string(wordOf(leading->by))}}};
    if (change == told.changes.zones.end())
        return std::nullopt;
    if (change->kind == ZoneChangeKind::notSeen)
        return Sentence{PADSIDE_SAY("Not seen: less certain than when it was last told."), {}};
    const auto grade = change->asFound ? change->asFound : change->asLeft;
    if (!grade)
        return std::nullopt;
    return becauseOfGrade(*grade, told.now.of(zone.id)->pace, worse);
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
    const UnitForecast now = unitForecast(record, catalogue, model, visit->on);
    const UnitForecast before = unitForecast(recordBefore(record, *visit), catalogue, model, visit->on);
    const Visit* earlier = visitBefore(record, *visit);
    const UnitForecast told = earlier != nullptr ? unitForecast(record, catalogue, model, earlier->on) : before;
    const Told all{record, catalogue, changes, now};
    std::vector<OutlookChange> found;
    for (const LeadingOutlook& zone : now.leading) {
        const Part* part = findPart(record, zone.partId);
        const Zone* place = findZone(record, zone.zoneId);
        const UnitForecast& then = notSeenAt(changes, zone.zoneId) ? told : before;
        const LeadingOutlook* was = then.leadingOf(zoneBefore(all, *part, *place));
        if (was == nullptr)
            continue;
        OutlookChange change{part->id,   place->id, was->spent[oneYear].chance, zone.spent[oneYear].chance, was->dates,
                             zone.dates, {}};
        if (std::abs(change.now - change.before) < leastChangeTold)
            continue;
        if (auto because = becauseOf(all, *part, *place, change.now > change.before)) {
            change.because = *std::move(because);
            found.push_back(std::move(change));
        }
    }
    std::ranges::stable_sort(found, std::ranges::greater{},
                             [](const OutlookChange& one) { return std::abs(one.now - one.before); });
    return found;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/subject.h"
#include "core/schedule/next_checks.h"
#include "core/schedule/zone_due.h"

#include <algorithm>
#include <set>

namespace padside {

namespace {

/// A zone waiting, with all that its sentences name.
struct Waiting
{
    ZoneDue due;
    const Part* part = nullptr;
    const Zone* zone = nullptr;
    const ZoneHistory* history = nullptr;
    bool soils = false;
};

/// Zones that share one check: the first stands for all of them.
using Group = std::vector<Waiting>;

bool wholeUnit(DueCause cause)
{
    return cause == DueCause::routine || cause == DueCause::neverSeen;
}

bool belongTogether(const Waiting& a, const Waiting& b)
{
    if (a.due != b.due || a.history->notSeenLast != b.history->notSeenLast
        || a.history->lastNotSeenReason != b.history->lastNotSeenReason)
        return false;
    const auto seenOn = [](const Waiting& one) { return one.history->known ? one.history->known->on : Date{}; };
    if (seenOn(a) != seenOn(b))
        return false;
    if (wholeUnit(a.due.cause))
        return true;
    return a.part == b.part && a.soils == b.soils && a.history->known->grade == b.history->known->grade;
}

std::int64_t partsIn(const Group& group)
{
    std::set<PartId> parts;
    for (const Waiting& one : group)
        parts.insert(one.part->id);
    return static_cast<std::int64_t>(parts.size());
}

Sentence whatOfZone(const UnitRecord& record, const Catalogue& catalogue, const Waiting& one)
{
    std::string pattern;
    switch (one.due.cause) {
    case DueCause::routine:
    case DueCause::marked:
        pattern = PADSIDE_SAY("{0}{1}, {2}: look again");
        break;
    case DueCause::spent:
        pattern = one.soils ? PADSIDE_SAY("{0}{1}, {2}: clean") : PADSIDE_SAY("{0}{1}, {2}: repair or replace");
        break;
    case DueCause::wet:
        pattern = PADSIDE_SAY("{0}{1}, {2}: see it dry");
        break;
    case DueCause::notSeen:
    case DueCause::neverSeen:
        pattern = PADSIDE_SAY("{0}{1}, {2}: see it");
        break;
    }
    return about(subjectOf(record, catalogue, *one.part, one.zone), pattern);
}

Sentence whatOfPart(const UnitRecord& record, const Catalogue& catalogue, const Group& group)
{
    std::string pattern;
    switch (group.front().due.cause) {
    case DueCause::routine:
    case DueCause::marked:
        pattern = PADSIDE_SAY("{0}{1}: look again at {2} zones");
        break;
    case DueCause::spent:
        pattern = group.front().soils ? PADSIDE_SAY("{0}{1}: clean {2} zones")
                                      : PADSIDE_SAY("{0}{1}: repair or replace, {2} zones");
        break;
    case DueCause::wet:
        pattern = PADSIDE_SAY("{0}{1}: see {2} zones dry");
        break;
    case DueCause::notSeen:
    case DueCause::neverSeen:
        pattern = PADSIDE_SAY("{0}{1}: see {2} zones");
        break;
    }
    return about(subjectOf(record, catalogue, *group.front().part), pattern, {static_cast<std::int64_t>(group.size())});
}

Sentence whatOfUnit(const Group& group)
{
    const std::vector<Argument> counts{static_cast<std::int64_t>(group.size()), partsIn(group)};
    if (group.front().due.cause == DueCause::neverSeen)
        return Sentence{PADSIDE_SAY("See {0} zones of {1} parts for the first time"), counts};
    return Sentence{PADSIDE_SAY("Look again at {0} zones of {1} parts"), counts};
}

Sentence whyNeverSeen(const ZoneHistory& history)
{
    if (!history.notSeenLast)
        return Sentence{PADSIDE_SAY("Never seen yet, so nothing is known."), {}};
    return Sentence{PADSIDE_SAY("Never seen yet; looked for in vain on {0} ({1})."),
                    {*history.notSeenLast, Word{std::string(wordOf(*history.lastNotSeenReason))}}};
}

Sentence whyOf(const Group& group)
{
    const ZoneHistory& history = *group.front().history;
    if (!history.known)
        return whyNeverSeen(history);
    const SeenGrade& known = *history.known;
    const Date latest = group.front().due.window.latest;
    std::vector<Argument> sighting{static_cast<std::int64_t>(numeral(known.grade)),
                                   Word{std::string(wordOf(known.grade))}, known.on, latest};
    switch (group.front().due.cause) {
    case DueCause::routine:
        if (group.size() > 1)
            return Sentence{PADSIDE_SAY("Sound or worn when last seen on {0}; to be seen again by {1}."),
                            {known.on, latest}};
        return Sentence{PADSIDE_SAY("{0} {1} when last seen on {2}; to be seen again by {3}."), std::move(sighting)};
    case DueCause::marked:
        return Sentence{PADSIDE_SAY("{0} {1} when last seen on {2}; at this grade it is to be seen again by {3}."),
                        std::move(sighting)};
    case DueCause::spent:
        return Sentence{PADSIDE_SAY("{0} {1} when last seen on {2}; it can't wait longer than {3}."),
                        std::move(sighting)};
    case DueCause::wet:
        return Sentence{PADSIDE_SAY("Wet when last seen on {2} ({0} {1}); only a dry surface shows its grade."),
                        std::move(sighting)};
    case DueCause::notSeen:
    case DueCause::neverSeen:
        break;
    }
    sighting.insert(
        sighting.end(),
        {*history.notSeenLast, Word{std::string(wordOf(history.lastNotSeenReason.value_or(NotSeenReason::other)))}});
    return Sentence{PADSIDE_SAY("{0} {1} when last seen on {2}; looked for in vain on {4} ({5})."),
                    std::move(sighting)};
}

Check checkFor(const UnitRecord& record, const Catalogue& catalogue, const Group& group)
{
    const Waiting& first = group.front();
    Check check;
    check.unitId = record.unit.id;
    if (group.size() == 1) {
        check.partId = first.part->id;
        check.zoneId = first.zone->id;
        check.what = whatOfZone(record, catalogue, first);
    } else if (partsIn(group) == 1) {
        check.partId = first.part->id;
        check.what = whatOfPart(record, catalogue, group);
    } else {
        check.what = whatOfUnit(group);
    }
    check.earliest = first.due.window.earliest;
    check.latest = first.due.window.latest;
    check.conditions = first.due.conditions;
    check.why = whyOf(group);
    return check;
}

} // namespace

std::vector<Check> zoneChecks(const UnitRecord& record, const Catalogue& catalogue, Date today,
                              std::span<const ZoneHistory> zones)
{
    std::vector<Group> groups;
    for (const ZoneHistory& history : zones) {
        const Part* part = findPart(record, history.partId);
        const Zone* zone = part != nullptr ? findZone(record, history.zoneId) : nullptr;
        if (zone == nullptr)
            continue; // a history of another record
        const ZoneKind* kind = catalogue.zoneKind(part->kind, zone->kind);
        const Waiting waiting{zoneDue(record, catalogue, today, *part, history), part, zone, &history,
                              kind != nullptr && kind->soiling};
        const auto group
            = std::ranges::find_if(groups, [&](const Group& one) { return belongTogether(one.front(), waiting); });
        if (group != groups.end())
            group->push_back(waiting);
        else
            groups.push_back({waiting});
    }
    std::vector<Check> checks;
    checks.reserve(groups.size());
    std::ranges::transform(groups, std::back_inserter(checks),
                           [&](const Group& group) { return checkFor(record, catalogue, group); });
    return checks;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/next_checks.h"
#include "core/schedule/zone_check_words.h"

#include <algorithm>
#include <iterator>

namespace padside {

namespace {

bool wholeUnit(DueCause cause)
{
    return cause == DueCause::routine || cause == DueCause::neverSeen;
}

/// Each zone has a date of its own by its outlook; those of one part (or never seen) go together where their windows
/// meet.
bool ownDates(DueCause cause)
{
    return cause == DueCause::outlook || cause == DueCause::neverSeen;
}

bool sameReason(const WaitingZone& a, const WaitingZone& b)
{
    if (a.due.cause != b.due.cause || a.due.conditions != b.due.conditions)
        return false;
    if (a.due.cause == DueCause::outlook)
        return a.part == b.part;
    const ZoneHistory& one = *a.history;
    const ZoneHistory& other = *b.history;
    if (one.notSeenLast != other.notSeenLast || one.lastNotSeenReason != other.lastNotSeenReason)
        return false;
    if (a.due.cause == DueCause::neverSeen)
        return a.due.byOutlook == b.due.byOutlook;
    if (a.due.window != b.due.window || one.known->on != other.known->on)
        return false;
    return wholeUnit(a.due.cause) || (a.part == b.part && a.soils == b.soils && one.known->grade == other.known->grade);
}

/// The days on which all zones of the group can be looked at; empty ones end before they begin.
Window commonWindow(const ZoneGroup& group)
{
    Window common = group.front().due.window;
    for (const WaitingZone& one : group) {
        common.earliest = std::max(common.earliest, one.due.window.earliest);
        common.latest = std::min(common.latest, one.due.window.latest);
    }
    return common;
}

bool fits(const ZoneGroup& group, const WaitingZone& one)
{
    if (!sameReason(group.front(), one))
        return false;
    const Window common = commonWindow(group);
    return std::max(common.earliest, one.due.window.earliest) <= std::min(common.latest, one.due.window.latest);
}

Check checkFor(const UnitRecord& record, const Catalogue& catalogue, const ZoneGroup& group, Date today)
{
    Check check;
    check.unitId = record.unit.id;
    if (group.size() == 1)
        check.zoneId = group.front().zone->id;
    if (partsIn(group) == 1)
        check.partId = group.front().part->id;
    for (const WaitingZone& one : group)
        check.zones.push_back(one.zone->id);
    check.what = whatOf(record, catalogue, group);
    const Window window = commonWindow(group);
    check.earliest = window.earliest;
    check.latest = window.latest;
    check.conditions = group.front().due.conditions;
    check.why = whyOf(record, catalogue, group, today);
    return check;
}

} // namespace

std::vector<Check> zoneChecks(const UnitRecord& record, const Catalogue& catalogue, Date today,
                              std::span<const ZoneHistory> zones, std::span<const ZoneRisk> risks)
{
    ZoneGroup waiting;
    for (const ZoneHistory& history : zones) {
        const Part* part = findPart(record, history.partId);
        const Zone* zone = part != nullptr ? findZone(record, history.zoneId) : nullptr;
        if (zone == nullptr)
            continue; // a history of another record
        const ZoneKind* kind = catalogue.zoneKind(part->kind, zone->kind);
        const ZoneRisk* risk = riskOf(risks, zone->id);
        waiting.push_back({zoneDue(record, catalogue, today, *part, history, risk), part, zone, &history, risk,
                           kind != nullptr && kind->soiling});
    }
    // Those with dates of their own most pressing first: it leads its group.
    std::ranges::stable_sort(waiting, {}, [](const WaitingZone& one) {
        return ownDates(one.due.cause) ? one.due.window.latest : Date::min();
    });
    std::vector<ZoneGroup> groups;
    for (const WaitingZone& one : waiting) {
        const auto group = std::ranges::find_if(groups, [&](const ZoneGroup& each) { return fits(each, one); });
        if (group != groups.end())
            group->push_back(one);
        else
            groups.push_back({one});
    }
    std::vector<Check> checks;
    checks.reserve(groups.size());
    std::ranges::transform(groups, std::back_inserter(checks),
                           [&](const ZoneGroup& group) { return checkFor(record, catalogue, group, today); });
    return checks;
}

} // namespace padside

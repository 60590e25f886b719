// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/zone_due.h"

#include "core/schedule/season.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace padside {

namespace {

using std::chrono::days;

int whole(const Catalogue& catalogue, std::string_view assumption)
{
    return static_cast<int>(catalogue.assumption(assumption));
}

/// The last day by the grade alone.
Date latestByGrade(const Catalogue& catalogue, const SeenGrade& known)
{
    if (known.grade == Grade::spent)
        return known.on + days(whole(catalogue, "grade-5-days"));
    constexpr std::array<std::string_view, 4> months{"grade-1-months", "grade-2-months", "grade-3-months",
                                                     "grade-4-months"};
    return addMonths(known.on, whole(catalogue, months.at(static_cast<std::size_t>(numeral(known.grade) - 1))));
}

/// A date shortly before a season may wait for that season's first week.
Date waitForSeason(const Site& site, const Catalogue& catalogue, Date latest)
{
    if (inSeason(site, latest))
        return latest;
    const Window season = seasonAfter(site, latest).window;
    const bool near = season.earliest - latest <= days(whole(catalogue, "season-grace-days"));
    return near ? std::min(season.earliest + days(6), season.latest) : latest;
}

/// Not later than the outlook allows, and not before `soonest`.
void boundByOutlook(ZoneDue& due, const ZoneRisk* risk, Date soonest)
{
    if (risk == nullptr || !risk->withinUntil || *risk->withinUntil >= due.window.latest)
        return;
    due.window.latest = std::max(*risk->withinUntil, soonest);
    due.window.earliest = std::min(due.window.earliest, due.window.latest);
    due.byOutlook = true;
}

/// The day from which a zone never seen waits for its first look: the first visit of all, or its fitting if that came
/// later. Visits that didn't see it don't put it off. Empty: no visit yet.
std::optional<Date> waitingSince(const UnitRecord& record, const Part& part)
{
    std::optional<Date> since;
    for (const Visit& visit : record.visits) {
        if (!visit.isOpen() && (!since || visit.on < *since))
            since = visit.on;
    }
    return since && part.fittedOn ? std::max(*since, *part.fittedOn) : since;
}

ZoneDue dueUnseen(const UnitRecord& record, Date today, const Part& part, const ZoneHistory& zone, const ZoneRisk* risk)
{
    ZoneDue due;
    due.cause = DueCause::neverSeen;
    Date soonest = today;
    if (const auto since = waitingSince(record, part)) {
        soonest = *since + days(1);
        due.window.latest = seasonAfter(record.site, *since).window.latest;
        due.window.earliest = std::min(zone.notSeenLast.value_or(*since) + days(1), due.window.latest);
    } else {
        const Date springEnd = seasonNotOver(record.site, VisitReason::spring, today).window.latest;
        const Date fallEnd = seasonNotOver(record.site, VisitReason::fall, today).window.latest;
        due.window = {today, std::min(springEnd, fallEnd)};
    }
    boundByOutlook(due, risk, soonest);
    return due;
}

/// A later sighting that says nothing of wetness ends the wait: it was graded as it was.
bool wetWhenLastSeen(const ZoneHistory& zone)
{
    return zone.lastWetness == Wetness::wet && zone.lastSeen && *zone.lastWetnessOn >= zone.lastSeen->on;
}

DueCause causeByGrade(Grade grade)
{
    if (grade == Grade::spent)
        return DueCause::spent;
    return grade >= Grade::marked ? DueCause::marked : DueCause::routine;
}

/// After an attempt in vain the next season's visit must see it; never later than without the attempt.
void boundByAttempt(ZoneDue& due, const Site& site, const ZoneHistory& zone)
{
    const Date nextVisit = seasonAfter(site, *zone.notSeenSince).window.latest;
    if (nextVisit < due.window.latest || !due.byOutlook) {
        due.cause = DueCause::notSeen;
        due.byOutlook = false;
    }
    due.window.latest = std::min(due.window.latest, nextVisit);
    due.window.earliest = std::min(*zone.notSeenLast + days(1), due.window.latest);
}

} // namespace

Date openingOf(const Catalogue& catalogue, Date seen, Date latest)
{
    const double share = std::clamp(catalogue.assumption("window-open-share"), 0.0, 1.0);
    const auto wait = static_cast<int>(share * static_cast<double>((latest - seen).count()));
    return std::min(latest, seen + days(std::max(1, wait)));
}

ZoneDue zoneDue(const UnitRecord& record, const Catalogue& catalogue, Date today, const Part& part,
                const ZoneHistory& zone, const ZoneRisk* risk)
{
    ZoneDue due;
    const ZoneKind* kind = catalogue.zoneKind(part.kind, findZone(record, zone.zoneId)->kind);
    const bool soils = kind != nullptr && kind->soiling;
    if (!zone.known) {
        due = dueUnseen(record, today, part, zone, risk);
    } else {
        const SeenGrade& known = *zone.known;
        due.cause = causeByGrade(known.grade);
        due.window.latest = latestByGrade(catalogue, known);
        if (known.grade < Grade::poor)
            due.window.latest = waitForSeason(record.site, catalogue, due.window.latest);
        const Date most = addMonths(known.on, whole(catalogue, "look-again-most-months"));
        due.window.latest = std::min(due.window.latest, most);
        if (known.grade != Grade::spent)
            boundByOutlook(due, risk, known.on);
        if (due.byOutlook)
            due.cause = DueCause::outlook;
        due.window.earliest = openingOf(catalogue, known.on, due.window.latest);
        if (wetWhenLastSeen(zone) && !soils && known.grade != Grade::spent) {
            const Date seeDry = addMonths(known.on, whole(catalogue, "see-dry-months"));
            if (seeDry <= due.window.latest || !due.byOutlook) {
                due.cause = DueCause::wet;
                due.byOutlook = false;
            }
            due.window.latest = std::min(due.window.latest, seeDry);
            due.window.earliest = std::min(known.on + days(1), due.window.latest);
            due.conditions.push_back(Condition::dry);
        }
        if (zone.notSeenLast && known.grade != Grade::spent)
            boundByAttempt(due, record.site, zone);
    }
    if (zone.lastNotSeenReason == NotSeenReason::running)
        due.conditions.push_back(Condition::off);
    return due;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/next_checks.h"
#include "core/schedule/season.h"

#include <algorithm>
#include <set>

namespace padside {

namespace {

/// A season's tasks over all fitted parts.
struct Checklist
{
    std::int64_t tasks = 0;
    std::set<Condition> needs;
};

Checklist checklistOf(const UnitRecord& record, const Catalogue& catalogue, VisitReason season)
{
    Checklist list;
    for (const Part& part : record.parts) {
        const PartKind* kind = part.removedOn ? nullptr : catalogue.partKind(part.kind);
        if (kind == nullptr)
            continue;
        for (const Task& task : kind->tasks) {
            if (task.season != season)
                continue;
            ++list.tasks;
            list.needs.insert(task.needs.begin(), task.needs.end());
        }
    }
    return list;
}

std::optional<Date> lastDone(const UnitRecord& record, VisitReason season)
{
    std::optional<Date> last;
    for (const Visit& visit : record.visits) {
        if (visit.reason == season && !visit.isOpen() && (!last || visit.on > *last))
            last = visit.on;
    }
    return last;
}

/// A visit somewhat before or after the season counts for it: the next one due ends more than half a year later.
Season nextDue(const Site& site, VisitReason season, std::optional<Date> done, Date today)
{
    return done ? seasonNotOver(site, season, addMonths(*done, 6)) : seasonNotOver(site, season, today);
}

/// `season` is over and another one has begun since.
bool overtaken(const Site& site, const Season& season, Date today)
{
    return season.window.latest < today && seasonAfter(site, season.window.latest).window.earliest <= today;
}

Sentence whatOf(VisitReason season, std::int64_t tasks)
{
    if (season == VisitReason::fall)
        return tasks == 1 ? Sentence{PADSIDE_SAY("Fall checklist: one task"), {}}
                          : Sentence{PADSIDE_SAY("Fall checklist: {0} tasks"), {tasks}};
    return tasks == 1 ? Sentence{PADSIDE_SAY("Spring checklist: one task"), {}}
                      : Sentence{PADSIDE_SAY("Spring checklist: {0} tasks"), {tasks}};
}

} // namespace

std::vector<Check> checklistChecks(const UnitRecord& record, const Catalogue& catalogue, Date today)
{
    std::vector<Check> checks;
    for (const VisitReason reason : {VisitReason::spring, VisitReason::fall}) {
        const Checklist list = checklistOf(record, catalogue, reason);
        if (list.tasks == 0)
            continue;
        const auto done = lastDone(record, reason);
        Season season = nextDue(record.site, reason, done, today);
        Check check;
        check.unitId = record.unit.id;
        check.what = whatOf(reason, list.tasks);
        check.checklist = reason;
        if (overtaken(record.site, season, today)) {
            check.why = Sentence{PADSIDE_SAY("Last done on {0}; it was due by {1} and the season has passed."),
                                 {*done, season.window.latest}};
            season = seasonNotOver(record.site, reason, today);
        } else if (done) {
            check.why = Sentence{PADSIDE_SAY("Once a year in its season; last done on {0}."), {*done}};
        } else {
            check.why = Sentence{PADSIDE_SAY("Once a year in its season; none is on record yet."), {}};
        }
        check.earliest = season.window.earliest;
        check.latest = season.window.latest;
        check.conditions.assign(list.needs.begin(), list.needs.end());
        checks.push_back(std::move(check));
    }
    return checks;
}

} // namespace padside

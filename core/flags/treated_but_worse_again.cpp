// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

#include <algorithm>

namespace padside {

namespace {

/// What gets worse once the work has done its time is no failure of the work.
bool hasHeldItsTime(const ZoneView& zone, const SeenGrade& left, Date workedOn)
{
    const auto worse = std::ranges::find_if(
        zone.history.seen, [&](const SeenGrade& seen) { return seen.on > workedOn && seen.grade > left.grade; });
    const int months = static_cast<int>(zone.catalogue.assumption("work-holds-months"));
    return worse != zone.history.seen.end() && addMonths(workedOn, months) < worse->on;
}

} // namespace

std::optional<Worry> treatedButWorseAgain(const ZoneView& zone)
{
    const ZoneHistory& history = zone.history;
    if (!history.lastSeen || !history.earlierWork || !history.earlierWork->left)
        return std::nullopt;
    const SeenGrade& left = *history.earlierWork->left;
    const SeenGrade& now = *history.lastSeen;
    const bool madeGoodSince = history.known->grade <= left.grade;
    const bool onlyDirt = zone.soils() && now.grade < Grade::poor;
    if (now.grade <= left.grade || madeGoodSince || onlyDirt)
        return std::nullopt;
    const Date workedOn = history.earlierWork->on;
    if (hasHeldItsTime(zone, left, workedOn))
        return std::nullopt;
    const bool inDays = toldInDays(workedOn, now.on);
    Worry worry;
    worry.severity = now.grade >= Grade::poor ? Severity::act : Severity::plan;
    worry.sentence = about(
        subjectOf(zone),
        inDays ? PADSIDE_SAY(
            "{0}{1}, {2}: {3} {4} after the work of {5} ({6}), but {7} {8} on {9}; worse again within {10} days.")
               : PADSIDE_SAY("{0}{1}, {2}: {3} {4} after the work of {5} ({6}), but {7} {8} on {9}; worse again within "
                             "{10} months."),
        {numeralOf(left.grade), nameOf(left.grade), workedOn, Word{std::string(wordOf(history.earlierWork->kind))},
         numeralOf(now.grade), nameOf(now.grade), now.on,
         inDays ? daysIn(workedOn, now.on) : monthsIn(workedOn, now.on)});
    worry.clears = Sentence{PADSIDE_SAY("Worked on again and left at {0} {1} or better, or seen so at a later visit."),
                            {numeralOf(left.grade), nameOf(left.grade)}};
    worry.evidence = {left.findingId, now.findingId};
    worry.extent = numeral(now.grade) - numeral(left.grade);
    return worry;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

namespace padside {

namespace {

Severity severityOf(Grade now, int delta)
{
    if (now == Grade::spent)
        return Severity::act;
    if (now == Grade::poor)
        return delta > 1 ? Severity::act : Severity::plan;
    return delta > 1 ? Severity::plan : Severity::look;
}

/// From sound to worn in its own time: nothing grows old without it.
bool isUsualWear(const ZoneView& zone, const SeenGrade& before, const SeenGrade& now)
{
    const int months = static_cast<int>(zone.catalogue.assumption("usual-wear-months"));
    return now.grade <= Grade::worn && addMonths(before.on, months) < now.on;
}

std::string patternFor(int delta, bool inDays)
{
    if (delta == 1) {
        return inDays
            ? PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}, {6} {7} when last seen on {8}; one grade worse in {9} days.")
            : PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}, {6} {7} when last seen on {8}; one grade worse in {9} months.");
    }
    return inDays
        ? PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}, {6} {7} when last seen on {8}; {10} grades worse in {9} days.")
        : PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}, {6} {7} when last seen on {8}; {10} grades worse in {9} months.");
}

} // namespace

std::optional<Worry> worseByAGrade(const ZoneView& zone)
{
    const ZoneHistory& history = zone.history;
    if (!history.delta || *history.delta < 1)
        return std::nullopt;
    const SeenGrade& now = *history.lastSeen;
    const SeenGrade& before = *history.previousSeen;
    if (history.known->grade <= before.grade)
        return std::nullopt; // made good at that visit
    if (isUsualWear(zone, before, now))
        return std::nullopt;
    const bool inDays = toldInDays(before.on, now.on);
    Worry worry;
    worry.severity = severityOf(now.grade, *history.delta);
    worry.sentence = about(
        subjectOf(zone), patternFor(*history.delta, inDays),
        {numeralOf(now.grade), nameOf(now.grade), now.on, numeralOf(before.grade), nameOf(before.grade), before.on,
         inDays ? daysIn(before.on, now.on) : monthsIn(before.on, now.on), static_cast<std::int64_t>(*history.delta)});
    worry.clears = Sentence{PADSIDE_SAY("Seen no worse at the next visit, or worked on and left at {0} {1} or better."),
                            {numeralOf(before.grade), nameOf(before.grade)}};
    worry.evidence = {before.findingId, now.findingId};
    worry.extent = *history.delta;
    return worry;
}

} // namespace padside

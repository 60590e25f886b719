// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

#include <algorithm>

namespace padside {

namespace {

/// Work on record since the previous sighting, or a grade "as left" then, which tells of work.
bool workedOn(const ZoneView& zone)
{
    const ZoneHistory& history = zone.history;
    if (history.earlierWork && history.earlierWork->on >= history.previousSeen->on)
        return true;
    return std::ranges::any_of(zone.record.findings, [&](const Finding& finding) {
        return finding.zoneId == zone.zone.id && finding.phase == Phase::asLeft && finding.seen()
            && finding.on >= history.previousSeen->on && finding.on < history.lastSeen->on;
    });
}

} // namespace

std::optional<Worry> betterWithoutWork(const ZoneView& zone)
{
    const ZoneHistory& history = zone.history;
    if (!history.delta || *history.delta >= 0 || zone.soils() || workedOn(zone))
        return std::nullopt;
    const SeenGrade& now = *history.lastSeen;
    const SeenGrade& before = *history.previousSeen;
    Worry worry;
    worry.severity = Severity::look;
    worry.sentence = about(
        subjectOf(zone),
        PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}, but {6} {7} on {8} with no work on record in between; one of the two "
                    "is doubtful."),
        {numeralOf(now.grade), nameOf(now.grade), now.on, numeralOf(before.grade), nameOf(before.grade), before.on});
    worry.clears = Sentence{PADSIDE_SAY("Seen and graded again, or the doubtful grade corrected."), {}};
    worry.evidence = {before.findingId, now.findingId};
    return worry;
}

} // namespace padside

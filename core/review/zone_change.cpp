// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/zone_change.h"

#include "core/catalogue/subject.h"

namespace padside {

namespace {

/// Work on record since the zone was last seen as found, or a grade "as left" then, which tells of work.
bool workedOnSinceSeen(const ZoneHistory& history)
{
    return history.asLeft || (history.lastTreatedOn && *history.lastTreatedOn >= history.lastSeen->on);
}

ZoneChangeKind kindOf(const ZoneHistory& history, std::optional<Grade> found, std::optional<Grade> left)
{
    if (!found && !left)
        return ZoneChangeKind::notSeen;
    if (!history.lastSeen)
        return ZoneChangeKind::firstSeen;
    const Grade before = history.lastSeen->grade;
    const Grade now = found ? *found : *left;
    if (now > before)
        return ZoneChangeKind::worse;
    if (now < before)
        return !found || workedOnSinceSeen(history) ? ZoneChangeKind::betterAfterWork
                                                    : ZoneChangeKind::betterWithoutWork;
    return left && *left < now ? ZoneChangeKind::betterAfterWork : ZoneChangeKind::same;
}

/// Places {3} {4} the grade now, {5} {6} {7} that of last time, {8} the difference, {9} {10} the grade as left.
std::string patternOf(ZoneChangeKind kind, int delta, bool leftOtherwise)
{
    switch (kind) {
    case ZoneChangeKind::worse:
        if (delta == 1)
            return leftOtherwise
                ? PADSIDE_SAY("{0}{1}, {2}: {3} {4}, {5} {6} on {7}; one grade worse; left at {9} {10}.")
                : PADSIDE_SAY("{0}{1}, {2}: {3} {4}, {5} {6} on {7}; one grade worse.");
        return leftOtherwise ? PADSIDE_SAY("{0}{1}, {2}: {3} {4}, {5} {6} on {7}; {8} grades worse; left at {9} {10}.")
                             : PADSIDE_SAY("{0}{1}, {2}: {3} {4}, {5} {6} on {7}; {8} grades worse.");
    case ZoneChangeKind::betterWithoutWork:
        return leftOtherwise
            ? PADSIDE_SAY("{0}{1}, {2}: {3} {4}, {5} {6} on {7} and no work on record in between; left at {9} {10}.")
            : PADSIDE_SAY("{0}{1}, {2}: {3} {4}, {5} {6} on {7} and no work on record in between.");
    case ZoneChangeKind::betterAfterWork:
        return leftOtherwise ? PADSIDE_SAY("{0}{1}, {2}: {3} {4}, {5} {6} on {7}; left at {9} {10} after work.")
                             : PADSIDE_SAY("{0}{1}, {2}: {3} {4} after work, {5} {6} on {7}.");
    case ZoneChangeKind::same:
        return leftOtherwise ? PADSIDE_SAY("{0}{1}, {2}: {3} {4}, the same as on {7}; left at {9} {10}.")
                             : PADSIDE_SAY("{0}{1}, {2}: {3} {4}, the same as on {7}.");
    case ZoneChangeKind::firstSeen:
    case ZoneChangeKind::notSeen:
        break;
    }
    return {};
}

Argument numeralOf(Grade grade)
{
    return static_cast<std::int64_t>(numeral(grade));
}

Argument nameOf(Grade grade)
{
    return Word{std::string(wordOf(grade))};
}

Sentence sentenceOf(std::vector<Argument> subject, const ZoneChange& change)
{
    if (change.kind == ZoneChangeKind::notSeen) {
        const Word reason{std::string(wordOf(change.notSeenBecause.value_or(NotSeenReason::other)))};
        if (!change.before)
            return about(std::move(subject), PADSIDE_SAY("{0}{1}, {2}: not seen ({3}); never seen before."), {reason});
        return about(std::move(subject), PADSIDE_SAY("{0}{1}, {2}: not seen ({3}); {4} {5} when last seen on {6}."),
                     {reason, numeralOf(change.before->grade), nameOf(change.before->grade), change.before->on});
    }
    const Grade now = change.asFound ? *change.asFound : *change.asLeft;
    const Grade left = change.asLeft.value_or(now);
    if (change.kind == ZoneChangeKind::firstSeen) {
        return about(std::move(subject),
                     left == now ? PADSIDE_SAY("{0}{1}, {2}: {3} {4}, seen for the first time.")
                                 : PADSIDE_SAY("{0}{1}, {2}: {3} {4}, seen for the first time; left at {5} {6}."),
                     {numeralOf(now), nameOf(now), numeralOf(left), nameOf(left)});
    }
    const int delta = numeral(now) - numeral(change.before->grade);
    return about(std::move(subject), patternOf(change.kind, delta, left != now),
                 {numeralOf(now), nameOf(now), numeralOf(change.before->grade), nameOf(change.before->grade),
                  change.before->on, static_cast<std::int64_t>(delta), numeralOf(left), nameOf(left)});
}

} // namespace

ZoneChange zoneChange(const UnitRecord& before, const Catalogue& catalogue, const ZoneHistory& history,
                      const ZoneFindings& findings)
{
    ZoneChange change;
    change.partId = history.partId;
    change.zoneId = history.zoneId;
    change.before = history.lastSeen;
    if (findings.asFound) {
        change.asFound = findings.asFound->grade();
        change.wetness = findings.asFound->wetness;
        change.note = findings.asFound->note;
    }
    if (findings.asLeft) {
        change.asLeft = findings.asLeft->grade();
        if (change.note.empty())
            change.note = findings.asLeft->note;
    }
    change.kind = kindOf(history, change.asFound, change.asLeft);
    if (change.kind == ZoneChangeKind::notSeen) {
        const Finding& finding = findings.asFound ? *findings.asFound : *findings.asLeft;
        change.notSeenBecause = std::get<NotSeenReason>(finding.sight);
    }
    const Part& part = *findPart(before, history.partId);
    change.sentence = sentenceOf(subjectOf(before, catalogue, part, findZone(before, history.zoneId)), change);
    return change;
}

} // namespace padside

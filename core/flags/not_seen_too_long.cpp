// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

#include <algorithm>

namespace padside {

namespace {

/// The findings that say "not seen" since the zone was last seen.
std::vector<FindingId> lookedForInVain(const ZoneView& zone)
{
    std::vector<const Finding*> inVain;
    for (const Finding& finding : zone.record.findings) {
        if (finding.zoneId == zone.zone.id && finding.phase == Phase::asFound && !finding.seen()
            && zone.history.notSeenSince && finding.on >= *zone.history.notSeenSince)
            inVain.push_back(&finding);
    }
    std::ranges::sort(inVain, {}, [](const Finding* one) { return std::pair(one->on, one->id); });
    std::vector<FindingId> ids;
    std::ranges::transform(inVain, std::back_inserter(ids), [](const Finding* one) { return one->id; });
    return ids;
}

/// A visit was closed since the part was fitted. The visit that fitted a replacement doesn't count: it was there to fit
/// it.
bool couldHaveBeenSeen(const ZoneView& zone)
{
    return std::ranges::any_of(zone.record.visits, [&](const Visit& visit) {
        const auto& fitted = zone.part.fittedOn;
        const bool afterFitting = !fitted || visit.on > *fitted || (visit.on == *fitted && !zone.part.replaces);
        return !visit.isOpen() && afterFitting;
    });
}

Word reasonOf(const ZoneHistory& history)
{
    return Word{std::string(wordOf(history.lastNotSeenReason.value_or(NotSeenReason::other)))};
}

/// A loss that would be grave, or a zone known to be marked, or two visits in vain: no longer only to be looked at.
Severity severityOf(const ZoneView& zone)
{
    const bool grave = zone.takesWithIt(Consequence::safety) || zone.takesWithIt(Consequence::endsUnit);
    const bool marked = zone.history.known && zone.history.known->grade >= Grade::marked;
    return grave || marked || zone.history.timesNotSeen > 1 ? Severity::plan : Severity::look;
}

Sentence neverSeen(const ZoneView& zone)
{
    const ZoneHistory& history = zone.history;
    if (history.timesNotSeen == 0)
        return about(subjectOf(zone), PADSIDE_SAY("{0}{1}, {2}: never looked at; nothing is known of it."));
    if (history.timesNotSeen == 1) {
        return about(subjectOf(zone), PADSIDE_SAY("{0}{1}, {2}: never seen; looked for in vain on {3} ({4})."),
                     {*history.notSeenSince, reasonOf(history)});
    }
    return about(subjectOf(zone),
                 PADSIDE_SAY("{0}{1}, {2}: never seen; looked for in vain at {3} visits since {4} (last: {5})."),
                 {static_cast<std::int64_t>(history.timesNotSeen), *history.notSeenSince, reasonOf(history)});
}

Sentence notSeenFor(const ZoneView& zone)
{
    const ZoneHistory& history = zone.history;
    std::vector<Argument> rest{numeralOf(history.known->grade), nameOf(history.known->grade), history.known->on,
                               monthsIn(history.known->on, zone.today)};
    if (history.timesNotSeen == 0)
        return about(subjectOf(zone), PADSIDE_SAY("{0}{1}, {2}: last seen {6} months ago, {3} {4} on {5}."),
                     std::move(rest));
    rest.insert(rest.end(),
                {static_cast<std::int64_t>(history.timesNotSeen), reasonOf(history), *history.notSeenSince});
    if (history.timesNotSeen == 1) {
        return about(
            subjectOf(zone),
            PADSIDE_SAY("{0}{1}, {2}: last seen {6} months ago, {3} {4} on {5}; looked for in vain on {9} ({8})."),
            std::move(rest));
    }
    return about(subjectOf(zone),
                 PADSIDE_SAY("{0}{1}, {2}: last seen {6} months ago, {3} {4} on {5}; looked for in vain at {7} visits "
                             "since (last: {8})."),
                 std::move(rest));
}

} // namespace

std::optional<Worry> notSeenTooLong(const ZoneView& zone)
{
    const auto& known = zone.history.known;
    const int months = static_cast<int>(zone.catalogue.assumption("not-seen-months"));
    const bool tooLong = known ? addMonths(known->on, months) < zone.today : couldHaveBeenSeen(zone);
    if (!tooLong)
        return std::nullopt;
    Worry worry;
    worry.severity = severityOf(zone);
    worry.sentence = known ? notSeenFor(zone) : neverSeen(zone);
    worry.clears = Sentence{PADSIDE_SAY("Seen and graded at a visit."), {}};
    if (known) {
        worry.extent = yearsBetween(known->on, zone.today);
        worry.evidence.push_back(known->findingId);
    }
    std::ranges::copy(lookedForInVain(zone), std::back_inserter(worry.evidence));
    return worry;
}

} // namespace padside

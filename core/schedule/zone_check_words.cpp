// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/zone_check_words.h"

#include "core/catalogue/subject.h"

#include <set>

namespace padside {

namespace {

Sentence whatOfZone(const UnitRecord& record, const Catalogue& catalogue, const WaitingZone& one)
{
    std::string pattern;
    switch (one.due.cause) {
    case DueCause::routine:
    case DueCause::marked:
    case DueCause::outlook:
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

Sentence whatOfPart(const UnitRecord& record, const Catalogue& catalogue, const ZoneGroup& group)
{
    std::string pattern;
    switch (group.front().due.cause) {
    case DueCause::routine:
    case DueCause::marked:
    case DueCause::outlook:
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

Sentence whatOfUnit(const ZoneGroup& group)
{
    const std::vector<Argument> counts{static_cast<std::int64_t>(group.size()), partsIn(group)};
    if (group.front().due.cause == DueCause::neverSeen)
        return Sentence{PADSIDE_SAY("See {0} zones of {1} parts for the first time"), counts};
    return Sentence{PADSIDE_SAY("Look again at {0} zones of {1} parts"), counts};
}

Word consequenceOf(const ZoneRisk& risk)
{
    return Word{std::string(wordOf(risk.toleratedAs))};
}

/// The first day on which the chance is over its tolerance.
Date passedOn(const ZoneRisk& risk)
{
    return *risk.withinUntil + std::chrono::days(1);
}

Sentence whyNeverSeen(const UnitRecord& record, const Catalogue& catalogue, const WaitingZone& one, Date today)
{
    if (one.due.byOutlook) {
        const std::vector<Argument> rest{one.risk->tolerancePercent(), consequenceOf(*one.risk), passedOn(*one.risk)};
        const auto subject = subjectOf(record, catalogue, *one.part, one.zone);
        if (passedOn(*one.risk) <= today) {
            return about(subject,
                         PADSIDE_SAY("Never seen yet. {0}{1}, {2}: by the usual life of its kind the chance that it is "
                                     "spent passed {3} % ({4}) on about {5}, so it is due now."),
                         rest);
        }
        return about(subject,
                     PADSIDE_SAY("Never seen yet. {0}{1}, {2}: by the usual life of its kind the chance that it is "
                                 "spent passes {3} % ({4}) on about {5}."),
                     rest);
    }
    const ZoneHistory& history = *one.history;
    if (!history.notSeenLast)
        return Sentence{PADSIDE_SAY("Never seen yet, so nothing is known."), {}};
    return Sentence{PADSIDE_SAY("Never seen yet; looked for in vain on {0} ({1})."),
                    {*history.notSeenLast, Word{std::string(wordOf(*history.lastNotSeenReason))}}};
}

/// The outlook's reason; of several zones the most pressing one is named.
Sentence whyByOutlook(const ZoneGroup& group, Date today)
{
    const WaitingZone& first = group.front();
    const SeenGrade& known = *first.history->known;
    std::vector<Argument> arguments{static_cast<std::int64_t>(numeral(known.grade)),
                                    Word{std::string(wordOf(known.grade))},
                                    known.on,
                                    first.risk->tolerancePercent(),
                                    consequenceOf(*first.risk),
                                    passedOn(*first.risk),
                                    Word{first.zone->name}};
    const bool several = group.size() > 1;
    if (passedOn(*first.risk) <= known.on) {
        return {several ? PADSIDE_SAY(
                    "{6}: {0} {1} when last seen on {2}; the chance that it is spent was over {3} % ({4}) "
                    "even then, so it is due now.")
                        : PADSIDE_SAY("{0} {1} when last seen on {2}; the chance that it is spent was over {3} % ({4}) "
                                      "even then, so it is due now."),
                std::move(arguments)};
    }
    if (passedOn(*first.risk) <= today) {
        return {
            several
                ? PADSIDE_SAY("{6}: {0} {1} when last seen on {2}; the chance that it is spent passed {3} % ({4}) on "
                              "about {5}, so it is due now.")
                : PADSIDE_SAY("{0} {1} when last seen on {2}; the chance that it is spent passed {3} % ({4}) on about "
                              "{5}, so it is due now."),
            std::move(arguments)};
    }
    return {several
                ? PADSIDE_SAY("{6}: {0} {1} when last seen on {2}; the chance that it is spent passes {3} % ({4}) on "
                              "about {5}.")
                : PADSIDE_SAY("{0} {1} when last seen on {2}; the chance that it is spent passes {3} % ({4}) on about "
                              "{5}."),
            std::move(arguments)};
}

Sentence whyByGrade(const ZoneGroup& group)
{
    const ZoneHistory& history = *group.front().history;
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
    case DueCause::outlook:
        break;
    }
    sighting.insert(
        sighting.end(),
        {*history.notSeenLast, Word{std::string(wordOf(history.lastNotSeenReason.value_or(NotSeenReason::other)))}});
    return Sentence{PADSIDE_SAY("{0} {1} when last seen on {2}; looked for in vain on {4} ({5})."),
                    std::move(sighting)};
}

} // namespace

std::int64_t partsIn(const ZoneGroup& group)
{
    std::set<PartId> parts;
    for (const WaitingZone& one : group)
        parts.insert(one.part->id);
    return static_cast<std::int64_t>(parts.size());
}

Sentence whatOf(const UnitRecord& record, const Catalogue& catalogue, const ZoneGroup& group)
{
    if (group.size() == 1)
        return whatOfZone(record, catalogue, group.front());
    return partsIn(group) == 1 ? whatOfPart(record, catalogue, group) : whatOfUnit(group);
}

Sentence whyOf(const UnitRecord& record, const Catalogue& catalogue, const ZoneGroup& group, Date today)
{
    const WaitingZone& first = group.front();
    if (!first.history->known)
        return whyNeverSeen(record, catalogue, first, today);
    return first.due.cause == DueCause::outlook ? whyByOutlook(group, today) : whyByGrade(group);
}

} // namespace padside

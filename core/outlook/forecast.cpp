// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/forecast.h"

#include "core/outlook/first_passage.h"

#include <cmath>
#include <utility>

namespace padside {

namespace {

std::optional<Date> dayOf(const ZoneBelief& zone, const std::optional<double>& exposure, Date furthest)
{
    return exposure ? zone.trail.clock.dayAfter(zone.trail.today, *exposure, furthest) : std::nullopt;
}

Sentence becauseSentence(const ZoneBelief& zone)
{
    const ZoneTrail& trail = zone.trail;
    if (!trail.seenOn) {
        if (!trail.fittedOn)
            return {PADSIDE_SAY("Never seen, and its age is not known: only the usual life of its kind speaks here."),
                    {}};
        return {PADSIDE_SAY("Never seen: the usual life of its kind since it was fitted on {0}."), {*trail.fittedOn}};
    }
    std::vector<Argument> arguments{std::int64_t{numeral(*trail.seenGrade)},
                                    Word{std::string(wordOf(*trail.seenGrade))}, *trail.seenOn};
    const double pace = zone.belief.meanPace();
    if (pace > slowPace && pace < fastPace) {
        return {PADSIDE_SAY("{0} {1} when last seen on {2}; it gets worse at about the usual pace of its kind."),
                std::move(arguments)};
    }
    arguments.emplace_back(Number{pace, 1});
    if (pace <= slowPace) {
        return {PADSIDE_SAY(
                    "{0} {1} when last seen on {2}; it gets worse more slowly than usual, at about {3} times the pace "
                    "of its kind."),
                std::move(arguments)};
    }
    return {
        PADSIDE_SAY("{0} {1} when last seen on {2}; it gets worse faster than usual, at about {3} times the pace of "
                    "its kind."),
        std::move(arguments)};
}

std::vector<Sentence> notesOn(const ZoneBelief& zone)
{
    const ZoneTrail& trail = zone.trail;
    std::vector<Sentence> notes;
    if (trail.seenOn && trail.notSeenOn) {
        notes.push_back({PADSIDE_SAY("Looked for in vain since then, last on {0}: it may be worse by now, not better."),
                         {*trail.notSeenOn}});
    }
    if (trail.coat) {
        notes.push_back(
            {PADSIDE_SAY("The protection of {0} is expected to slow it until {1}; what lies under it is not "
                         "better for it."),
             {trail.coat->from, trail.coat->until}});
    }
    if (trail.corrodes && trail.air.known) {
        notes.push_back({PADSIDE_SAY("In the air of this site it ages about {0} times as fast as in the middle of "
                                     "corrosivity category C3 (ISO 9223); the factor is an assumption."),
                         {Number{trail.air.factor, 1}}});
    } else if (trail.corrodes) {
        notes.push_back(
            {PADSIDE_SAY("The air of this site is not known; the middle of corrosivity category C3 (ISO 9223) "
                         "stands in for it."),
             {}});
    }
    if (!zone.unexplained.empty()) {
        notes.push_back({PADSIDE_SAY("On {0} it was graded as it could not be after what came before; it is taken as "
                                     "repaired then."),
                         {zone.unexplained.back()}});
    }
    return notes;
}

} // namespace

bool isSooner(const SpentDates& one, const SpentDates& other)
{
    const auto key = [](const SpentDates& dates) { // what is empty comes last
        return std::pair(dates.middle.value_or(Date::max()), dates.early.value_or(Date::max()));
    };
    return key(one) < key(other);
}

Sentence whenSpent(const SpentDates& dates, Date today, Date furthest)
{
    if (!dates.early)
        return {PADSIDE_SAY("Spent later than {0}, with a chance of more than 90 %."), {furthest}};
    if (dates.late == today)
        return {PADSIDE_SAY("Spent by today, with a chance of at least 90 %."), {}};
    if (!dates.middle) {
        return {PADSIDE_SAY("There is a chance of 10 % that it is spent by {0}, and of less than 50 % by {1}."),
                {*dates.early, furthest}};
    }
    if (!dates.late) {
        return {
            PADSIDE_SAY("Spent from {0} on (10 %), in the middle by {1} (50 %), and with a chance of 90 % only later "
                        "than {2}."),
            {*dates.early, *dates.middle, furthest}};
    }
    return {PADSIDE_SAY("Spent between {0} (10 %) and {2} (90 %), in the middle by {1} (50 %)."),
            {*dates.early, *dates.middle, *dates.late}};
}

Date furthestTold(const OutlookFigures& figures, Date today)
{
    return addMonths(today, static_cast<int>(std::lround(12 * figures.furthestYears)));
}

double chanceSpentBy(const ZoneBelief& zone, Date by)
{
    return chanceSpentAfter(zone.belief, *zone.chain, zone.trail.clock.yearsBetween(zone.trail.today, by));
}

ZoneForecast forecastZone(const ZoneBelief& zone, const OutlookFigures& figures, std::span<const Date> by)
{
    ZoneForecast forecast;
    forecast.partId = zone.trail.partId;
    forecast.zoneId = zone.trail.zoneId;
    forecast.chanceToday = zone.belief.chanceSpent();
    forecast.pace = zone.belief.meanPace();
    for (const Date day : by)
        forecast.spent.push_back({day, chanceSpentBy(zone, day)});
    const Date today = zone.trail.today;
    forecast.furthest = furthestTold(figures, today);
    const PassageRange range = exposureRangeToSpent(zone.belief, *zone.chain);
    forecast.dates = {dayOf(zone, range.early, forecast.furthest), dayOf(zone, range.middle, forecast.furthest),
                      dayOf(zone, range.late, forecast.furthest)};
    forecast.when = whenSpent(forecast.dates, today, forecast.furthest);
    forecast.because = becauseSentence(zone);
    forecast.notes = notesOn(zone);
    return forecast;
}

} // namespace padside

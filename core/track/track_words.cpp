// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/track_words.h"

#include "core/catalogue/subject.h"

#include <cmath>

namespace padside {

namespace {

std::int64_t counted(std::size_t number)
{
    return static_cast<std::int64_t>(number);
}

bool isEnough(const Scores& scores, const TrackLimits& limits)
{
    return static_cast<double>(scores.settled) >= limits.leastSettled
        && static_cast<double>(scores.zones) >= limits.leastZones;
}

/// The horizon a verdict rests on; empty where none has enough.
std::optional<std::size_t> decidingHorizon(const TrackSummary& summary, const TrackLimits& limits)
{
    std::optional<std::size_t> furthestOff;
    std::optional<std::size_t> most;
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) {
        const Scores& scores = summary.horizons[horizon];
        if (!isEnough(scores, limits))
            continue;
        if (!furthestOff || std::abs(*scores.deviation) > std::abs(*summary.horizons[*furthestOff].deviation))
            furthestOff = horizon;
        if (!most || scores.settled > summary.horizons[*most].settled)
            most = horizon;
    }
    if (furthestOff && std::abs(*summary.horizons[*furthestOff].deviation) > limits.mostErrors)
        return furthestOff;
    return most;
}

std::size_t fullestHorizon(const TrackSummary& summary)
{
    std::size_t fullest = 0;
    for (std::size_t horizon = 1; horizon < horizonCount; ++horizon) {
        if (summary.horizons[horizon].settled > summary.horizons[fullest].settled)
            fullest = horizon;
    }
    return fullest;
}

TrackVerdict withoutEnough(const TrackSummary& summary, const TrackLimits& limits)
{
    if (summary.forecasts == 0) {
        return {TrackVerdictKind::nothingKept,
                {},
                {PADSIDE_SAY("No forecasts are kept yet: from now on they are, each time a visit is closed."), {}},
                {}};
    }
    const std::size_t fullest = fullestHorizon(summary);
    const Scores& scores = summary.horizons[fullest];
    if (scores.settled == 0 && summary.nextDue) {
        return {TrackVerdictKind::nothingDue,
                {},
                {PADSIDE_SAY("Nothing can be said yet: the next forecasts come due on {0}; the first visit after "
                             "that settles them."),
                 {*summary.nextDue}},
                {}};
    }
    return {
        TrackVerdictKind::tooFew,
        fullest,
        {PADSIDE_SAY("Too few to say: {0} forecasts about {1} zones have been settled by later visits; at least {2} "
                     "about {3} zones are needed."),
         {counted(scores.settled), counted(scores.zones), Number{limits.leastSettled, 0},
          Number{limits.leastZones, 0}}},
        {}};
}

Sentence verdictSentence(TrackVerdictKind kind, std::vector<Argument> arguments)
{
    switch (kind) {
    case TrackVerdictKind::tooGloomy:
        return {PADSIDE_SAY("Too gloomy so far: of {1} forecasts for {0}, {3} were expected to be found spent and {2} "
                            "were."),
                std::move(arguments)};
    case TrackVerdictKind::tooHopeful:
        return {PADSIDE_SAY("Too hopeful so far: of {1} forecasts for {0}, {3} were expected to be found spent and {2} "
                            "were."),
                std::move(arguments)};
    case TrackVerdictKind::noSharper:
        return {PADSIDE_SAY("Right on the whole, but not better at telling which zones will be spent than the plain "
                            "share: of {1} forecasts for {0}, {3} were expected to be found spent and {2} were."),
                std::move(arguments)};
    default:
        return {PADSIDE_SAY("Can be trusted so far: of {1} forecasts for {0}, {3} were expected to be found spent and "
                            "{2} were."),
                std::move(arguments)};
    }
}

TrackVerdictKind kindOf(const Scores& scores, const TrackLimits& limits)
{
    if (*scores.deviation < -limits.mostErrors)
        return TrackVerdictKind::tooGloomy;
    if (*scores.deviation > limits.mostErrors)
        return TrackVerdictKind::tooHopeful;
    if (scores.brierSkill && *scores.brierSkill < 0)
        return TrackVerdictKind::noSharper;
    return TrackVerdictKind::trusted;
}

std::vector<Sentence> reasonsOf(const Scores& scores, const TrackLimits& limits)
{
    std::vector<Sentence> reasons;
    reasons.push_back({PADSIDE_SAY("The difference is {0} times its standard error; up to {1} it may well be chance."),
                       {Number{std::abs(*scores.deviation), 1}, Number{limits.mostErrors, 0}}});
    if (scores.brierSkill) {
        reasons.push_back({PADSIDE_SAY("The mean square of what was said less what came (Brier score) is {0}; always "
                                       "saying the share that came to pass, {1}, would have given {2}."),
                           {Number{scores.brier, 4}, Chance{scores.base}, Number{scores.baseBrier, 4}}});
    } else {
        reasons.push_back({PADSIDE_SAY("All of them ended alike, so nothing shows yet whether the forecasts tell one "
                                       "zone from another."),
                           {}});
    }
    if (scores.untold > 0) {
        reasons.push_back({PADSIDE_SAY("{0} more will never be settled: the zone was replaced, made good or cleaned in "
                                       "time, or the day lies between two visits that found it otherwise. Work in "
                                       "time takes out more of the bad ones, which makes forecasts look too gloomy."),
                           {counted(scores.untold)}});
    }
    return reasons;
}

} // namespace

Word horizonWord(std::size_t horizon)
{
    constexpr std::array words{PADSIDE_SAY("half a year"), PADSIDE_SAY("one year"), PADSIDE_SAY("two years"),
                               PADSIDE_SAY("five years")};
    return {words[horizon]};
}

Sentence missSentence(const Miss& miss, const HeldForecast& held, const UnitRecord& record, const Catalogue& catalogue)
{
    const Part* part = findPart(record, miss.partId);
    std::vector<Argument> subject = part != nullptr ? subjectOf(record, catalogue, *part, findZone(record, miss.zoneId))
                                                    : std::vector<Argument>{};
    std::vector<Argument> rest{Chance{miss.chance}, horizonWord(miss.horizon), miss.on, miss.toldOn,
                               std::int64_t{std::lround(yearsBetween(miss.on, miss.toldOn) * 12)}};
    if (miss.spent) {
        return about(std::move(subject),
                     PADSIDE_SAY("{0}{1}, {2}: {3} within {4} was said on {5}; found spent on {6}, after {7} months."),
                     std::move(rest));
    }
    rest.emplace_back(std::int64_t{held.lastGrade ? numeral(*held.lastGrade) : 0});
    rest.emplace_back(Word{held.lastGrade ? std::string(wordOf(*held.lastGrade)) : std::string()});
    return about(std::move(subject),
                 PADSIDE_SAY("{0}{1}, {2}: {3} within {4} was said on {5}; still {8} {9} on {6}, after {7} months."),
                 std::move(rest));
}

TrackVerdict trackVerdict(const TrackSummary& summary, const TrackLimits& limits)
{
    const auto horizon = decidingHorizon(summary, limits);
    if (!horizon)
        return withoutEnough(summary, limits);
    const Scores& scores = summary.horizons[*horizon];
    const TrackVerdictKind kind = kindOf(scores, limits);
    return {kind, horizon,
            verdictSentence(kind,
                            {horizonWord(*horizon), counted(scores.settled), counted(scores.spent),
                             Number{scores.expected, scores.expected < 10 ? 1 : 0}}),
            reasonsOf(scores, limits)};
}

} // namespace padside

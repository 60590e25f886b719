// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/track_verdict.h"

#include "core/track/track_words.h"

#include <cmath>

namespace padside {

namespace {

Number counted(std::size_t number)
{
    return {static_cast<double>(number), 0};
}

bool isEnough(const Scores& scores, const TrackLimits& limits)
{
    return static_cast<double>(scores.settled) >= limits.leastSettled
        && static_cast<double>(scores.zones) >= limits.leastZones;
}

/// The horizon a verdict rests on; empty where none has enough.
std::optional<std::size_t> decidingHorizon(const TrackFigures& figures, const TrackLimits& limits)
{
    std::optional<std::size_t> furthestOff;
    std::optional<std::size_t> weightiest;
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) {
        const Scores& scores = figures.horizons[horizon];
        if (!isEnough(scores, limits))
            continue;
        if (!furthestOff || std::abs(*scores.deviation) > std::abs(*figures.horizons[*furthestOff].deviation))
            furthestOff = horizon;
        if (!weightiest || scores.expected > figures.horizons[*weightiest].expected)
            weightiest = horizon;
    }
    if (furthestOff && std::abs(*figures.horizons[*furthestOff].deviation) > limits.mostErrors)
        return furthestOff;
    return weightiest;
}

std::size_t fullestHorizon(const TrackFigures& figures)
{
    std::size_t fullest = 0;
    for (std::size_t horizon = 1; horizon < horizonCount; ++horizon) {
        if (figures.horizons[horizon].settled > figures.horizons[fullest].settled)
            fullest = horizon;
    }
    return fullest;
}

/// What is said where there is not enough to judge.
struct NotEnough
{
    const char* nothingKept;
    const char* nothingDue;
    const char* tooFew;
};

constexpr NotEnough ofAll{PADSIDE_SAY("No forecasts are kept yet: from now on they are, each time a visit is closed."),
                          PADSIDE_SAY("Nothing can be said yet: the next forecasts come due on {0}; the first visit "
                                      "after that settles them."),
                          PADSIDE_SAY("Too few to say: {0} forecasts about {1} zones have been settled by later "
                                      "visits; at least {2} about {3} zones are needed.")};

constexpr NotEnough ofLivesInUse{
    PADSIDE_SAY("Nothing can be said yet of the lives in use now: the next visit that is closed keeps the first "
                "forecasts made with them."),
    PADSIDE_SAY("Nothing can be said yet of the lives in use now: the next forecasts made with them come due on {0}; "
                "the first visit after that settles them."),
    PADSIDE_SAY("Too few to say of the lives in use now: {0} forecasts about {1} zones made with them have been "
                "settled by later visits; at least {2} about {3} zones are needed.")};

constexpr const char* tooFewBefore = PADSIDE_SAY("Of the forecasts made before that, too few have been settled to say "
                                                 "how good they were.");
constexpr NotEnough ofBefore{tooFewBefore, tooFewBefore, tooFewBefore};

TrackVerdict withoutEnough(const TrackFigures& figures, const TrackLimits& limits, const NotEnough& says)
{
    if (figures.forecasts == 0)
        return {TrackVerdictKind::nothingKept, {}, {says.nothingKept, {}}, {}};
    const std::size_t fullest = fullestHorizon(figures);
    const Scores& scores = figures.horizons[fullest];
    if (scores.settled == 0 && figures.nextDue)
        return {TrackVerdictKind::nothingDue, {}, {says.nothingDue, {*figures.nextDue}}, {}};
    return {TrackVerdictKind::tooFew,
            fullest,
            {says.tooFew,
             {counted(scores.settled), counted(scores.zones), Number{limits.leastSettled, 0},
              Number{limits.leastZones, 0}}},
            {}};
}

const char* saysOfAll(TrackVerdictKind kind)
{
    switch (kind) {
    case TrackVerdictKind::tooGloomy:
        return PADSIDE_SAY("Too gloomy so far: of {1} forecasts for {0}, {3} were expected to be found spent and {2} "
                           "were.");
    case TrackVerdictKind::tooHopeful:
        return PADSIDE_SAY("Too hopeful so far: of {1} forecasts for {0}, {3} were expected to be found spent and {2} "
                           "were.");
    case TrackVerdictKind::noSharper:
        return PADSIDE_SAY("Right on the whole, but not better at telling which zones will be spent than the plain "
                           "share: of {1} forecasts for {0}, {3} were expected to be found spent and {2} were.");
    default:
        return PADSIDE_SAY("Can be trusted so far: of {1} forecasts for {0}, {3} were expected to be found spent and "
                           "{2} were.");
    }
}

const char* saysOfBefore(TrackVerdictKind kind)
{
    switch (kind) {
    case TrackVerdictKind::tooGloomy:
        return PADSIDE_SAY("Before that, forecasts were too gloomy: of {1} for {0}, {3} were expected to be found "
                           "spent and {2} were.");
    case TrackVerdictKind::tooHopeful:
        return PADSIDE_SAY("Before that, forecasts were too hopeful: of {1} for {0}, {3} were expected to be found "
                           "spent and {2} were.");
    case TrackVerdictKind::noSharper:
        return PADSIDE_SAY("Before that, forecasts were right on the whole, but not better at telling which zones "
                           "will be spent than the plain share: of {1} for {0}, {3} were expected to be found spent "
                           "and {2} were.");
    default:
        return PADSIDE_SAY("Before that, forecasts could be trusted: of {1} for {0}, {3} were expected to be "
                           "found spent and {2} were.");
    }
}

TrackVerdictKind kindOf(const Scores& scores, const TrackLimits& limits)
{
    if (*scores.deviation < -limits.mostErrors)
        return TrackVerdictKind::tooGloomy;
    if (*scores.deviation > limits.mostErrors)
        return TrackVerdictKind::tooHopeful;
    if (scores.brierExcess && *scores.brierExcess > limits.mostErrors)
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
        if (*scores.brierExcess > 0 && *scores.brierExcess <= limits.mostErrors)
            reasons.push_back({PADSIDE_SAY("That the share did better may well be chance."), {}});
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

TrackVerdict verdictIn(const TrackFigures& figures, const TrackLimits& limits, const NotEnough& notEnough,
                       const char* (*says)(TrackVerdictKind))
{
    const auto horizon = decidingHorizon(figures, limits);
    if (!horizon)
        return withoutEnough(figures, limits, notEnough);
    const Scores& scores = figures.horizons[*horizon];
    const TrackVerdictKind kind = kindOf(scores, limits);
    return {kind,
            horizon,
            {says(kind),
             {horizonWord(*horizon), counted(scores.settled), counted(scores.spent),
              Number{scores.expected, scores.expected < 10 ? 1 : 0}}},
            reasonsOf(scores, limits)};
}

} // namespace

TrackLimits TrackLimits::of(const Catalogue& catalogue)
{
    return {catalogue.assumption("track-least-settled"), catalogue.assumption("track-least-zones"),
            catalogue.assumption("track-most-errors")};
}

bool isJudged(TrackVerdictKind kind)
{
    return kind != TrackVerdictKind::nothingKept && kind != TrackVerdictKind::nothingDue
        && kind != TrackVerdictKind::tooFew;
}

TrackVerdict trackVerdict(const TrackFigures& figures, const TrackLimits& limits)
{
    return verdictIn(figures, limits, ofAll, &saysOfAll);
}

TrackVerdict verdictOfLivesInUse(const TrackFigures& figures, const TrackLimits& limits)
{
    return verdictIn(figures, limits, ofLivesInUse, &saysOfAll);
}

TrackVerdict verdictBefore(const TrackFigures& figures, const TrackLimits& limits)
{
    return verdictIn(figures, limits, ofBefore, &saysOfBefore);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/track/track_figures.h"

namespace padside {

enum class TrackVerdictKind { nothingKept, nothingDue, tooFew, trusted, noSharper, tooGloomy, tooHopeful };

[[nodiscard]] constexpr auto codesOf(TrackVerdictKind)
{
    using enum TrackVerdictKind;
    return std::array{Coded<TrackVerdictKind>{nothingKept, "nothing-kept", "nothing kept yet"},
                      Coded<TrackVerdictKind>{nothingDue, "nothing-due", "nothing due yet"},
                      Coded<TrackVerdictKind>{tooFew, "too-few", "too few to say"},
                      Coded<TrackVerdictKind>{trusted, "trusted", "can be trusted so far"},
                      Coded<TrackVerdictKind>{noSharper, "no-sharper", "no better than the plain share"},
                      Coded<TrackVerdictKind>{tooGloomy, "too-gloomy", "too gloomy"},
                      Coded<TrackVerdictKind>{tooHopeful, "too-hopeful", "too hopeful"}};
}

/// Whether there was enough for a verdict, good or bad.
[[nodiscard]] bool isJudged(TrackVerdictKind kind);

/// What the scores come to.
struct TrackVerdict
{
    TrackVerdictKind kind = TrackVerdictKind::nothingKept;
    std::optional<std::size_t> horizon; ///< the one it rests on
    Sentence sentence;
    std::vector<Sentence> reasons;
};

/// From how many forecasts on a verdict is given, and when it is a bad one; ours (`assumptions`).
struct TrackLimits
{
    double leastSettled = 0;
    double leastZones = 0;
    double mostErrors = 0; ///< standard errors between what came and what was expected

    [[nodiscard]] static TrackLimits of(const Catalogue& catalogue);
};

/// The verdict on scores and the reasons for it. It rests on the horizons with enough settled forecasts: on the one
/// that is furthest off if that is too far, else on the one with most expected to be spent: many forecasts of hardly
/// anything prove little. Too gloomy: fewer came to pass than expected by more than the limit's standard errors; too
/// hopeful: more. No better than the plain share: neither, but its Brier score is worse than that of always saying the
/// base rate, by more than those standard errors.
[[nodiscard]] TrackVerdict trackVerdict(const TrackFigures& figures, const TrackLimits& limits);

/// The same of the forecasts made with the lives in use alone: where there are too few, it is these it speaks of.
[[nodiscard]] TrackVerdict verdictOfLivesInUse(const TrackFigures& figures, const TrackLimits& limits);

/// The same of the forecasts made before the lives in use were learned: "Before that, forecasts were too gloomy: …".
[[nodiscard]] TrackVerdict verdictBefore(const TrackFigures& figures, const TrackLimits& limits);

} // namespace padside

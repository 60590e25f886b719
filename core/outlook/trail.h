// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/belief.h"
#include "core/quantity/date.h"

#include <optional>
#include <span>
#include <vector>

namespace padside {

/// What one thing in a zone's record means for the belief.
enum class TrailEvent {
    seen, ///< graded so
    seenOnPaint, ///< graded so while fresh paint may hide what is worse
    notSpent, ///< not seen, but the unit ran, so a part that stops it was not spent
    cleaned, ///< dirt taken away: sound again
    repaired, ///< made better by an amount nobody wrote down
    madeGood, ///< made better and graded so as left
    renewed, ///< a new thing in its place
};

struct TrailStep
{
    Date on{};
    double exposureYears = 0; ///< since the step before, or since the part was fitted
    double clockSpeed = 0; ///< at which whole days of that time passed, if it was one and the same; 0: not known
    TrailEvent event = TrailEvent::seen;
    Grade grade = Grade::sound; ///< of seen, seenOnPaint and madeGood
};

/// The steps of one zone, which is all that rates are learned from.
struct ZoneSteps
{
    std::vector<TrailStep> steps;
    bool beginningKnown = false; ///< sound when its part was fitted
};

/// A belief brought through a trail, and where the trail did not hold together.
struct Followed
{
    Belief belief;
    /// Days on which it was seen as it could not be by what came before (better without work written down): taken as
    /// repaired then, or if that does not explain it, as not known before.
    std::vector<Date> unexplained;
};

/// Follows a zone's steps in this chain: from sound where its beginning is known, else from flat over 1 to 4 at the
/// first step. Never fails: what can't be is named in `unexplained`.
[[nodiscard]] Followed follow(std::span<const TrailStep> steps, bool beginningKnown, const PacedChain& chain);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/first_passage.h"

#include <string>
#include <vector>

namespace padside {

/// Something seen, or looked for in vain, at a time on the exposure clock.
struct ClockObservation
{
    double exposureYears = 0;
    std::optional<Grade> grade; ///< empty: not seen
    bool works = true; ///< not seen, but not spent either
};

/// A belief to be worked out from numbers alone, without a record.
struct BeliefQuestion
{
    Rates rates{};
    double paceSigma = 0;
    int paceNodes = usualPaceNodes;
    std::optional<ClockObservation> start; ///< a grade known for certain; empty: flat over 1 to 4 on the first finding
    std::vector<ClockObservation> observations; ///< in order of time
    std::vector<double> horizons; ///< years of exposure after the last observation
};

struct BeliefAnswer
{
    Belief belief;
    std::vector<double> chanceSpent; ///< one for each horizon
    PassageRange toSpent;
};

/// Works it out. The unknown start is flat over 1 to 5 if the first thing seen is spent. Problem: rates, times or
/// horizons that are no numbers, negative, out of order or so large that their product means nothing; more than 100 000
/// observations; a grade that can't follow from what was seen before; spreads and nodes as logNormalPace() has them.
[[nodiscard]] Result<BeliefAnswer> answerBelief(const BeliefQuestion& question);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/track/track_verdict.h"

namespace padside {

/// Which of the kept forecasts.
enum class ForecastSet {
    all,
    inUse, ///< made with the lives in use now
    before, ///< made before those lives were learned
};

[[nodiscard]] constexpr auto codesOf(ForecastSet)
{
    using enum ForecastSet;
    return std::array{Coded<ForecastSet>{all, "all", "all forecasts"},
                      Coded<ForecastSet>{inUse, "in-use", "made with the lives in use now"},
                      Coded<ForecastSet>{before, "before", "made before these were learned"}};
}

/// Where lives learned from the person's own records are in use: the forecasts made with them, told apart from those
/// made before. A kept forecast does not say which lives it was made with, so its day has to tell: one of a part kind
/// (or of its zones that get dirty) with a learned life was made with it from the day of learning on. That day's
/// forecast, and none of an older visit closed later: it would be judged by what the life was learned from. Kinds
/// without a learned life count with all their forecasts.
struct SinceLearning
{
    Date first{}; ///< day of learning, of the kinds with forecasts made before
    Date last{};
    bool someNeverLearnt = false; ///< of the forecasts in use, some are of kinds without a learned life
    TrackFigures inUse;
    TrackFigures before;
    TrackVerdict verdictBefore;

    /// What stands beside a verdict on the forecasts in use: since when they count, how it was before, how they are
    /// told apart.
    [[nodiscard]] std::vector<Sentence> told(const TrackVerdict& verdictInUse) const;
};

} // namespace padside

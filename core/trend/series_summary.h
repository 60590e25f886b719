// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"
#include "core/trend/mann_kendall.h"
#include "core/trend/theil_sen.h"

#include <optional>
#include <span>
#include <string>

namespace padside {

/// Below this many points a series has deltas, not a trend.
constexpr std::size_t fewestTrendPoints = 4;

/// What one measured series tells. Times are days.
struct SeriesSummary
{
    std::size_t n = 0;
    std::optional<TrendPoint> last;
    std::optional<double> lastDelta; ///< last value minus the one before
    std::optional<double> lastRatePerYear; ///< that delta over its days, times 365.25; empty if both are of one day
    std::optional<double> overallDelta; ///< last value minus the first
    std::optional<MannKendall> test; ///< empty below fewestTrendPoints
    std::optional<TheilSen> trend; ///< empty below fewestTrendPoints, and where all points are of one day
    std::optional<double> ratePerYear; ///< Theil-Sen slope times 365.25
    std::optional<Sentence> whyNoTrend; ///< said wherever `trend` is empty

    friend bool operator==(const SeriesSummary&, const SeriesSummary&) = default;
};

/// Sums up a series since its last reset. Points may come in any order; among points of one day the later in the input
/// counts as the later.
[[nodiscard]] SeriesSummary summariseSeries(std::span<const TrendPoint> points);

} // namespace padside

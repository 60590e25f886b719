// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/trend/trend_point.h"

#include <cstddef>
#include <optional>
#include <span>

namespace padside {

/// The largest series whose pairs are laid out in memory (about 100 MB); far above what one zone ever gathers.
constexpr std::size_t mostTrendPoints = 5000;

/// How the confidence limits of a slope are taken from the sorted pairwise slopes. Both rest on S being roughly normal.
enum class LimitRule {
    interpolatedRanks, ///< between ranks, variance with all tie terms (Gilbert 1987, p. 218)
    wholeRanks, ///< rounded to whole ranks, variance without the joint tie terms (Sen 1968, eq. 2.6)
};

/// Theil-Sen slope: the median of all pairwise slopes, with two-sided 95 and 90 % confidence limits.
struct TheilSen
{
    double slope = 0; ///< value per unit of time
    double intercept = 0; ///< median(value) - slope * median(time): the line goes through the medians
    double low95 = 0;
    double high95 = 0;
    double low90 = 0;
    double high90 = 0;
    double medianTime = 0;
    double medianValue = 0;

    friend bool operator==(const TheilSen&, const TheilSen&) = default;
};

/// The slope of a series; the order of the points does not matter. Pairs at equal times have no slope and are left out.
/// Empty if no two points differ in time, or if there are more than mostTrendPoints. A limit whose rank lies outside
/// the slopes is the outermost slope, so with very few points the interval covers less than it says. The default rule
/// is Gilbert's, since it reproduces the interval published for EPA Unified Guidance 2009, Ex. 17-6 (20.0 to
/// 35.71182); it is the one that `calc trend` prints.
/// On a scale of few grades the slope is often exactly 0
/// although the trend is plain: read S and Z there, never the slope.
[[nodiscard]] std::optional<TheilSen> theilSen(std::span<const TrendPoint> points,
                                               LimitRule rule = LimitRule::interpolatedRanks);

} // namespace padside

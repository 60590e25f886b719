// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/theil_sen.h"

#include "core/trend/kendall_variance.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace padside {

namespace {

constexpr double normal95 = 1.959963984540054; ///< 97.5 % point of the standard normal distribution
constexpr double normal90 = 1.6448536269514722; ///< 95 % point

double medianOfSorted(const std::vector<double>& numbers)
{
    const std::size_t middle = numbers.size() / 2;
    return numbers.size() % 2 == 1 ? numbers[middle] : (numbers[middle - 1] + numbers[middle]) / 2;
}

double medianOf(std::span<const TrendPoint> points, double TrendPoint::*field, std::vector<double>& space)
{
    space.clear();
    for (const TrendPoint& point : points)
        space.push_back(point.*field);
    std::ranges::sort(space);
    return medianOfSorted(space);
}

void gatherSortedSlopes(std::span<const TrendPoint> points, std::vector<double>& slopes)
{
    slopes.clear();
    for (std::size_t later = 1; later < points.size(); ++later) {
        for (std::size_t earlier = 0; earlier < later; ++earlier) {
            const double time = points[later].time - points[earlier].time;
            if (time != 0)
                slopes.push_back((points[later].value - points[earlier].value) / time);
        }
    }
    std::ranges::sort(slopes);
}

/// The value at a rank counted from 1, between two values where the rank lies between, the outermost beyond them.
double atRank(const std::vector<double>& sorted, double rank)
{
    const double place = std::clamp(rank, 1.0, static_cast<double>(sorted.size())) - 1;
    const auto below = static_cast<std::size_t>(place);
    const double share = place - std::floor(place);
    if (share == 0)
        return sorted[below];
    return sorted[below] + share * (sorted[below + 1] - sorted[below]);
}

struct Limits
{
    double low = 0;
    double high = 0;
};

Limits limitsAt(const std::vector<double>& slopes, double normalPoint, const KendallVariance& variance, LimitRule rule)
{
    const auto count = static_cast<double>(slopes.size());
    switch (rule) {
    case LimitRule::interpolatedRanks: {
        const double reach = normalPoint * std::sqrt(variance.allTies);
        return {atRank(slopes, (count - reach) / 2), atRank(slopes, (count + reach) / 2 + 1)};
    }
    case LimitRule::wholeRanks: {
        const double reach = normalPoint * std::sqrt(variance.separateTies);
        // A half goes to the even rank: the mode std::nearbyint starts in.
        return {atRank(slopes, std::nearbyint((count - reach) / 2)),
                atRank(slopes, std::nearbyint((count + reach) / 2) + 1)};
    }
    }
    return {};
}

} // namespace

std::optional<TheilSen> theilSen(std::span<const TrendPoint> points, LimitRule rule)
{
    if (points.size() < 2 || points.size() > mostTrendPoints)
        return std::nullopt;
    std::vector<double> slopes; // the only allocation; the medians use its space too
    slopes.reserve(std::max(points.size(), points.size() * (points.size() - 1) / 2));
    TheilSen result;
    result.medianTime = medianOf(points, &TrendPoint::time, slopes);
    result.medianValue = medianOf(points, &TrendPoint::value, slopes);
    gatherSortedSlopes(points, slopes);
    if (slopes.empty())
        return std::nullopt;

    result.slope = medianOfSorted(slopes);
    result.intercept = result.medianValue - result.slope * result.medianTime;
    const KendallVariance variance = kendallVariance(points);
    const Limits limits95 = limitsAt(slopes, normal95, variance, rule);
    const Limits limits90 = limitsAt(slopes, normal90, variance, rule);
    result.low95 = limits95.low;
    result.high95 = limits95.high;
    result.low90 = limits90.low;
    result.high90 = limits90.high;
    return result;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/series_summary.h"

#include "core/quantity/date.h"

#include <algorithm>
#include <vector>

namespace padside {

namespace {

void addDeltas(SeriesSummary& summary, std::span<const TrendPoint> inOrder)
{
    if (inOrder.empty())
        return;
    summary.last = inOrder.back();
    if (inOrder.size() < 2)
        return;
    const TrendPoint& before = inOrder[inOrder.size() - 2];
    const double days = inOrder.back().time - before.time;
    summary.lastDelta = inOrder.back().value - before.value;
    summary.overallDelta = inOrder.back().value - inOrder.front().value;
    if (days > 0)
        summary.lastRatePerYear = *summary.lastDelta / days * daysInAYear;
}

Sentence whyNoTrend(std::size_t n)
{
    const auto count = static_cast<std::int64_t>(n);
    if (n == 0)
        return {PADSIDE_SAY("Nothing has been measured yet."), {}};
    if (n < fewestTrendPoints)
        return {
            PADSIDE_SAY("Values so far: {0}. A trend needs at least {1}, so only the changes between them are shown."),
            {count, static_cast<std::int64_t>(fewestTrendPoints)}};
    if (n > mostTrendPoints)
        return {PADSIDE_SAY("Values so far: {0}. A trend is worked out for at most {1}."),
                {count, static_cast<std::int64_t>(mostTrendPoints)}};
    return {PADSIDE_SAY("All {0} values are of one day, so there is no trend over time."), {count}};
}

} // namespace

SeriesSummary summariseSeries(std::span<const TrendPoint> points)
{
    std::vector<TrendPoint> inOrder(points.begin(), points.end());
    std::ranges::stable_sort(inOrder, {}, &TrendPoint::time);
    SeriesSummary summary;
    summary.n = inOrder.size();
    addDeltas(summary, inOrder);
    if (inOrder.size() >= fewestTrendPoints && inOrder.size() <= mostTrendPoints) {
        summary.test = mannKendall(inOrder);
        summary.trend = theilSen(inOrder);
    }
    if (summary.trend)
        summary.ratePerYear = summary.trend->slope * daysInAYear;
    else
        summary.whyNoTrend = whyNoTrend(summary.n);
    return summary;
}

} // namespace padside

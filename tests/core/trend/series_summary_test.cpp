// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/series_summary.h"
#include "tests/core/trend/reference_series.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace padside {

TEST(SeriesSummary, FewerThanFourPointsGiveDeltasOnlyAndSaySo)
{
    const std::vector<TrendPoint> three{{0, 10}, {365.25, 12}, {365.25 * 2, 15}};
    const SeriesSummary summary = summariseSeries(three);
    EXPECT_EQ(summary.n, 3U);
    EXPECT_EQ(summary.lastDelta, 3.0);
    EXPECT_EQ(summary.overallDelta, 5.0);
    EXPECT_NEAR(summary.lastRatePerYear.value(), 3.0, 1e-12);
    EXPECT_FALSE(summary.test);
    EXPECT_FALSE(summary.trend);
    EXPECT_FALSE(summary.ratePerYear);
    ASSERT_TRUE(summary.whyNoTrend);
    EXPECT_EQ(say(*summary.whyNoTrend),
              "Values so far: 3. A trend needs at least 4, so only the changes between them are shown.");
}

TEST(SeriesSummary, FourPointsGiveATrend)
{
    const std::vector<TrendPoint> four{{0, 10}, {365.25, 12}, {365.25 * 2, 14}, {365.25 * 3, 16}};
    const SeriesSummary summary = summariseSeries(four);
    ASSERT_TRUE(summary.test && summary.trend);
    EXPECT_EQ(summary.test->s, 6);
    EXPECT_NEAR(summary.ratePerYear.value(), 2, 1e-12);
    EXPECT_FALSE(summary.whyNoTrend);
}

// Source: tests/reference/README.md.
TEST(SeriesSummary, RatesPerYearAgreeWithEveryGeneratedSeries)
{
    for (const test::ReferenceSeries& series : test::generatedSeries()) {
        const double expected = series.answers.at("slope_per_year");
        EXPECT_NEAR(summariseSeries(series.points).ratePerYear.value(), expected, 1e-13 + 1e-12 * std::abs(expected))
            << series.id;
    }
}

TEST(SeriesSummary, ReversingTheInputChangesNothingWhereNoDayRepeats)
{
    std::vector<TrendPoint> points{{5, 1}, {9, 4}, {20, 3}, {31, 8}, {40, 9}};
    const SeriesSummary before = summariseSeries(points);
    std::ranges::reverse(points);
    EXPECT_EQ(summariseSeries(points), before);
    EXPECT_EQ(before.last, (TrendPoint{40, 9}));
    EXPECT_EQ(before.lastDelta, 1.0);
}

TEST(SeriesSummary, AnEmptySeriesSaysThatNothingWasMeasured)
{
    const SeriesSummary summary = summariseSeries({});
    EXPECT_EQ(summary.n, 0U);
    EXPECT_FALSE(summary.last);
    EXPECT_EQ(say(summary.whyNoTrend.value()), "Nothing has been measured yet.");
}

TEST(SeriesSummary, OnePointHasNoDelta)
{
    const std::vector<TrendPoint> one{{7, 2}};
    const SeriesSummary summary = summariseSeries(one);
    EXPECT_EQ(summary.last, (TrendPoint{7, 2}));
    EXPECT_FALSE(summary.lastDelta);
    EXPECT_FALSE(summary.overallDelta);
}

TEST(SeriesSummary, ValuesOfOneDayHaveADeltaButNoRateAndNoTrend)
{
    const std::vector<TrendPoint> day{{7, 2}, {7, 3}, {7, 5}, {7, 6}};
    const SeriesSummary summary = summariseSeries(day);
    EXPECT_EQ(summary.lastDelta, 1.0);
    EXPECT_FALSE(summary.lastRatePerYear);
    EXPECT_FALSE(summary.trend);
    EXPECT_EQ(say(summary.whyNoTrend.value()), "All 4 values are of one day, so there is no trend over time.");
}

TEST(SeriesSummary, TooManyValuesAreSaidToBeTooMany)
{
    const std::vector<TrendPoint> many(mostTrendPoints + 1);
    EXPECT_EQ(say(summariseSeries(many).whyNoTrend.value()),
              "Values so far: 5001. A trend is worked out for at most 5000.");
}

} // namespace padside

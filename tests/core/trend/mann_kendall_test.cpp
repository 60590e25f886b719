// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/mann_kendall.h"
#include "tests/core/trend/reference_series.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace padside {

namespace {

using test::expectSame;
using test::ReferenceSeries;

} // namespace

// Source of all series: tests/reference/README.md.
TEST(MannKendall, AgreesWithEveryPublishedAndGeneratedSeries)
{
    const std::vector<ReferenceSeries> all = test::allReferenceSeries();
    ASSERT_EQ(all.size(), 23U);
    for (const ReferenceSeries& series : all) {
        const MannKendall result = mannKendall(series.points);
        EXPECT_EQ(static_cast<double>(result.n), series.answers.at("n")) << series.id;
        EXPECT_EQ(static_cast<double>(result.s), series.answers.at("S")) << series.id;
        expectSame(result.varianceS, series.answers.at("varS"), series.id);
        expectSame(result.z, series.answers.at("Z"), series.id);
        expectSame(result.p, series.answers.at("p_mk"), series.id);
    }
}

// US EPA Unified Guidance 2009, Ex. 17-6 (sulfate), to the digits printed by the R package EnvStats.
TEST(MannKendall, PrintsWhatTheEpaGuidancePrintsForSulfate)
{
    const ReferenceSeries sulfate = test::publishedSeries().front();
    ASSERT_EQ(sulfate.id, "EPA2009_Ex17.6_sulfate");
    const MannKendall result = mannKendall(sulfate.points);
    EXPECT_EQ(result.s, 194);
    EXPECT_NEAR(result.z, 5.107322, 5e-7);
    EXPECT_NEAR(result.p, 3.267574e-07, 5e-14);
}

// Gilbert 1987, Ex. 16.3: several values in one period. S and the series as in print; VAR(S) = 58.1 and Z = 2.36 from
// memory.
TEST(MannKendall, CorrectsForTiesInTimeInValueAndInBoth)
{
    const std::vector<TrendPoint> points{{1, 10}, {1, 22}, {1, 21}, {2, 30}, {3, 22}, {3, 30}, {4, 40}, {5, 40}};
    const MannKendall result = mannKendall(points);
    EXPECT_EQ(result.s, 19);
    EXPECT_NEAR(result.varianceS, 58.1, 0.05);
    EXPECT_NEAR(result.z, 2.36, 0.005);
}

TEST(MannKendall, ShufflingTheSeriesChangesNothing)
{
    std::mt19937 random(7);
    for (ReferenceSeries series : test::allReferenceSeries()) {
        const MannKendall before = mannKendall(series.points);
        for (int round = 0; round < 5; ++round) {
            std::ranges::shuffle(series.points, random);
            EXPECT_EQ(mannKendall(series.points), before) << series.id;
        }
    }
}

TEST(MannKendall, TurningTheValuesRoundTurnsOnlyTheSign)
{
    for (ReferenceSeries series : test::allReferenceSeries()) {
        const MannKendall up = mannKendall(series.points);
        for (TrendPoint& point : series.points)
            point.value = -point.value;
        const MannKendall down = mannKendall(series.points);
        EXPECT_EQ(down.s, -up.s) << series.id;
        EXPECT_EQ(down.z, -up.z) << series.id;
        EXPECT_EQ(down.p, up.p) << series.id;
    }
}

TEST(MannKendall, AnyRisingChangeOfScaleChangesNothing)
{
    for (ReferenceSeries series : test::allReferenceSeries()) {
        const MannKendall before = mannKendall(series.points);
        for (TrendPoint& point : series.points)
            point.value = std::cbrt(point.value); // rising everywhere
        EXPECT_EQ(mannKendall(series.points), before) << series.id;
    }
}

TEST(MannKendall, WithoutAnythingToCompareThereIsNoTrend)
{
    EXPECT_EQ(mannKendall({}), MannKendall{});
    const std::vector<TrendPoint> one{{3, 4}};
    EXPECT_EQ(mannKendall(one).s, 0);
    EXPECT_EQ(mannKendall(one).p, 1);
    const std::vector<TrendPoint> sameDay{{3, 4}, {3, 5}, {3, 6}, {3, 7}};
    EXPECT_EQ(mannKendall(sameDay).s, 0);
    EXPECT_EQ(mannKendall(sameDay).z, 0);
    const std::vector<TrendPoint> allAlike(5, TrendPoint{1, 1});
    EXPECT_EQ(mannKendall(allAlike).varianceS, 0);
    EXPECT_EQ(mannKendall(allAlike).p, 1);
}

TEST(MannKendall, ALongSeriesIsCountedExactly)
{
    std::vector<TrendPoint> points;
    points.reserve(300);
    for (int i = 0; i < 300; ++i) // more than the space kept for short series
        points.push_back({static_cast<double>(i), static_cast<double>(i)});
    const MannKendall result = mannKendall(points);
    EXPECT_EQ(result.s, 300 * 299 / 2);
    EXPECT_EQ(result.varianceS, 300.0 * 299 * 605 / 18); // n(n-1)(2n+5)/18, no ties
}

} // namespace padside

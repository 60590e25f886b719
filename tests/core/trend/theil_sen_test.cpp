// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/mann_kendall.h"
#include "core/trend/theil_sen.h"
#include "tests/core/trend/reference_series.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace padside {

namespace {

using test::expectSame;
using test::ReferenceSeries;

ReferenceSeries published(const std::string& id)
{
    for (const ReferenceSeries& series : test::publishedSeries()) {
        if (series.id == id)
            return series;
    }
    ADD_FAILURE() << "no series " << id;
    return {};
}

} // namespace

// Source of all series: tests/reference/README.md.
TEST(TheilSen, SlopeAndInterceptAgreeWithEverySeries)
{
    for (const ReferenceSeries& series : test::allReferenceSeries()) {
        const auto result = theilSen(series.points);
        ASSERT_TRUE(result) << series.id;
        expectSame(result->slope, series.answers.at("slope"), series.id);
        expectSame(result->intercept, series.answers.at("intercept_separate"), series.id);
    }
}

TEST(TheilSen, LimitsBetweenRanksAgreeWithEverySeries)
{
    for (const ReferenceSeries& series : test::allReferenceSeries()) {
        const auto result = theilSen(series.points, LimitRule::interpolatedRanks);
        ASSERT_TRUE(result) << series.id;
        expectSame(result->low95, series.answers.at("gilbert_lo95"), series.id + " low 95");
        expectSame(result->high95, series.answers.at("gilbert_hi95"), series.id + " high 95");
        expectSame(result->low90, series.answers.at("gilbert_lo90"), series.id + " low 90");
        expectSame(result->high90, series.answers.at("gilbert_hi90"), series.id + " high 90");
    }
}

TEST(TheilSen, LimitsAtWholeRanksAgreeWithEverySeries)
{
    for (const ReferenceSeries& series : test::allReferenceSeries()) {
        const auto result = theilSen(series.points, LimitRule::wholeRanks);
        ASSERT_TRUE(result) << series.id;
        expectSame(result->low95, series.answers.at("lo95"), series.id + " low 95");
        expectSame(result->high95, series.answers.at("hi95"), series.id + " high 95");
        expectSame(result->low90, series.answers.at("lo90"), series.id + " low 90");
        expectSame(result->high90, series.answers.at("hi90"), series.id + " high 90");
    }
}

// US EPA Unified Guidance 2009, Ex. 17-6 and 17-7, to the digits printed by the R package EnvStats.
TEST(TheilSen, PrintsWhatTheEpaGuidancePrints)
{
    const auto sulfate = theilSen(published("EPA2009_Ex17.6_sulfate").points);
    ASSERT_TRUE(sulfate);
    EXPECT_NEAR(sulfate->slope, 26.6666667, 5e-8);
    EXPECT_NEAR(sulfate->intercept, -1909.3333333, 5e-8);
    EXPECT_NEAR(sulfate->low95, 20.0, 5e-9);
    EXPECT_NEAR(sulfate->high95, 35.71182, 5e-6);
    const auto sodium = theilSen(published("EPA2009_Ex17.7_sodium").points);
    ASSERT_TRUE(sodium);
    EXPECT_NEAR(sodium->slope, 1.3333333, 5e-8);
    EXPECT_NEAR(sodium->intercept, -65.9666667, 5e-8);
    EXPECT_NEAR(sodium->low95, 0.3992083, 5e-8);
    EXPECT_NEAR(sodium->high95, 2.3333333, 5e-8);
}

// The example of ci.theil in the R package statpsych, which takes whole ranks.
TEST(TheilSen, PrintsWhatTheWholeRankExamplePrints)
{
    const auto result = theilSen(published("Bonett_ci.theil").points, LimitRule::wholeRanks);
    ASSERT_TRUE(result);
    EXPECT_NEAR(result->slope, 0.5, 1e-12);
    EXPECT_NEAR(result->low95, 0.3243243, 5e-8);
    EXPECT_NEAR(result->high95, 0.75, 1e-12);
}

// By hand: 23 slopes; the variance without joint ties is 51, so the ranks are (23 -+ 1.96 sqrt 51) / 2 = 4.50..
// and 18.49.., that is 5 and 18 + 1. With the joint terms (52.119) they would be 4 and 19 + 1, at other slopes: -0.5
// and 2.
TEST(TheilSen, WholeRanksLeaveTheJointTiesOut)
{
    const std::vector<TrendPoint> points{{1, 5}, {2, 6}, {2, 6}, {2, 3}, {3, 4}, {3, 6}, {4, 7}, {4, 6}};
    const auto result = theilSen(points, LimitRule::wholeRanks);
    ASSERT_TRUE(result);
    EXPECT_DOUBLE_EQ(result->low95, 0);
    EXPECT_DOUBLE_EQ(result->high95, 1.5);
}

TEST(TheilSen, ShufflingTheSeriesChangesNothing)
{
    std::mt19937 random(11);
    for (ReferenceSeries series : test::allReferenceSeries()) {
        const auto before = theilSen(series.points);
        for (int round = 0; round < 5; ++round) {
            std::ranges::shuffle(series.points, random);
            EXPECT_EQ(theilSen(series.points), before) << series.id;
        }
    }
}

TEST(TheilSen, ScalesWithTheUnitsOfValueAndTime)
{
    for (ReferenceSeries series : test::allReferenceSeries()) {
        const auto before = theilSen(series.points);
        for (TrendPoint& point : series.points) {
            point.value = point.value * 4 + 32; // powers of two keep the arithmetic close
            point.time *= 2;
        }
        const auto after = theilSen(series.points);
        ASSERT_TRUE(before && after);
        EXPECT_NEAR(after->slope, 2 * before->slope, 1e-11) << series.id;
        EXPECT_NEAR(after->low95, 2 * before->low95, 1e-11) << series.id;
        EXPECT_NEAR(after->high95, 2 * before->high95, 1e-11) << series.id;
    }
}

TEST(TheilSen, TheLimitsLieInOrderAroundTheSlope)
{
    for (const ReferenceSeries& series : test::allReferenceSeries()) {
        for (const LimitRule rule : {LimitRule::interpolatedRanks, LimitRule::wholeRanks}) {
            const auto result = theilSen(series.points, rule);
            ASSERT_TRUE(result);
            EXPECT_LE(result->low95, result->low90) << series.id;
            EXPECT_LE(result->low90, result->slope) << series.id;
            EXPECT_LE(result->slope, result->high90) << series.id;
            EXPECT_LE(result->high90, result->high95) << series.id;
        }
    }
}

TEST(TheilSen, OneWildValueDoesNotMoveIt)
{
    std::vector<TrendPoint> points;
    points.reserve(12);
    for (int i = 0; i < 12; ++i)
        points.push_back({static_cast<double>(i), 3.0 * i});
    points[5].value = 1e6;
    const auto result = theilSen(points);
    ASSERT_TRUE(result);
    EXPECT_EQ(result->slope, 3);
}

// On few grades the slope is often exactly 0 while the test is plain: why flags on grades never read the slope.
TEST(TheilSen, OnGradesItMayBeZeroWhereTheTestIsPlain)
{
    std::vector<TrendPoint> grades;
    grades.reserve(20);
    for (int i = 0; i < 20; ++i)
        grades.push_back({static_cast<double>(i), i < 14 ? 1.0 : 2.0});
    const auto slope = theilSen(grades);
    ASSERT_TRUE(slope);
    EXPECT_EQ(slope->slope, 0);
    EXPECT_LT(mannKendall(grades).p, 0.01);
}

TEST(TheilSen, IsEmptyWhereNoTwoPointsDifferInTime)
{
    EXPECT_FALSE(theilSen({}));
    const std::vector<TrendPoint> one{{1, 1}};
    EXPECT_FALSE(theilSen(one));
    const std::vector<TrendPoint> oneDay{{1, 1}, {1, 2}, {1, 3}, {1, 4}};
    EXPECT_FALSE(theilSen(oneDay));
    const std::vector<TrendPoint> tooMany(mostTrendPoints + 1);
    EXPECT_FALSE(theilSen(tooMany));
}

TEST(TheilSen, TwoPointsGiveTheLineThroughThem)
{
    const std::vector<TrendPoint> two{{10, 5}, {20, 7}};
    const auto result = theilSen(two);
    ASSERT_TRUE(result);
    EXPECT_DOUBLE_EQ(result->slope, 0.2);
    EXPECT_DOUBLE_EQ(result->intercept, 3);
    EXPECT_EQ(result->low95, result->slope);
    EXPECT_EQ(result->high95, result->slope);
}

} // namespace padside

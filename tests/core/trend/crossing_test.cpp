// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/crossing.h"

#include <gtest/gtest.h>
#include <vector>

namespace padside {

namespace {

TheilSen lineOf(double slope, double low, double high)
{
    TheilSen trend;
    trend.slope = slope;
    trend.low95 = low;
    trend.high95 = high;
    trend.medianTime = 100;
    trend.medianValue = 10;
    return trend;
}

} // namespace

TEST(Crossing, ARisingValueMeetsItsHighestSoonerByTheSteeperSlope)
{
    const Crossing crossing = crossingOf(lineOf(0.5, 0.25, 1), 20, LimitSide::highest);
    EXPECT_DOUBLE_EQ(crossing.early.value(), 110);
    EXPECT_DOUBLE_EQ(crossing.best.value(), 120);
    EXPECT_DOUBLE_EQ(crossing.late.value(), 140);
}

TEST(Crossing, AFallingValueMeetsItsLowestSoonerByTheSteeperSlope)
{
    const Crossing crossing = crossingOf(lineOf(-0.5, -1, -0.25), 0, LimitSide::lowest);
    EXPECT_DOUBLE_EQ(crossing.early.value(), 110);
    EXPECT_DOUBLE_EQ(crossing.best.value(), 120);
    EXPECT_DOUBLE_EQ(crossing.late.value(), 140);
}

TEST(Crossing, ASlopeThatLeadsAwayHasNoDate)
{
    const Crossing maybe = crossingOf(lineOf(0.5, -0.1, 1), 20, LimitSide::highest);
    EXPECT_TRUE(maybe.early);
    EXPECT_TRUE(maybe.best);
    EXPECT_FALSE(maybe.late);
    const Crossing hardly = crossingOf(lineOf(0, -0.1, 1), 20, LimitSide::highest);
    EXPECT_TRUE(hardly.early);
    EXPECT_FALSE(hardly.best);
    EXPECT_EQ(crossingOf(lineOf(0.5, 0.25, 1), 0, LimitSide::lowest), Crossing{});
}

TEST(Crossing, ALimitAlreadyPassedLiesBeforeTheMiddleAndStaysInOrder)
{
    const Crossing crossing = crossingOf(lineOf(0.5, 0.25, 1), 5, LimitSide::highest);
    EXPECT_DOUBLE_EQ(crossing.early.value(), 80);
    EXPECT_DOUBLE_EQ(crossing.best.value(), 90);
    EXPECT_DOUBLE_EQ(crossing.late.value(), 95);
}

TEST(Crossing, ASlopeTooSmallForADateGivesNone)
{
    EXPECT_FALSE(crossingOf(lineOf(1e-320, 1e-320, 1e-320), 1e10, LimitSide::highest).best);
}

// By hand: a wall of 5.0 mm losing 0.1 mm a year meets 4.0 mm after ten years.
TEST(Crossing, AWallLosingATenthAYearIsDownAMillimetreInTenYears)
{
    std::vector<TrendPoint> wall;
    wall.reserve(6);
    for (int year = 0; year < 6; ++year)
        wall.push_back({365.25 * year, 5.0 - 0.1 * year});
    const auto trend = theilSen(wall);
    ASSERT_TRUE(trend);
    const Crossing crossing = crossingOf(*trend, 4.0, LimitSide::lowest);
    EXPECT_NEAR(crossing.best.value(), 3652.5, 1e-6);
    EXPECT_NEAR(crossing.early.value(), 3652.5, 1e-6);
    EXPECT_NEAR(crossing.late.value(), 3652.5, 1e-6);
}

} // namespace padside

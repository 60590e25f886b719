// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/wall_readings.h"
#include "tests/support/reference_table.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <random>
#include <vector>

namespace padside::test {

namespace {

constexpr double inchOfReadings = 0.0254;

WallOutlook outlookOf(const std::vector<WallReading>& readings, double requiredM)
{
    return wallOutlook(readings, {requiredM}).value();
}

/// Readings in inches.
std::vector<WallReading> inInches(std::vector<WallReading> readings)
{
    for (WallReading& reading : readings)
        reading.thicknessM *= inchOfReadings;
    return readings;
}

} // namespace

// Source: tests/reference/README.md, wall_rates.csv.
TEST(WallReadings, TwoOfThemGiveARate)
{
    const ReferenceTable table("wall_rates.csv");
    ASSERT_EQ(table.rows(), 9U);
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const auto outlook = outlookOf(inInches({{table.number(row, "first_year"), table.number(row, "first_in")},
                                                 {table.number(row, "last_year"), table.number(row, "last_in")}}),
                                       0);
        EXPECT_NEAR(outlook.ratePerYearM / inchOfReadings, table.number(row, "rate_in_per_a"),
                    table.number(row, "tolerance"))
            << row;
    }
    // A published worked sheet: 7.8 mm to 3.24 mm in 15 years.
    EXPECT_NEAR(outlookOf({{0, 7.8e-3}, {15, 3.24e-3}}, 0).ratePerYearM, 0.304e-3, 0.001e-3);
}

// Data of training texts and quizzes on API 510 (in inches); where not printed, the answer computed from them.
TEST(WallReadings, TheLargerOfLongAndShortTermRateDecides)
{
    const auto tenth = outlookOf(inInches({{1990, 0.750}, {1997, 0.742}, {2003, 0.718}}), 0.5 * inchOfReadings);
    EXPECT_NEAR(tenth.shortTerm->mPerYear / inchOfReadings, 0.004, 5e-5);
    EXPECT_NEAR(tenth.longTerm->mPerYear / inchOfReadings, 0.0025, 5e-5);
    EXPECT_NEAR(tenth.ratePerYearM / inchOfReadings, 0.004, 5e-5);

    const auto quizA
        = outlookOf(inInches({{1993, 0.600}, {1995, 0.586}, {1998, 0.565}, {2003, 0.560}}), 0.510 * inchOfReadings);
    EXPECT_NEAR(quizA.shortTerm->mPerYear / inchOfReadings, 0.001, 1e-9);
    EXPECT_NEAR(quizA.longTerm->mPerYear / inchOfReadings, 0.004, 1e-9);
    EXPECT_NEAR(*quizA.remainingYears, 12.5, 1e-6);

    const auto quizB
        = outlookOf(inInches({{1987, 0.320}, {1997, 0.315}, {1999, 0.308}, {2004, 0.282}}), 0.228 * inchOfReadings);
    EXPECT_NEAR(quizB.shortTerm->mPerYear / inchOfReadings, 0.0052, 1e-9);
    EXPECT_NEAR(quizB.longTerm->mPerYear / inchOfReadings, 0.00224, 5e-6);
    EXPECT_NEAR(*quizB.remainingYears, 10.3846, 0.001);
    EXPECT_NEAR(quizB.nextIntervalYears, 10.3846 / 2, 0.001);
}

// Answer keys as above; the last two are a published worked sheet in mm.
TEST(WallReadings, RemainingLifeIsWhatIsLeftOverTheRate)
{
    EXPECT_NEAR(remainingLifeYears(0.198, 0.150, 0.007), 6.9, 0.05);
    EXPECT_NEAR(remainingLifeYears(0.211, 0.150, 0.003), 20.3, 0.05);
    EXPECT_NEAR(remainingLifeYears(0.332, 0.268, 0.004), 16, 1e-6);
    EXPECT_NEAR(remainingLifeYears(0.210, 0.150, std::max(0.010, 0.005)), 6, 1e-6);
    EXPECT_NEAR(remainingLifeYears(0.300, 0.200, 0.025), 4, 1e-6);
    EXPECT_NEAR(remainingLifeYears(3.24, 0.37, 0.34), 8.441, 0.002);
    EXPECT_NEAR(remainingLifeYears(3.24, 0.37, 0.304), 9.441, 0.002);
}

// The first two of several readings are measured ones, not what was ordered: from 0.375, not the 0.395 of the drawing
// (a published practice examination, question 29).
TEST(WallReadings, TheLongTermRateBeginsAtTheFirstMeasuredReading)
{
    const auto outlook = outlookOf(inInches({{1983, 0.375}, {1993, 0.295}, {2003, 0.255}}), 0.1 * inchOfReadings);
    EXPECT_NEAR(outlook.longTerm->mPerYear / inchOfReadings, 0.006, 1e-9);
}

// sqrt(2) s / dt with s = 0.05 mm and one year: 0.071 mm/a, more than steel loses at the upper limit of C4.
TEST(WallReadings, TheGaugesErrorIsCarriedIntoTheRate)
{
    const auto outlook = outlookOf({{0, 3.0e-3}, {1, 2.8e-3}}, 1e-3);
    EXPECT_NEAR(outlook.longTerm->errorMPerYear, 0.0707107e-3, 1e-9);
}

// Common practice, no source: readings closer than twice the gauge's error show nothing.
TEST(WallReadings, NoMeasurableLossIsNeverForever)
{
    for (const double last : {3.0e-3, 2.95e-3, 3.05e-3}) {
        const auto outlook = outlookOf({{2020, 3.0e-3}, {2025, last}}, 1.4e-3);
        EXPECT_FALSE(outlook.longTerm->measurable);
        EXPECT_EQ(outlook.ratePerYearM, 0);
        EXPECT_FALSE(outlook.remainingYears);
        // 0.1 mm in 5 years could hide: what is left would then last 80 years or so, not forever.
        ASSERT_TRUE(outlook.atLeastYears);
        EXPECT_NEAR(*outlook.atLeastYears, (last - 1.4e-3) / (0.1e-3 / 5), 1e-9);
        EXPECT_EQ(outlook.nextIntervalYears, 10);
        EXPECT_NE(say(outlook.said).find("No measurable loss"), std::string::npos);
    }
    EXPECT_TRUE(outlookOf({{2020, 3.0e-3}, {2025, 2.9e-3}}, 1.4e-3).longTerm->measurable);
    EXPECT_LT(outlookOf({{2020, 3.0e-3}, {2021, 3.0e-3}}, 2.9e-3).nextIntervalYears, 2);
}

TEST(WallReadings, AWallThatGrowsIsAMeasurementError)
{
    const auto outlook = outlookOf({{2020, 3.0e-3}, {2025, 3.4e-3}}, 1.4e-3);
    EXPECT_TRUE(outlook.longTerm->grew);
    EXPECT_EQ(outlook.ratePerYearM, 0);
    EXPECT_FALSE(outlook.remainingYears);
    EXPECT_NE(say(outlook.said).find("paint under the probe"), std::string::npos);
    // It grew lately, but shrank over all: what was measured over all decides.
    const auto back = outlookOf({{2015, 3.5e-3}, {2020, 2.8e-3}, {2025, 3.0e-3}}, 1.4e-3);
    EXPECT_NEAR(back.ratePerYearM, 0.05e-3, 1e-12);
    EXPECT_NEAR(*back.remainingYears, 32, 1e-6);
}

TEST(WallReadings, OneReadingSaysHowThickButNotHowFast)
{
    const auto outlook = outlookOf({{2020, 3.0e-3}}, 1.4e-3);
    EXPECT_FALSE(outlook.longTerm);
    EXPECT_FALSE(outlook.remainingYears);
    EXPECT_FALSE(outlook.atLeastYears);
    EXPECT_EQ(outlook.nextIntervalYears, 1);
}

TEST(WallReadings, AWallBelowWhatIsRequiredHasNoLifeLeftWhateverTheRate)
{
    for (const auto& readings : {std::vector<WallReading>{{2020, 1.3e-3}},
                                 {{2020, 1.3e-3}, {2025, 1.3e-3}},
                                 {{2020, 2.0e-3}, {2025, 1.4e-3}}}) {
        const auto outlook = outlookOf(readings, 1.4e-3);
        EXPECT_EQ(*outlook.remainingYears, 0);
        EXPECT_EQ(outlook.nextIntervalYears, 0);
        EXPECT_NE(say(outlook.said).find("replacement"), std::string::npos);
    }
}

TEST(WallReadings, WhateverTheReadingsLifeIsNeverNegativeNorEndless)
{
    std::mt19937 random(20261125);
    std::uniform_real_distribution<double> thickness(0.1e-3, 5e-3);
    std::uniform_real_distribution<double> years(0.01, 8);
    std::uniform_int_distribution<int> count(1, 6);
    for (int round = 0; round < 20'000; ++round) {
        std::vector<WallReading> readings;
        double now = 2000;
        for (int i = count(random); i > 0; --i)
            readings.push_back({now += years(random), thickness(random)});
        const auto outlook = outlookOf(readings, thickness(random));
        EXPECT_GE(outlook.ratePerYearM, 0);
        EXPECT_TRUE(std::isfinite(outlook.ratePerYearM));
        for (const auto& life : {outlook.remainingYears, outlook.atLeastYears}) {
            if (life) {
                EXPECT_GE(*life, 0);
                EXPECT_LE(*life, 1000);
            }
        }
        EXPECT_GE(outlook.nextIntervalYears, 0);
        EXPECT_LE(outlook.nextIntervalYears, 10);
        EXPECT_FALSE(say(outlook.said).empty());
    }
}

TEST(WallReadings, WhatCanNotBeIsRefused)
{
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    constexpr double inf = std::numeric_limits<double>::infinity();
    for (const auto& readings : {std::vector<WallReading>{},
                                 {{2020, 0}},
                                 {{2020, -1e-3}},
                                 {{2020, nan}},
                                 {{2020, inf}},
                                 {{2020, 3e-3}, {2020, 2e-3}},
                                 {{2021, 3e-3}, {2020, 2e-3}},
                                 {{nan, 3e-3}, {2020, 2e-3}},
                                 {{-1e308, 3e-3}, {1e308, 2e-3}}}) {
        const auto outlook = wallOutlook(readings, {1e-3});
        ASSERT_FALSE(outlook);
        EXPECT_FALSE(say(outlook.error().what).empty());
    }
    const std::vector<WallReading> good{{2020, 3e-3}, {2021, 2e-3}};
    EXPECT_FALSE(wallOutlook(good, {-1e-3}));
    EXPECT_FALSE(wallOutlook(good, {nan}));
    EXPECT_FALSE(wallOutlook(good, {1e-3, -1e-3}));
    EXPECT_TRUE(wallOutlook(good, {1e-3, 0}));
}

} // namespace padside::test

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "ui/drawing/time_axis.h"

#include <gtest/gtest.h>

namespace padside {

using test::day;

namespace {

TimeAxis axisOver(const std::string& from, const std::string& to, double left, double right)
{
    return TimeAxis{dayNumber(day(from)), dayNumber(day(to)), left, right};
}

} // namespace

TEST(TimeAxis, PutsTheEndsAtTheEndsAndTheMiddleInTheMiddle)
{
    const TimeAxis axis = axisOver("2024-01-01", "2025-01-01", 100, 832); // 366 days over 732 pixels
    EXPECT_DOUBLE_EQ(axis.x(day("2024-01-01")), 100);
    EXPECT_DOUBLE_EQ(axis.x(day("2025-01-01")), 832);
    EXPECT_DOUBLE_EQ(axis.x(day("2024-07-02")), 466) << "183 days at 2 pixels";
    EXPECT_DOUBLE_EQ(axis.dayAt(466), dayNumber(day("2024-07-02")));
}

TEST(TimeAxis, TicksStandAtNewYearAndInTheMiddleOfTheSeasons)
{
    const TimeAxis axis = axisOver("2024-01-01", "2025-12-31", 0, 730);
    const auto ticks = ticksOf(axis, SeasonWeeks{12, 20}, SeasonWeeks{38, 45});
    ASSERT_EQ(ticks.size(), 6U);
    EXPECT_EQ(ticks[0].kind, TimeTick::Kind::year);
    EXPECT_EQ(ticks[0].year, 2024);
    EXPECT_EQ(ticks[1].kind, TimeTick::Kind::spring);
    EXPECT_EQ(ticks[2].kind, TimeTick::Kind::fall);
    EXPECT_EQ(ticks[3].year, 2025);
    // ISO 8601 week 12 of 2024 begins on 18 March and week 20 ends on 19 May: the middle is 18 April.
    EXPECT_DOUBLE_EQ(ticks[1].x, axis.x(day("2024-04-18")));
}

TEST(TimeAxis, NoTickStandsOutsideTheDaysShown)
{
    const auto ticks = ticksOf(axisOver("2024-06-01", "2024-07-01", 0, 100), SeasonWeeks{12, 20}, SeasonWeeks{38, 45});
    EXPECT_TRUE(ticks.empty());
}

TEST(TimeAxis, SeasonsLieWhereTheSitesWeeksAre)
{
    const TimeAxis axis = axisOver("2024-01-01", "2025-01-01", 0, 732); // 2 pixels a day
    const auto seasons = seasonsOf(axis, SeasonWeeks{12, 20}, SeasonWeeks{38, 45});
    ASSERT_EQ(seasons.size(), 2U);
    // ISO 8601: week 12 of 2024 begins on 18 March, week 20 ends with 19 May.
    EXPECT_EQ(seasons[0], (SeasonSpan{TimeTick::Kind::spring, axis.x(day("2024-03-18")), axis.x(day("2024-05-20"))}));
    EXPECT_EQ(seasons[1].kind, TimeTick::Kind::fall);
}

TEST(TimeAxis, SouthOfTheEquatorFallComesFirstInTheYear)
{
    const TimeAxis axis = axisOver("2024-01-01", "2025-01-01", 0, 732);
    const auto seasons = seasonsOf(axis, SeasonWeeks{36, 45}, SeasonWeeks{10, 18});
    ASSERT_EQ(seasons.size(), 2U);
    EXPECT_EQ(seasons[0].kind, TimeTick::Kind::fall);
    EXPECT_DOUBLE_EQ(seasons[0].from, axis.x(day("2024-03-04"))) << "Monday of ISO week 10 of 2024";
    EXPECT_EQ(seasons[1].kind, TimeTick::Kind::spring);
}

TEST(TimeAxis, ASeasonIsCutOffAtTheEdges)
{
    const TimeAxis axis = axisOver("2024-04-01", "2024-05-01", 10, 40);
    const auto seasons = seasonsOf(axis, SeasonWeeks{12, 20}, SeasonWeeks{38, 45});
    ASSERT_EQ(seasons.size(), 1U);
    EXPECT_DOUBLE_EQ(seasons[0].from, 10);
    EXPECT_DOUBLE_EQ(seasons[0].to, 40);
}

TEST(TimeAxis, YearsAreWrittenAsOftenAsTheyFit)
{
    const TimeAxis axis = axisOver("2000-01-01", "2020-01-01", 0, 400); // 20 pixels a year
    EXPECT_EQ(yearStep(axis, 19), 1);
    EXPECT_EQ(yearStep(axis, 39), 2);
    EXPECT_EQ(yearStep(axis, 41), 5);
    EXPECT_EQ(yearStep(axis, 150), 10);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/date.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

Date dateOf(const char* text)
{
    const auto date = parseDate(text);
    EXPECT_TRUE(date) << text;
    return date.value_or(Date{});
}

} // namespace

TEST(CalendarDate, IsReadInTheExtendedFormAndWrittenBack)
{
    for (const char* text : {"2026-05-04", "1970-01-01", "2024-02-29", "2000-02-29", "9999-12-31", "1969-12-31"})
        EXPECT_EQ(isoText(dateOf(text)), text);
    EXPECT_EQ(dateOf("1970-01-02").time_since_epoch().count(), 1);
}

// Gregorian leap years: 1900 was none, 2000 was one (ISO 8601).
TEST(CalendarDate, ADayThatDoesNotExistIsRefused)
{
    for (const char* text :
         {"2023-02-29", "1900-02-29", "2026-04-31", "2026-13-01", "2026-00-10", "2026-01-00", "2026-01-32"})
        EXPECT_FALSE(parseDate(text)) << text;
}

TEST(CalendarDate, AnyOtherSpellingIsRefused)
{
    for (const char* text : {"", "2026", "2026-5-4", "20260504", "04.05.2026", "2026/05/04", "2026-05-04 ",
                             " 2026-05-04", "2026-05-0x", "-026-05-04", "2026-05-04T10:00", "２026-05-04"})
        EXPECT_FALSE(parseDate(text)) << text;
}

TEST(CalendarDate, MonthsLaterKeepsTheDayOrTakesTheLastOfAShorterMonth)
{
    EXPECT_EQ(isoText(addMonths(dateOf("2026-01-15"), 6)), "2026-07-15");
    EXPECT_EQ(isoText(addMonths(dateOf("2026-01-31"), 1)), "2026-02-28");
    EXPECT_EQ(isoText(addMonths(dateOf("2024-01-31"), 1)), "2024-02-29");
    EXPECT_EQ(isoText(addMonths(dateOf("2026-08-31"), 1)), "2026-09-30");
    EXPECT_EQ(isoText(addMonths(dateOf("2026-11-30"), 3)), "2027-02-28");
    EXPECT_EQ(isoText(addMonths(dateOf("2026-03-31"), -1)), "2026-02-28");
    EXPECT_EQ(isoText(addMonths(dateOf("2026-01-15"), -1)), "2025-12-15");
    EXPECT_EQ(isoText(addMonths(dateOf("2026-01-15"), 0)), "2026-01-15");
}

TEST(CalendarDate, YearsAreOf365DaysAndAQuarter)
{
    EXPECT_DOUBLE_EQ(yearsBetween(dateOf("2020-01-01"), dateOf("2024-01-01")), 4.0);
    EXPECT_DOUBLE_EQ(yearsBetween(dateOf("2024-01-01"), dateOf("2020-01-01")), -4.0);
    EXPECT_EQ(yearsBetween(dateOf("2024-01-01"), dateOf("2024-01-01")), 0.0);
    EXPECT_EQ(yearOf(dateOf("2025-12-31")), 2025);
}

// ISO 8601 week dates, examples as commonly printed: 2008-W01-1 is 2007-12-31, 2008-12-29 is 2009-W01-1, 2010-01-03 is
// 2009-W53-7, 2005-01-01 is 2004-W53-6, 2007-01-01 is 2007-W01-1.
TEST(CalendarDate, IsoWeeksBeginWhereTheStandardSays)
{
    EXPECT_EQ(isoText(mondayOfWeek(2008, 1)), "2007-12-31");
    EXPECT_EQ(isoText(mondayOfWeek(2009, 1)), "2008-12-29");
    EXPECT_EQ(isoText(mondayOfWeek(2009, 53) + std::chrono::days(6)), "2010-01-03");
    EXPECT_EQ(isoText(mondayOfWeek(2004, 53) + std::chrono::days(5)), "2005-01-01");
    EXPECT_EQ(isoText(mondayOfWeek(2007, 1)), "2007-01-01");
    EXPECT_EQ(isoText(mondayOfWeek(2010, 1)), "2010-01-04");
}

TEST(CalendarDate, EveryIsoWeekBeginsOnAMondayAWeekAfterTheOneBefore)
{
    for (int year = 1999; year <= 2060; ++year) {
        for (int week = 1; week <= 52; ++week) {
            EXPECT_EQ(std::chrono::weekday(mondayOfWeek(year, week)), std::chrono::Monday);
            EXPECT_EQ(mondayOfWeek(year, week + 1) - mondayOfWeek(year, week), std::chrono::days(7));
        }
        // The first Thursday of the year lies in week 1.
        EXPECT_EQ(yearOf(mondayOfWeek(year, 1) + std::chrono::days(3)), year);
        EXPECT_EQ(yearOf(mondayOfWeek(year, 1) - std::chrono::days(4)), year - 1);
    }
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/installed_day.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

const Date today = std::chrono::sys_days(std::chrono::year{2026} / 11 / 25);

std::string read(std::string_view text)
{
    const Result<Date> day = readInstalledDay(text, today);
    return day ? isoText(*day) : say(day.error().what);
}

} // namespace

TEST(InstalledDay, IsReadAsPeopleKnowIt)
{
    EXPECT_EQ(read("2008-06-14"), "2008-06-14");
    EXPECT_EQ(read("2008-06"), "2008-06-01");
    EXPECT_EQ(read("2008"), "2008-01-01");
    EXPECT_EQ(read("2026-11-25"), "2026-11-25") << "today";
    EXPECT_EQ(read("1900"), "1900-01-01");
}

TEST(InstalledDay, OtherFormsAndDaysThatDoNotExistAreRefusedWithAnExample)
{
    for (const char* text : {"14/6/08", "2008-02-30", "2008-13", "June 2008", "08", "", "20081", "abcd"})
        EXPECT_NE(read(text).find("write it like 2008-06-14"), std::string::npos) << text << ": " << read(text);
}

TEST(InstalledDay, TheFutureAndTheYearsBeforeAnyUnitAreRefused)
{
    EXPECT_EQ(read("2026-11-26"), "2026-11-26 lies in the future: check the date.");
    EXPECT_EQ(read("0208"), "“0208” lies before 1900: check the year.");
}

} // namespace padside

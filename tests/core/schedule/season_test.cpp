// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/season.h"
#include "tests/support/record_builder.h"

#include <gtest/gtest.h>

namespace padside {

using test::day;

TEST(Season, RunsFromMondayOfItsFirstWeekToSundayOfItsLast)
{
    // Days by Python 3.11, datetime.date.fromisocalendar.
    const Season spring = seasonOf(Site{}, VisitReason::spring, 2026);
    EXPECT_EQ(spring.window, (Window{day("2026-03-16"), day("2026-05-17")})); // weeks 12 to 20
    const Season fall = seasonOf(Site{}, VisitReason::fall, 2026);
    EXPECT_EQ(fall.window, (Window{day("2026-09-14"), day("2026-11-08")})); // weeks 38 to 45
}

TEST(Season, SouthOfTheEquatorItIsJustOtherWeeks)
{
    Site south;
    south.spring = {38, 45};
    south.fall = {12, 20};
    EXPECT_EQ(seasonAfter(south, day("2026-01-10")).reason, VisitReason::fall);
    EXPECT_EQ(seasonAfter(south, day("2026-06-10")).reason, VisitReason::spring);
}

TEST(Season, OneNotOverIsThisYearsUpToItsLastDay)
{
    EXPECT_EQ(seasonNotOver(Site{}, VisitReason::spring, day("2026-05-17")).window.latest, day("2026-05-17"));
    EXPECT_EQ(seasonNotOver(Site{}, VisitReason::spring, day("2026-05-18")).window.earliest, day("2027-03-22"));
}

TEST(Season, TheNextOneBeginsAfterTheDay)
{
    EXPECT_EQ(seasonAfter(Site{}, day("2026-03-16")).reason, VisitReason::fall);
    EXPECT_EQ(seasonAfter(Site{}, day("2026-03-15")).reason, VisitReason::spring);
    EXPECT_EQ(seasonAfter(Site{}, day("2026-12-31")).window.earliest, day("2027-03-22"));
}

TEST(Season, ADayIsInItOrNot)
{
    EXPECT_FALSE(inSeason(Site{}, day("2026-03-15")));
    EXPECT_TRUE(inSeason(Site{}, day("2026-03-16")));
    EXPECT_TRUE(inSeason(Site{}, day("2026-11-08")));
    EXPECT_FALSE(inSeason(Site{}, day("2026-11-09")));
}

TEST(Season, WeeksAtTheTurnOfTheYearBelongToTheirIsoYear)
{
    Site site;
    site.fall = {50, 53};
    // 2026 has 53 weeks; by date.fromisocalendar the last ends on Sunday 2027-01-03.
    EXPECT_TRUE(inSeason(site, day("2027-01-03")));
    EXPECT_EQ(seasonNotOver(site, VisitReason::fall, day("2027-01-01")).window.earliest, day("2026-12-07"));
}

} // namespace padside

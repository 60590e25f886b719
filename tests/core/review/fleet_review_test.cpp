// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/fleet_review.h"
#include "tests/core/review/planned_check.h"
#include "tests/support/record_builder.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::check;
using test::day;
using testing::ElementsAre;
using testing::IsEmpty;

UnitReview unitWith(std::vector<Check> checks)
{
    UnitReview unit;
    unit.checks = std::move(checks);
    return unit;
}

/// "2026-05-17: a* b", the check that forced the day starred.
std::vector<std::string> told(const std::vector<SiteTrip>& trips)
{
    std::vector<std::string> lines;
    for (const SiteTrip& trip : trips) {
        std::string line = isoText(trip.on) + ":";
        for (std::size_t i = 0; i < trip.checks.size(); ++i)
            line += " " + say(trip.checks[i].what) + (i == trip.forcedBy ? "*" : "");
        lines.push_back(line);
    }
    return lines;
}

} // namespace

TEST(SiteTrips, ChecksOfSeveralUnitsShareATripWhereTheirWindowsMeet)
{
    const std::vector units{unitWith({check("a", "2026-04-01", "2026-05-10"), check("b", "2026-06-01", "2026-07-10")}),
                            unitWith({check("c", "2026-05-01", "2026-06-20")})};
    // The windows of a and c meet, those of b and c too, but not all three: two trips, the fewest there can be.
    EXPECT_THAT(told(siteTrips(Site{}, units, day("2026-03-01"))), ElementsAre("2026-05-08: a* c", "2026-07-10: b*"));
}

TEST(SiteTrips, WhatIsOverdueIsServedTodayWithAllThatIsOpenToday)
{
    const std::vector units{
        unitWith({check("overdue", "2026-01-01", "2026-02-01"), check("open", "2026-02-15", "2026-05-10"),
                  check("later", "2026-04-01", "2026-05-10")})};
    const auto trips = siteTrips(Site{}, units, day("2026-03-01"));
    EXPECT_THAT(told(trips), ElementsAre("2026-03-01: overdue* open", "2026-05-08: later*"));
    EXPECT_EQ(trips.front().checks.front().latest, day("2026-02-01")) << "the record keeps when it was due";
}

TEST(SiteTrips, ADayInSeasonIsPreferredToTheLastDay)
{
    // Spring at this site ends on 2026-05-17, a Sunday.
    EXPECT_THAT(
        told(siteTrips(Site{}, std::vector{unitWith({check("a", "2026-05-01", "2026-07-01")})}, day("2026-03-01"))),
        ElementsAre("2026-05-15: a*"));
    EXPECT_THAT(
        told(siteTrips(Site{}, std::vector{unitWith({check("a", "2026-06-01", "2026-07-01")})}, day("2026-03-01"))),
        ElementsAre("2026-07-01: a*"));
}

TEST(SiteTrips, AWorkingDayIsPreferredButNeverAgainstTheWindow)
{
    const auto on = [](const std::string& from, const std::string& until) {
        return isoText(siteTrips(Site{}, std::vector{unitWith({check("a", from, until)})}, day("2026-03-01")).at(0).on);
    };
    EXPECT_EQ(on("2026-05-01", "2026-05-09"), "2026-05-08") << "the Friday before";
    EXPECT_EQ(on("2026-05-09", "2026-05-10"), "2026-05-10") << "only a weekend is left";
}

TEST(SiteTrips, NoChecksNoTrips)
{
    EXPECT_THAT(siteTrips(Site{}, {}, day("2026-03-01")), IsEmpty());
    EXPECT_THAT(siteTrips(Site{}, std::vector{UnitReview{}}, day("2026-03-01")), IsEmpty());
}

} // namespace padside

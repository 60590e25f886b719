// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/exposure_clock.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gtest/gtest.h>
#include <random>

namespace padside {

namespace {

using test::day;
using test::smallCatalogue;

const OutlookFigures& figures()
{
    static const Catalogue catalogue = smallCatalogue();
    return catalogue.outlook();
}

ExposureClock clockWith(double air, const std::vector<WetnessFrom>& wetness, const std::vector<Coat>& coats)
{
    return {air, wetness, coats, figures()};
}

} // namespace

TEST(ExposureClock, OfADryBareZoneIsTheCalendar)
{
    const ExposureClock clock;
    EXPECT_NEAR(clock.yearsBetween(day("2020-01-01"), day("2024-01-01")), 4, 1e-12); // 1461 days
    EXPECT_EQ(clock.yearsBetween(day("2024-01-01"), day("2020-01-01")), 0);
    EXPECT_EQ(clock.dayAfter(day("2020-01-01"), 4, day("2050-01-01")), day("2024-01-01"));
    EXPECT_EQ(clock.dayAfter(day("2020-01-01"), 0, day("2050-01-01")), day("2020-01-01"));
    EXPECT_FALSE(clock.dayAfter(day("2020-01-01"), 31, day("2050-01-01")));
}

TEST(ExposureClock, ACoatSlowsItUntilItsLifeIsOver)
{
    const ExposureClock clock = clockWith(1, {}, {{day("2021-01-01"), day("2023-01-01"), 0.7}});
    EXPECT_NEAR(clock.speedOn(day("2020-06-01")), 1, 1e-15);
    EXPECT_NEAR(clock.speedOn(day("2021-01-01")), 0.3, 1e-15);
    EXPECT_NEAR(clock.speedOn(day("2023-01-01")), 1, 1e-15);
    EXPECT_NEAR(clock.yearsBetween(day("2020-01-01"), day("2024-01-01")), (366 + 0.3 * 730 + 365) / 365.25, 1e-12);
}

TEST(ExposureClock, OfSeveralCoatsTheBestCountsOnce)
{
    const ExposureClock clock
        = clockWith(1, {}, {{day("2021-01-01"), day("2023-01-01"), 0.7}, {day("2021-06-01"), day("2022-06-01"), 0.5}});
    EXPECT_NEAR(clock.speedOn(day("2021-07-01")), 0.3, 1e-15);
    EXPECT_NEAR(clock.speedOn(day("2022-07-01")), 0.3, 1e-15);
}

TEST(ExposureClock, WetnessHoldsUntilItIsFoundOtherwise)
{
    const ExposureClock clock
        = clockWith(2, {{day("2021-01-01"), Wetness::wet}, {day("2022-01-01"), Wetness::dry}}, {});
    EXPECT_NEAR(clock.speedOn(day("2020-12-31")), 2, 1e-15);
    EXPECT_NEAR(clock.speedOn(day("2021-12-31")), 3, 1e-15); // the small catalogue's wet factor is 1.5
    EXPECT_NEAR(clock.speedOn(day("2022-01-01")), 2, 1e-15);
}

TEST(ExposureClock, DaysAndExposureAreInversesOfEachOther)
{
    std::mt19937 random(4);
    const ExposureClock clock
        = clockWith(0.3, {{day("2021-01-01"), Wetness::wet}, {day("2024-01-01"), Wetness::damp}},
                    {{day("2020-06-01"), day("2023-06-01"), 0.7}, {day("2026-01-01"), day("2029-01-01"), 0.4}});
    const Date from = day("2019-03-03");
    for (int round = 0; round < 1000; ++round) {
        const Date to = from + std::chrono::days(static_cast<int>(random() % 6000));
        const auto back = clock.dayAfter(from, clock.yearsBetween(from, to), from + std::chrono::days(6001));
        ASSERT_TRUE(back);
        EXPECT_LE(std::abs((*back - to).count()), 1);
    }
}

// Middle of C3, ISO 9223:2012 table 2: 37.5 µm/a of steel. The loss itself is checked in tests/core/corrosion.
TEST(AirFactor, ComparesTheSitesAirWithTheMiddleOfC3)
{
    const AirFactor inland = airFactor({283.15, 0.75, 5.0, 3.0}, figures());
    const AirFactor coast = airFactor({293.15, 0.80, 10.0, 300.0}, figures());
    EXPECT_TRUE(inland.known);
    EXPECT_GT(inland.factor, 0.3);
    EXPECT_LT(inland.factor, 1.2);
    EXPECT_GT(coast.factor, 2 * inland.factor);
    EXPECT_LE(coast.factor, 5);
}

TEST(AirFactor, IsBoundedAndOneWhereTheAirIsNotKnown)
{
    EXPECT_EQ(airFactor({263.15, 0.40, 0.5, 0.5}, figures()).factor, 0.2);
    EXPECT_EQ(airFactor({298.15, 0.93, 150.0, 760.0}, figures()).factor, 5);
    EXPECT_EQ(airFactor({}, figures()), AirFactor{});
    EXPECT_EQ(airFactor({283.15, 0.75, 5.0, std::nullopt}, figures()), AirFactor{});
    EXPECT_EQ(airFactor({283.15, 7.5, 5.0, 5.0}, figures()), AirFactor{}); // a humidity that can't be
}

TEST(ExposureClock, KnowsWhetherATimePassedAtOneSpeed)
{
    const ExposureClock clock = clockWith(1, {}, {{day("2021-01-01"), day("2023-01-01"), 0.7}});
    EXPECT_NEAR(clock.oneSpeedBetween(day("2021-01-01"), day("2023-01-01")), 0.3, 1e-15);
    EXPECT_EQ(clock.oneSpeedBetween(day("2020-01-01"), day("2021-01-01")), 1);
    EXPECT_EQ(clock.oneSpeedBetween(day("2020-12-31"), day("2021-01-02")), 0);
    EXPECT_EQ(clock.oneSpeedBetween(day("2022-12-31"), day("2023-01-02")), 0);
    EXPECT_EQ(clock.oneSpeedBetween(day("2024-01-01"), day("2030-01-01")), 1);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/carry_on.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>

namespace padside::test {

namespace {

/// A repair of 1 800 that gains three years against a new unit of 9 000 for 15 years, at 6 %: computed.
CarryOnCase threeMoreYears()
{
    CarryOnCase given;
    given.years = 3;
    given.rate = 0.06;
    given.repairs = {1800 * 1.06, 0, 0}; // paid at once
    given.upkeepOld = 450 + 700;
    given.upkeepNew = 250 + 420;
    given.priceNew = 9000;
    given.lifeNew = 15;
    return given;
}

} // namespace

TEST(CarryOn, MatchesTheArithmeticOfEquivalentAnnualCost)
{
    const auto answer = carryOnOrReplace(threeMoreYears());
    ASSERT_TRUE(answer);
    EXPECT_NEAR(answer->carryOnAYear, 1823.40, 0.01);
    EXPECT_NEAR(answer->replaceAYear, 1596.66, 0.01);
    EXPECT_FALSE(answer->carryOn);
    EXPECT_THAT(say(answer->said), ::testing::HasSubstr("Replace"));
}

TEST(CarryOn, SaysWhichAssumptionWouldTurnIt)
{
    const auto answer = *carryOnOrReplace(threeMoreYears());
    const auto price = std::ranges::find(answer.turning, "price of a new unit", &TurningPoint::assumption);
    ASSERT_NE(price, answer.turning.end());
    // 9 000 CRF(6 %, 15) = 926.66; it turns where that is 226.74 more: at 9 000 (926.66 + 226.74) / 926.66.
    EXPECT_NEAR(price->turnsAt, 9000 * (926.66 + 226.74) / 926.66, 1);
    CarryOnCase there = threeMoreYears();
    there.priceNew = price->turnsAt * 1.001;
    EXPECT_TRUE(carryOnOrReplace(there)->carryOn);
}

TEST(CarryOn, EnergyIsReckonedFromLabelAndAge)
{
    CarryOnCase given;
    given.years = 1;
    given.rate = 0;
    given.energyPrice = 0.2;
    given.capacityW = 36000 * 0.29307107017;
    given.fullLoadHours = 1500;
    given.seerOld = 10;
    given.seerNew = 16;
    given.lifeNew = 15;
    const auto answer = *carryOnOrReplace(given);
    EXPECT_NEAR(answer.carryOnAYear, 5400 * 0.2, 0.01) << "36 000 Btu/h, 1 500 h, SEER 10";
    EXPECT_NEAR(answer.replaceAYear, 3375 * 0.2, 0.01) << "published example: SEER 16, 3 375 kWh";
}

TEST(CarryOn, NearestTurningPointComesFirst)
{
    const auto answer = *carryOnOrReplace(threeMoreYears());
    ASSERT_GE(answer.turning.size(), 2U);
    EXPECT_TRUE(std::ranges::is_sorted(
        answer.turning, {}, [](const TurningPoint& point) { return std::abs(std::log(point.turnsAt / point.today)); }));
}

TEST(CarryOn, RefusesWhatCantBe)
{
    CarryOnCase given = threeMoreYears();
    given.priceNew = -1;
    EXPECT_FALSE(carryOnOrReplace(given));
    given = threeMoreYears();
    given.years = 0;
    EXPECT_FALSE(carryOnOrReplace(given));
    given = threeMoreYears();
    given.rate = std::nan("");
    EXPECT_FALSE(carryOnOrReplace(given));
}

TEST(CarryOn, ATurningPointIsSaidInItsOwnMeasure)
{
    using Measure = TurningPoint::Measure;
    EXPECT_EQ(say(turningSentence({"price of a new unit", Measure::money, 6500, 3400})),
              "price of a new unit: 3400 instead of 6500");
    EXPECT_EQ(say(turningSentence({"price of electricity", Measure::money, 0.24, 0.4})),
              "price of electricity: 0.40 instead of 0.24");
    EXPECT_EQ(say(turningSentence({"life of a new unit", Measure::years, 15, 8.2})),
              "life of a new unit: 8 years instead of 15");
    EXPECT_EQ(say(turningSentence({"hours of cooling a year", Measure::hours, 900, 1250})),
              "hours of cooling a year: 1250 h instead of 900 h");
    EXPECT_EQ(say(turningSentence({"efficiency of a new unit", Measure::seer, 15, 22.5})),
              "efficiency of a new unit: SEER 22.5 instead of 15.0");
    EXPECT_EQ(say(turningSentence({"interest", Measure::share, 0.05, 0.09})), "interest: 9.0 % instead of 5.0 %");
}

} // namespace padside::test

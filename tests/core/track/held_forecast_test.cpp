// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/held_forecast.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;

constexpr std::size_t halfYear = 0;
constexpr std::size_t oneYear = 1;
constexpr std::size_t twoYears = 2;
constexpr std::size_t fiveYears = 3;

/// A forecast of the crown, kept on 2020-05-01, held against what came after.
class HeldForecastOfCrown : public testing::Test
{
protected:
    HeldForecastOfCrown()
    {
        m_unit.withPart("suction-accumulator", {"crown", "shell"}, "2010-05-01");
        m_crown = m_unit.zone("crown");
        m_unit.visit("2020-05-01").graded("crown", 3);
    }

    [[nodiscard]] std::vector<HeldForecast> held(const UnitRecord& record, const std::string& today,
                                                 std::array<double, 4> chances = {0.1, 0.2, 0.4, 0.8}) const
    {
        KeptForecast forecast;
        forecast.unitId = record.unit.id;
        forecast.visitId = record.visits.front().id;
        forecast.on = day("2020-05-01");
        forecast.zoneId = m_crown;
        forecast.chances = chances;
        return holdForecasts(record, std::vector{forecast}, m_catalogue, day(today));
    }

    [[nodiscard]] std::vector<HeldForecast> held(const std::string& today) const { return held(m_unit.build(), today); }

    [[nodiscard]] Outcome outcome(const std::string& today, std::size_t horizon) const
    {
        const auto all = held(today);
        EXPECT_EQ(all.size(), 1U);
        return all.front().at(horizon);
    }

    Catalogue m_catalogue = test::smallCatalogue();
    RecordBuilder m_unit = aUnit("HB-01");
    ZoneId m_crown;
};

} // namespace

TEST_F(HeldForecastOfCrown, SeenNotSpentOnTheDayOrLaterIsNotSpent)
{
    m_unit.visit("2021-05-01").graded("crown", 4);
    EXPECT_EQ(outcome("2021-05-01", halfYear), Outcome::notSpent);
    EXPECT_EQ(outcome("2021-05-01", oneYear), Outcome::notSpent) << "on the very day";
    EXPECT_EQ(outcome("2021-05-01", twoYears), Outcome::waiting);
    EXPECT_EQ(outcome("2023-05-01", twoYears), Outcome::waiting) << "its day is past, but nobody looked";
}

TEST_F(HeldForecastOfCrown, FoundSpentByTheDayIsSpentOnceTheDayIsPast)
{
    m_unit.visit("2020-11-01").graded("crown", 5);
    EXPECT_EQ(outcome("2020-12-01", oneYear), Outcome::waiting)
        << "early ones alone would weigh more than those that last";
    EXPECT_EQ(outcome("2021-05-01", oneYear), Outcome::spent);
    EXPECT_EQ(held("2020-12-01").front().spentOn, day("2020-11-01")) << "though it is known at once";
}

TEST_F(HeldForecastOfCrown, ADayBetweenTwoVisitsThatFoundItOtherwiseIsNeverTold)
{
    m_unit.visit("2020-10-15").graded("crown", 4);
    m_unit.visit("2021-04-15").graded("crown", 5);
    EXPECT_EQ(outcome("2021-06-01", halfYear), Outcome::untold) << "the half year ends on 2020-11-01";
    EXPECT_EQ(outcome("2021-06-01", oneYear), Outcome::spent);
}

TEST_F(HeldForecastOfCrown, WorkThatMakesItBetterEndsWhatTheForecastSpokeOf)
{
    m_unit.visit("2021-05-01")
        .graded("crown", 4)
        .treated("crown", TreatmentKind::repair)
        .graded("crown", 2, Phase::asLeft);
    m_unit.visit("2025-06-01").graded("crown", 5);
    EXPECT_EQ(outcome("2025-07-01", oneYear), Outcome::notSpent) << "seen before the work";
    EXPECT_EQ(outcome("2025-07-01", twoYears), Outcome::untold);
    EXPECT_EQ(outcome("2025-07-01", fiveYears), Outcome::untold) << "another life was spent then";
}

TEST_F(HeldForecastOfCrown, PaintEndsNothing)
{
    m_unit.visit("2020-11-01")
        .graded("crown", 3)
        .treated("crown", TreatmentKind::brushAndCoat)
        .graded("crown", 2, Phase::asLeft);
    m_unit.visit("2022-06-01").graded("crown", 2);
    EXPECT_EQ(outcome("2022-07-01", twoYears), Outcome::notSpent);
}

TEST_F(HeldForecastOfCrown, APartTakenOutSpentIsSpentAndOneTakenOutEarlyIsUntold)
{
    RecordBuilder early = m_unit;
    m_unit.visit("2021-03-01").graded("crown", 5);
    m_unit.replacedPart("suction-accumulator", "2021-03-01");
    EXPECT_EQ(outcome("2021-06-01", oneYear), Outcome::spent);
    early.visit("2021-03-01").graded("crown", 4);
    early.replacedPart("suction-accumulator", "2021-03-01");
    const auto all = held(early.build(), "2021-06-01");
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all.front().at(halfYear), Outcome::notSpent);
    EXPECT_EQ(all.front().at(oneYear), Outcome::untold);
    EXPECT_EQ(all.front().endedOn, day("2021-03-01"));
}

TEST_F(HeldForecastOfCrown, ARetiredUnitTellsNothingMore)
{
    UnitRecord record = m_unit.build();
    record.unit.retiredOn = day("2021-01-01");
    const auto all = held(record, "2022-06-01");
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all.front().at(oneYear), Outcome::untold);
    EXPECT_EQ(held(record, "2020-06-01").front().at(oneYear), Outcome::waiting);
}

TEST_F(HeldForecastOfCrown, NotSeenSettlesNothing)
{
    m_unit.visit("2021-06-01").notSeen("crown", NotSeenReason::running);
    EXPECT_EQ(outcome("2021-07-01", oneYear), Outcome::waiting);
}

TEST_F(HeldForecastOfCrown, ACorrectionOfALaterVisitCountsAsItStandsToday)
{
    m_unit.visit("2020-11-02").graded("crown", 5);
    EXPECT_EQ(outcome("2021-06-01", oneYear), Outcome::spent);
    m_unit.corrected(3, "pressed the wrong key");
    EXPECT_EQ(outcome("2021-06-01", halfYear), Outcome::notSpent);
    EXPECT_EQ(outcome("2021-06-01", oneYear), Outcome::waiting);
}

TEST_F(HeldForecastOfCrown, AnOpenVisitSettlesNothingYet)
{
    m_unit.visit("2021-06-01", VisitReason::spring, false).graded("crown", 5);
    EXPECT_EQ(outcome("2021-07-01", twoYears), Outcome::waiting);
    EXPECT_EQ(outcome("2021-07-01", oneYear), Outcome::waiting);
}

TEST_F(HeldForecastOfCrown, WhatWasSpentAlreadyIsNoForecast)
{
    RecordBuilder spent = aUnit("HB-02");
    spent.withPart("suction-accumulator", {"crown"}, "2010-05-01");
    m_crown = spent.zone("crown");
    spent.visit("2020-05-01").graded("crown", 5);
    EXPECT_TRUE(held(spent.build(), "2022-01-01").empty());
    spent.corrected(4, "it held after all");
    EXPECT_EQ(held(spent.build(), "2022-01-01").size(), 1U);
}

TEST_F(HeldForecastOfCrown, WhatItsWallSaidToBeSpentAlreadyIsNoForecast)
{
    m_unit.visit("2021-05-01").graded("crown", 4);
    const UnitRecord record = m_unit.build();
    EXPECT_TRUE(held(record, "2022-01-01", {1, 1, 1, 1}).empty());
    EXPECT_EQ(held(record, "2022-01-01", {0.999, 1, 1, 1}).size(), 1U);
}

TEST_F(HeldForecastOfCrown, WhatWasForetoldLaterThanTheDayAskedForIsLeftOut)
{
    EXPECT_TRUE(held("2020-04-30").empty());
    EXPECT_EQ(held("2020-05-01").size(), 1U);
}

TEST_F(HeldForecastOfCrown, AZoneThatIsNoLongerInTheRecordIsLeftOut)
{
    m_crown = ZoneId();
    EXPECT_TRUE(held("2022-01-01").empty());
}

} // namespace padside

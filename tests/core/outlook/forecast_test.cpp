// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/forecast.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <cmath>
#include <gmock/gmock.h>
#include <numeric>
#include <random>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;
using testing::HasSubstr;

class Forecast : public testing::Test
{
protected:
    [[nodiscard]] ZoneForecast of(const RecordBuilder& builder, const std::string& zone, const std::string& today,
                                  const std::vector<Date>& by = {}) const
    {
        const auto belief = zoneBelief(builder.build(), m_catalogue, m_model, builder.zone(zone), day(today));
        return forecastZone(*belief, m_catalogue.outlook(), by);
    }

    Catalogue m_catalogue = test::smallCatalogue();
    OutlookModel m_model{m_catalogue};
};

/// A visit's worth of anything that could be entered.
void enterAnything(RecordBuilder& builder, std::mt19937& random, const std::string& zone)
{
    const auto grade = [&] { return 1 + static_cast<int>(random() % 5); };
    switch (random() % 6) {
    case 0:
        builder.notSeen(zone, static_cast<NotSeenReason>(random() % 7));
        break;
    case 1:
        builder.graded(zone, grade()).wet(static_cast<Wetness>(random() % 3));
        break;
    case 2:
        builder.graded(zone, grade()).treated(zone, static_cast<TreatmentKind>(random() % 6));
        break;
    case 3:
        builder.treated(zone, static_cast<TreatmentKind>(random() % 6)).graded(zone, grade(), Phase::asLeft);
        break;
    case 4:
        builder.graded(zone, grade()).graded(zone, grade(), Phase::asLeft);
        break;
    default:
        builder.graded(zone, grade());
        break;
    }
}

void expectForecastHolds(const ZoneForecast& forecast, const ZoneBelief& zone)
{
    const GradeChances chances = zone.belief.grades();
    EXPECT_NEAR(std::accumulate(chances.begin(), chances.end(), 0.0), 1, 1e-9);
    double before = forecast.chanceToday;
    for (const ChanceBy& one : forecast.spent) {
        EXPECT_TRUE(std::isfinite(one.chance));
        EXPECT_GE(one.chance, before - 1e-12);
        EXPECT_LE(one.chance, 1);
        before = one.chance;
    }
    EXPECT_TRUE(forecast.dates.early || !forecast.dates.middle);
    EXPECT_TRUE(forecast.dates.middle || !forecast.dates.late);
    EXPECT_LE(forecast.dates.early.value_or(forecast.furthest), forecast.dates.middle.value_or(forecast.furthest));
    EXPECT_LE(forecast.dates.middle.value_or(forecast.furthest), forecast.dates.late.value_or(forecast.furthest));
    EXPECT_FALSE(say(forecast.when).empty());
    EXPECT_FALSE(say(forecast.because).empty());
}

} // namespace

TEST_F(Forecast, ItsDatesAreWhereTheChancesReachTenFiftyAndNinetyPercent)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown"}, "2015-05-01");
    builder.visit("2020-05-01").graded("crown", 3).treated("crown", TreatmentKind::brushAndCoat);
    const ZoneForecast forecast = of(builder, "crown", "2020-05-01");
    ASSERT_TRUE(forecast.dates.early && forecast.dates.middle && forecast.dates.late);
    const ZoneForecast again
        = of(builder, "crown", "2020-05-01", {*forecast.dates.early, *forecast.dates.middle, *forecast.dates.late});
    EXPECT_NEAR(again.spent[0].chance, 0.1, 0.001);
    EXPECT_NEAR(again.spent[1].chance, 0.5, 0.001);
    EXPECT_NEAR(again.spent[2].chance, 0.9, 0.001);
}

TEST_F(Forecast, ACoatPutsTheDatesOff)
{
    RecordBuilder bare = aUnit("HB-01");
    bare.withPart("suction-accumulator", {"crown"}, "2015-05-01");
    bare.visit("2020-05-01").graded("crown", 3);
    RecordBuilder coated = bare;
    coated.treated("crown", TreatmentKind::brushAndCoat);
    const ZoneForecast without = of(bare, "crown", "2020-05-01");
    const ZoneForecast with = of(coated, "crown", "2020-05-01");
    EXPECT_GT(*with.dates.early, *without.dates.early);
    EXPECT_GT(*with.dates.middle, *without.dates.middle);
    ASSERT_FALSE(with.notes.empty());
    EXPECT_EQ(say(with.notes.front()),
              "The protection of 2020-05-01 is expected to slow it until 2023-05-02; what lies "
              "under it is not better for it.");
}

TEST_F(Forecast, UnseenItNeverLooksBetter)
{
    RecordBuilder seen = aUnit("HB-01");
    seen.withPart("suction-accumulator", {"crown"}, "2015-05-01");
    seen.visit("2020-05-01").graded("crown", 3);
    RecordBuilder missed = seen;
    missed.visit("2021-05-01").notSeen("crown", NotSeenReason::covered);
    missed.visit("2022-05-01").notSeen("crown", NotSeenReason::covered);
    double before = 0;
    for (const std::string today : {"2020-05-01", "2021-05-01", "2022-05-01", "2023-05-01"}) {
        const ZoneForecast forecast = of(today < "2021" ? seen : missed, "crown", today, {addMonths(day(today), 12)});
        EXPECT_GT(forecast.chanceToday + forecast.spent[0].chance, before) << today;
        before = forecast.chanceToday + forecast.spent[0].chance;
    }
}

TEST_F(Forecast, AFastRusterIsSaidToBeFastByItsThirdVisit)
{
    RecordBuilder fast = aUnit("HB-01");
    fast.withPart("suction-accumulator", {"crown"}, "2018-05-01");
    fast.visit("2019-05-01").graded("crown", 2);
    fast.visit("2020-05-01").graded("crown", 3);
    fast.visit("2021-05-01").graded("crown", 4);
    const ZoneForecast forecast = of(fast, "crown", "2021-05-01");
    EXPECT_GT(forecast.pace, fastPace);
    RecordBuilder usual = aUnit("HB-01"); // the same grade today, but nobody saw it get there
    usual.withPart("suction-accumulator", {"crown"}, "2006-05-01");
    usual.visit("2021-05-01").graded("crown", 4);
    EXPECT_LT(*forecast.dates.middle, *of(usual, "crown", "2021-05-01").dates.middle);
}

TEST_F(Forecast, CleaningACoilPutsItsDatesOffAsIfItWereNew)
{
    RecordBuilder dirty = aUnit("HB-01");
    dirty.withPart("fins", {"face"}, "2010-05-01");
    dirty.visit("2020-05-01").graded("face", 4);
    RecordBuilder cleaned = dirty;
    cleaned.treated("face", TreatmentKind::clean);
    const ZoneForecast before = of(dirty, "face", "2020-05-01", {day("2021-05-01")});
    const ZoneForecast after = of(cleaned, "face", "2020-05-01", {day("2021-05-01")});
    EXPECT_LT(after.spent[0].chance, before.spent[0].chance / 4);
    EXPECT_GT(*after.dates.middle, *before.dates.middle);
}

TEST_F(Forecast, AReplacedPartHasTheOutlookOfANewOne)
{
    RecordBuilder replaced = aUnit("HB-01");
    replaced.withPart("suction-accumulator", {"crown"}, "2010-05-01");
    replaced.visit("2020-05-01").graded("crown", 4);
    replaced.replacedPart("suction-accumulator", "2020-05-01");
    RecordBuilder fresh = aUnit("HB-02");
    fresh.withPart("suction-accumulator", {"crown"}, "2020-05-01");
    const std::vector<Date> by{day("2025-05-01")};
    EXPECT_NEAR(of(replaced, "crown", "2020-05-01", by).spent[0].chance,
                of(fresh, "crown", "2020-05-01", by).spent[0].chance, 1e-12);
}

TEST_F(Forecast, SaysWhatItRestsOn)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown", "shell", "bottom"}, "2018-05-01");
    builder.visit("2019-05-01").graded("crown", 2).graded("shell", 1);
    builder.visit("2020-05-01").graded("crown", 3).graded("shell", 1);
    builder.visit("2021-05-01").graded("crown", 4).notSeen("shell", NotSeenReason::covered);
    EXPECT_THAT(say(of(builder, "crown", "2021-06-01").because),
                HasSubstr("4 poor when last seen on 2021-05-01; it gets worse faster than usual, at about"));
    const ZoneForecast shell = of(builder, "shell", "2021-06-01");
    EXPECT_THAT(say(shell.because),
                HasSubstr("1 sound when last seen on 2020-05-01; it gets worse at about the usual pace"));
    ASSERT_FALSE(shell.notes.empty());
    EXPECT_THAT(say(shell.notes.front()), HasSubstr("Looked for in vain since then, last on 2021-05-01"));
    EXPECT_EQ(say(of(builder, "bottom", "2021-06-01").because),
              "Never seen: the usual life of its kind since it was fitted on 2018-05-01.");
}

TEST_F(Forecast, BeyondTheFurthestDateItSaysLater)
{
    const Catalogue slow = test::smallCatalogue(
        R"({"outlook": {"part_kinds": {"fan-blade": {"median_life_years": 200}}, "furthest_years": 10}})");
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("fan-blade", {"root"}, "2020-05-01");
    const auto zone = zoneBelief(builder.build(), slow, OutlookModel(slow), builder.zone("root"), day("2020-05-01"));
    const ZoneForecast forecast = forecastZone(*zone, slow.outlook(), {});
    EXPECT_FALSE(forecast.dates.early);
    EXPECT_FALSE(forecast.dates.late);
    EXPECT_EQ(say(forecast.when), "Spent later than 2030-05-01, with a chance of more than 90 %.");
}

TEST_F(Forecast, WhatIsSpentIsSpentToday)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown"}, "2018-05-01");
    builder.visit("2019-05-01").graded("crown", 5);
    const ZoneForecast forecast = of(builder, "crown", "2021-06-01");
    EXPECT_EQ(forecast.dates.early, day("2021-06-01"));
    EXPECT_EQ(say(forecast.when), "Spent by today, with a chance of at least 90 %.");
}

TEST_F(Forecast, HoldsForAnyRecord)
{
    std::mt19937 random(12);
    for (int round = 0; round < 120; ++round) {
        RecordBuilder builder = aUnit("HB-01");
        const bool dirt = random() % 3 == 0;
        const std::string zone = dirt ? "face" : "crown";
        builder.withPart(dirt ? "fins" : "suction-accumulator", {zone}, random() % 2 == 0 ? "2012-05-01" : "");
        int year = 2013;
        const auto visits = random() % 9;
        for (unsigned visit = 0; visit < visits; ++visit) {
            builder.visit(std::to_string(year) + (random() % 2 == 0 ? "-05-04" : "-10-20"));
            year += static_cast<int>(random() % 3);
            enterAnything(builder, random, zone);
        }
        const Date today = day("2024-01-15");
        const auto belief = zoneBelief(builder.build(), m_catalogue, m_model, builder.zone(zone), today);
        ASSERT_TRUE(belief);
        const std::vector<Date> by{today, addMonths(today, 6), addMonths(today, 60), addMonths(today, 600)};
        expectForecastHolds(forecastZone(*belief, m_catalogue.outlook(), by), *belief);
    }
}

} // namespace padside

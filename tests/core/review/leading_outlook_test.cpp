// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/leading_outlook.h"
#include "core/review/unit_forecast.h"
#include "core/review/zone_chances.h"
#include "resources/resources.h"
#include "tests/core/review/gauged_unit.h"

#include <cmath>
#include <gmock/gmock.h>

namespace padside::test {

using ::testing::HasSubstr;

namespace {

class LeadingOutlookOf : public ::testing::Test
{
protected:
    LeadingOutlookOf()
        : m_catalogue(*Catalogue::load(shippedCatalogue()))
        , m_model(m_catalogue)
    {
    }

    [[nodiscard]] LeadingOutlook bottom(const UnitRecord& record, const std::string& today = "2023-10-10") const
    {
        m_forecast = unitForecast(record, m_catalogue, m_model, day(today));
        return *m_forecast.leadingOf(record.parts.front().zones[1].id);
    }

    [[nodiscard]] MeasuredOutlook measured(const UnitRecord& record) const
    {
        const auto measures = zoneMeasures(record, m_catalogue);
        const auto outlook = measuredOutlook(measures.at(0), m_catalogue, day("2023-10-10"), day("2083-10-10"));
        EXPECT_TRUE(outlook);
        return *outlook;
    }

    Catalogue m_catalogue;
    OutlookModel m_model;
    mutable UnitForecast m_forecast;
};

} // namespace

TEST_F(LeadingOutlookOf, WithoutMeasurementsTheGradesLead)
{
    const UnitRecord graded = measuredUnit("wall-thickness", {}, QuantityKind::length, "mm");
    const LeadingOutlook leading = bottom(graded);
    const ZoneForecast& forecast = *m_forecast.of(leading.zoneId);
    EXPECT_EQ(leading.by, OutlookBy::grades);
    EXPECT_EQ(leading.dates, forecast.dates);
    EXPECT_EQ(leading.when, forecast.when);
    EXPECT_EQ(leading.because.front(), forecast.because);
}

TEST_F(LeadingOutlookOf, AWallThatGoesFastLeadsAndIsNamed)
{
    // 0.2 mm a year and 0.2 mm to go: one year, where a grade 2 by itself has many.
    const LeadingOutlook leading = bottom(gaugedUnit({3.0, 2.8, 2.6, 2.4}));
    EXPECT_EQ(leading.by, OutlookBy::wall);
    ASSERT_TRUE(leading.dates.middle);
    EXPECT_NEAR(static_cast<double>((*leading.dates.middle - day("2024-10-10")).count()), 0, 2);
    EXPECT_THAT(say(leading.when), HasSubstr("Spent between"));
    EXPECT_THAT(say(leading.because[0]),
                HasSubstr("The wall measured leads: 2.40 mm on 2023-10-10, 2.20 mm must be left"));
    EXPECT_THAT(say(leading.because[1]), HasSubstr("By the grades seen alone it would be spent"));
    const ZoneForecast& forecast = *m_forecast.of(leading.zoneId);
    EXPECT_LT(*leading.dates.middle, forecast.dates.middle.value_or(Date::max()));
}

TEST_F(LeadingOutlookOf, AWallThatLastsStandsBesideTheGrades)
{
    const LeadingOutlook leading = bottom(gaugedUnit({9.0, 8.9, 8.8, 8.7}, 4));
    EXPECT_EQ(leading.by, OutlookBy::grades);
    std::string all;
    for (const Sentence& sentence : leading.because)
        all += say(sentence) + " ";
    EXPECT_THAT(all, HasSubstr("By the wall measured alone"));
}

TEST_F(LeadingOutlookOf, NoHorizonIsMoreHopefulThanAnyOfThemAlone)
{
    for (const double loss : {0.02, 0.05, 0.1, 0.2}) {
        const UnitRecord gauged = gaugedUnit({(2.6 + 3 * loss), (2.6 + 2 * loss), (2.6 + loss), 2.6}, 3);
        const LeadingOutlook leading = bottom(gauged);
        const MeasuredOutlook wall = measured(gauged);
        const ZoneForecast& forecast = *m_forecast.of(leading.zoneId);
        for (std::size_t at = 0; at < leading.spent.size(); ++at) {
            EXPECT_GE(leading.spent[at].chance, forecast.spent[at].chance);
            EXPECT_GE(leading.spent[at].chance, wall.chanceBy(leading.spent[at].by));
        }
    }
}

TEST_F(LeadingOutlookOf, AWallAtItsMinimumIsSpentToday)
{
    const LeadingOutlook leading = bottom(gaugedUnit({2.1}));
    EXPECT_EQ(leading.by, OutlookBy::wall);
    EXPECT_EQ(leading.dates.late, day("2023-10-10"));
    EXPECT_EQ(leading.chanceToday, 1);
    EXPECT_EQ(leading.spent.front().chance, 1);
}

TEST_F(LeadingOutlookOf, AWallThatReadsThickerSaysNothing)
{
    EXPECT_EQ(bottom(gaugedUnit({2.4, 2.6})).by, OutlookBy::grades);
}

TEST_F(LeadingOutlookOf, AWallsDatesAreThoseOfItsChances)
{
    // API 510: remaining life is what is above the required wall over the rate: (2.7 - 2.2) / 0.1 = 5 years.
    const MeasuredOutlook wall = measured(gaugedUnit({3.0, 2.9, 2.8, 2.7}));
    ASSERT_TRUE(wall.dates.early && wall.dates.middle && wall.dates.late);
    EXPECT_NEAR(static_cast<double>((*wall.dates.middle - day("2028-10-10")).count()), 0, 4);
    EXPECT_NEAR(wall.chanceBy(*wall.dates.early), 0.1, 0.003);
    EXPECT_NEAR(wall.chanceBy(*wall.dates.middle), 0.5, 0.003);
    EXPECT_NEAR(wall.chanceBy(*wall.dates.late), 0.9, 0.003);
    EXPECT_EQ(wall.chanceBy(day("2020-01-01")), 0);
}

TEST_F(LeadingOutlookOf, ARustedShareThatGrowsLeadsWhereItCrossesFirst)
{
    const UnitRecord rusted = measuredUnit("rust-share", {0.02, 0.12, 0.21, 0.33}, QuantityKind::ratio, "pct");
    const LeadingOutlook leading = bottom(rusted);
    EXPECT_EQ(leading.by, OutlookBy::rust);
    EXPECT_THAT(say(leading.because[0]), HasSubstr("The rusted share measured leads: 33.0 % on 2023-10-10"));
    ASSERT_TRUE(leading.dates.middle);
    EXPECT_LT(*leading.dates.middle, day("2024-10-10")); // 7 % to go at about 10 % a year
    EXPECT_GT(*leading.dates.middle, day("2024-01-10"));
}

TEST_F(LeadingOutlookOf, ThreeRustedSharesAreNoTrendAndLeadNothing)
{
    EXPECT_EQ(bottom(measuredUnit("rust-share", {0.02, 0.12, 0.21}, QuantityKind::ratio, "pct")).by, OutlookBy::grades);
}

TEST_F(LeadingOutlookOf, TheFleetsChancesAreTheSameWithoutDatesAndWords)
{
    const UnitRecord gauged = gaugedUnit({3.0, 2.8, 2.6, 2.4}, 3);
    const LeadingOutlook leading = bottom(gauged);
    const auto chances = zoneChances(gauged, m_catalogue, m_model, day("2023-10-10"));
    ASSERT_EQ(chances.size(), m_forecast.leading.size());
    for (const ZoneChances& zone : chances) {
        const LeadingOutlook& same = *m_forecast.leadingOf(zone.zoneId);
        for (std::size_t when = 0; when < horizonCount; ++when)
            EXPECT_EQ(zone.spent[when], same.spent[when].chance);
        if (zone.zoneId == leading.zoneId) {
            EXPECT_EQ(zone.by[static_cast<std::size_t>(Horizon::twoYears)], OutlookBy::wall);
        }
    }
}

} // namespace padside::test

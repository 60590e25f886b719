// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/reviewed_fleet.h"
#include "core/review/unit_forecast.h"
#include "resources/resources.h"
#include "tests/core/review/gauged_unit.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside::test {

using ::testing::HasSubstr;

namespace {

constexpr auto oneYear = static_cast<std::size_t>(Horizon::oneYear);

/// Of units without anything measured.
class UnitOutlookOf : public ::testing::Test
{
protected:
    [[nodiscard]] UnitForecast of(const UnitRecord& record, const std::string& today = "2020-05-01") const
    {
        return unitForecast(record, m_catalogue, m_model, day(today));
    }

    Catalogue m_catalogue = smallCatalogue();
    OutlookModel m_model{m_catalogue};
};

/// Of units with walls measured; 2.2 mm must be left.
class MeasuredUnitOutlook : public ::testing::Test
{
protected:
    [[nodiscard]] UnitForecast of(const UnitRecord& record) const
    {
        return unitForecast(record, m_catalogue, m_model, day(m_today));
    }

    /// By the grades alone, as if nothing had been measured.
    [[nodiscard]] UnitOutlook byGrades(UnitRecord record) const
    {
        record.readings.clear();
        return of(record).unit;
    }

    const std::string m_today = "2023-10-10";
    Catalogue m_catalogue = *Catalogue::load(shippedCatalogue());
    OutlookModel m_model{m_catalogue};
};

} // namespace

TEST_F(UnitOutlookOf, AUnitStopsWithTheFirstOfItsStoppingParts)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown", "shell", "bottom"}, "2005-05-01");
    builder.withPart("run-capacitor", {"case"}, "2019-05-01", "fan");
    builder.withPart("base-pan", {"corners"}, "1990-05-01"); // a nuisance when spent, but no stop
    const UnitRecord record = builder.build();
    const UnitForecast forecast = of(record);
    const UnitOutlook& outlook = forecast.unit;
    ASSERT_EQ(forecast.zones.size(), 5U);
    ASSERT_EQ(outlook.parts.size(), 2U);
    for (std::size_t when = 0; when < horizonCount; ++when) {
        double none = 1;
        for (const ZoneForecast& zone : forecast.zones) {
            if (zone.partId != record.parts[2].id)
                none *= 1 - zone.spent[when].chance;
        }
        EXPECT_NEAR(outlook.stops[when].chance, 1 - none, 1e-12);
        EXPECT_NEAR(1 - outlook.stops[when].chance,
                    (1 - outlook.parts[0].chance.at(when)) * (1 - outlook.parts[1].chance.at(when)), 1e-12);
    }
    EXPECT_EQ(outlook.likeliestToStop, record.parts[0].id);
    EXPECT_EQ(outlook.likeliestToEnd, record.parts[0].id);
    EXPECT_THAT(say(outlook.because), HasSubstr("Suction accumulator is the likeliest to stop it by 2025-05-01"));
    EXPECT_THAT(say(outlook.because), HasSubstr("independently of each other"));
}

TEST_F(UnitOutlookOf, AUnitWithoutStoppingPartsHasNoOutlook)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("base-pan", {"corners"}, "1990-05-01");
    const UnitOutlook outlook = of(builder.build()).unit;
    EXPECT_FALSE(outlook.likeliestToStop);
    EXPECT_EQ(outlook.stops.front().chance, 0);
    EXPECT_EQ(say(outlook.because), "No part of this unit is known to stop it.");
}

TEST_F(MeasuredUnitOutlook, AWallNearItsLimitMakesAStopLikelierThanTheGradesSay)
{
    const UnitRecord record = gaugedUnit({3.0, 2.8, 2.6, 2.4});
    const UnitOutlook outlook = of(record).unit;
    EXPECT_LT(byGrades(record).stops[oneYear].chance, 0.1);
    EXPECT_GT(outlook.stops[oneYear].chance, 0.4) << "0.2 mm a year, 0.2 mm to go";
}

TEST_F(MeasuredUnitOutlook, AWallThatLastsChangesNothing)
{
    const UnitRecord record = gaugedUnit({9.0, 8.9, 8.8, 8.7});
    EXPECT_EQ(of(record).unit.stops, byGrades(record).stops);
}

TEST_F(MeasuredUnitOutlook, IsThatOfTheFleet)
{
    for (const std::vector<double>& walls : {std::vector{3.0, 2.8, 2.6, 2.4}, std::vector{2.1}, std::vector{9.0}}) {
        const UnitRecord record = gaugedUnitWithCapacitor(walls);
        const UnitOutlook outlook = of(record).unit;
        const ReviewedUnit reviewed = reviewedUnit(record, m_catalogue, m_model, day(m_today));
        for (std::size_t when = 0; when < horizonCount; ++when)
            EXPECT_EQ(reviewed.stops.at(when), outlook.stops[when].chance);
    }
}

TEST_F(MeasuredUnitOutlook, WhatIsMeasuredMayNameAnotherPartThanTheGrades)
{
    const UnitRecord record = gaugedUnitWithCapacitor({3.0, 2.8, 2.6, 2.4});
    const PartId accumulator = record.parts[0].id;
    const UnitOutlook outlook = of(record).unit;
    EXPECT_EQ(byGrades(record).likeliestToStop, record.parts[1].id);
    EXPECT_EQ(outlook.likeliestToStop, accumulator);
    EXPECT_EQ(outlook.likeliestToEnd, accumulator);
    EXPECT_THAT(say(outlook.because), HasSubstr("Suction accumulator"));
}

} // namespace padside::test

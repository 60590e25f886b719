// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_forecast.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace padside::test {

namespace {

/// An accumulator whose bottom gets worse while its crown stays sound.
RecordBuilder twoZones()
{
    RecordBuilder unit = aUnit("HB-01");
    unit.withPart("suction-accumulator", {"crown", "bottom"}, "2018-05-01");
    unit.visit("2020-05-04").graded("crown", 1).graded("bottom", 2);
    unit.visit("2022-05-04").graded("crown", 1).graded("bottom", 3);
    unit.visit("2024-05-04").graded("crown", 1).graded("bottom", 4);
    return unit;
}

UnitForecast forecast(const UnitRecord& record, const std::string& today = "2024-06-01")
{
    const Catalogue catalogue = smallCatalogue();
    return unitForecast(record, catalogue, OutlookModel(catalogue), day(today));
}

double within(const ZoneForecast& zone, Horizon horizon)
{
    return zone.spent.at(static_cast<std::size_t>(horizon)).chance;
}

} // namespace

TEST(UnitForecast, TheLikeliestToBeSpentWithinAYearComesFirst)
{
    const RecordBuilder unit = twoZones();
    const UnitForecast comes = forecast(unit.build());
    ASSERT_EQ(comes.zones.size(), 2U);
    EXPECT_EQ(comes.zones[0].zoneId, unit.zone("bottom"));
    EXPECT_GT(within(comes.zones[0], Horizon::oneYear), 5 * within(comes.zones[1], Horizon::oneYear));
}

TEST(UnitForecast, ChancesNeverFallWithTime)
{
    const UnitForecast comes = forecast(twoZones().build());
    for (const ZoneForecast& zone : comes.zones) {
        EXPECT_TRUE(std::ranges::is_sorted(zone.spent, {}, &ChanceBy::chance));
        EXPECT_GE(zone.spent.front().chance, zone.chanceToday);
    }
    EXPECT_TRUE(std::ranges::is_sorted(comes.unit.stops, {}, &ChanceBy::chance));
}

TEST(UnitForecast, TheUnitIsAtLeastAsLikelyToStopAsItsLikeliestPart)
{
    const UnitForecast comes = forecast(twoZones().build());
    EXPECT_GE(comes.unit.stops[1].chance, within(comes.zones[0], Horizon::oneYear));
}

TEST(UnitForecast, WhatIsEnteredLaterCountsForNothing)
{
    RecordBuilder later = twoZones();
    later.visit("2026-05-04").graded("bottom", 5);
    EXPECT_DOUBLE_EQ(within(forecast(later.build()).zones[0], Horizon::oneYear),
                     within(forecast(twoZones().build()).zones[0], Horizon::oneYear));
}

TEST(UnitForecast, ARetiredUnitHasNone)
{
    UnitRecord retired = twoZones().build();
    retired.unit.retiredOn = day("2024-05-20");
    EXPECT_TRUE(forecast(retired).zones.empty());
    EXPECT_FALSE(forecast(retired, "2024-05-10").zones.empty());
}

TEST(UnitForecast, NotSeenForLongerIsLessCertainNeverBetter)
{
    RecordBuilder missed = twoZones();
    missed.visit("2025-05-04").notSeen("bottom", NotSeenReason::covered);
    const UnitForecast soon = forecast(twoZones().build(), "2024-06-01");
    const UnitForecast late = forecast(missed.build(), "2025-06-01");
    const ZoneId bottom = missed.zone("bottom");
    EXPECT_GE(within(*late.of(bottom), Horizon::oneYear), within(*soon.of(bottom), Horizon::oneYear) - 1e-9);
}

} // namespace padside::test

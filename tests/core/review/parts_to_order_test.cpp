// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/parts_to_order.h"
#include "core/review/trip_needs.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;
using testing::HasSubstr;
using testing::IsEmpty;

const std::string orderingDay = "2026-05-05";

std::string leadTime(int days, bool made = true)
{
    return R"({"supply": {"suction-accumulator": {"lead_days": )" + std::to_string(days) + R"(, "made": )"
        + (made ? "true" : "false") + R"(, "source": "s"}}})";
}

std::shared_ptr<const ReviewedUnit> unitOf(const RecordBuilder& builder, const Catalogue& catalogue)
{
    return std::make_shared<const ReviewedUnit>(
        reviewedUnit(builder.build(), catalogue, OutlookModel(catalogue), day(orderingDay)));
}

std::vector<PartToOrder> ordersOf(const RecordBuilder& builder, const std::string& own = {})
{
    const Catalogue catalogue = test::smallCatalogue(own);
    const std::vector units{unitOf(builder, catalogue)};
    return partsToOrder(units, catalogue);
}

RecordBuilder bottomToOrder(int grade, const std::string& on = "2026-05-04")
{
    return aUnit("HB-01").withPart("suction-accumulator", {"bottom"}).visit(on).graded("bottom", grade);
}

} // namespace

TEST(PartsToOrder, ASpareIsOrderedItsLeadTimeBeforeTheToleranceIsPassed)
{
    const auto orders = ordersOf(bottomToOrder(3), leadTime(10));
    ASSERT_EQ(orders.size(), 1U);
    EXPECT_EQ(orders[0].orderBy, orders[0].needed - std::chrono::days(10));
    EXPECT_GT(orders[0].orderBy, day(orderingDay));
    EXPECT_THAT(say(orders[0].why),
                HasSubstr("the chance that it is spent passes 2 % (loss of refrigerant charge) on about "
                          + isoText(orders[0].needed) + ". Days a spare takes: about 10."));
}

TEST(PartsToOrder, OneThatCantBeThereInTimeIsOrderedToday)
{
    const auto orders = ordersOf(bottomToOrder(4), leadTime(400));
    ASSERT_EQ(orders.size(), 1U);
    EXPECT_EQ(orders[0].orderBy, day(orderingDay));
    const auto spent = ordersOf(bottomToOrder(5), leadTime(10));
    ASSERT_EQ(spent.size(), 1U);
    EXPECT_THAT(say(spent[0].why), HasSubstr("today, more than the 2 % tolerated (loss of refrigerant charge)"));
}

TEST(PartsToOrder, OneNoLongerMadeSaysSo)
{
    const auto orders = ordersOf(bottomToOrder(4), leadTime(10, false));
    ASSERT_EQ(orders.size(), 1U);
    EXPECT_FALSE(orders[0].made);
    EXPECT_THAT(say(orders[0].why), HasSubstr("No longer made"));
}

TEST(PartsToOrder, SoundPartsDirtAndWhatHasNoSpareNeedNone)
{
    EXPECT_THAT(ordersOf(bottomToOrder(1)), IsEmpty());
    EXPECT_THAT(ordersOf(aUnit("HB-01").withPart("fins", {"face"}).visit("2026-05-04").graded("face", 5)), IsEmpty());
    EXPECT_THAT(ordersOf(aUnit("HB-01").withPart("base-pan", {"corners"}).visit("2026-05-04").graded("corners", 5)),
                IsEmpty());
}

TEST(PartsToOrder, WhatNobodyEverSawIsLookedAtFirst)
{
    EXPECT_THAT(ordersOf(aUnit("HB-01").withPart("run-capacitor", {"case"})), IsEmpty());
    EXPECT_THAT(ordersOf(aUnit("HB-01").withPart("run-capacitor", {"case"}).visit("2026-05-04").graded("case", 4)),
                testing::SizeIs(1));
}

TEST(PartsToOrder, ComeByTheDayToOrderBy)
{
    const auto orders = ordersOf(aUnit("HB-01")
                                     .withPart("suction-accumulator", {"bottom"})
                                     .withPart("run-capacitor", {"case"})
                                     .visit("2026-05-04")
                                     .graded("bottom", 3)
                                     .graded("case", 4));
    ASSERT_EQ(orders.size(), 2U);
    EXPECT_LE(orders[0].orderBy, orders[1].orderBy);
    EXPECT_THAT(say(orders[0].why), testing::StartsWith("Run capacitor"));
}

TEST(PartsToOrder, ATripBringsTheSparesThatAreAtRiskByItsDay)
{
    const Catalogue catalogue = test::smallCatalogue();
    const auto unit = unitOf(bottomToOrder(3), catalogue);
    const Date needed = *unit->review.risks.at(0).overOn;
    SeasonTrip trip;
    trip.checks = {SeasonCheck{unit, 0, 0}};
    trip.on = needed - std::chrono::days(1);
    EXPECT_THAT(tripNeeds(trip, catalogue).spares, IsEmpty());
    trip.on = needed;
    const auto spares = tripNeeds(trip, catalogue).spares;
    ASSERT_EQ(spares.size(), 1U);
    EXPECT_THAT(say(spares[0].why), HasSubstr("the chance that it is spent passes 2 %"));
    EXPECT_EQ(spares[0].orderBy, needed - std::chrono::days(14)) << "the usual lead time";
}

} // namespace padside

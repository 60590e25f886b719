// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What a person assumes instead of us is what their checks and orders rest on.

#include "core/catalogue/own_changes.h"
#include "core/review/parts_to_order.h"
#include "resources/resources.h"
#include "tests/support/record_builder.h"

#include <gtest/gtest.h>
#include <memory>

namespace padside {

namespace {

using test::aUnit;
using test::day;

const std::string dayAfterVisit = "2026-05-05";

UnitRecord markedAccumulator()
{
    return aUnit("HB-01").withPart("suction-accumulator", {"bottom"}).visit("2026-05-04").graded("bottom", 3).build();
}

ReviewedUnit reviewedWith(const OwnChanges& own)
{
    const Catalogue catalogue = own.catalogue().value();
    return reviewedUnit(markedAccumulator(), catalogue, OutlookModel(catalogue), day(dayAfterVisit));
}

Date firstCheckWith(const OwnChanges& own)
{
    return reviewedWith(own).review.checks.at(0).latest;
}

PartToOrder orderWith(const OwnChanges& own)
{
    const std::vector units{std::make_shared<const ReviewedUnit>(reviewedWith(own))};
    return partsToOrder(units, own.catalogue().value()).at(0);
}

OwnChanges ours()
{
    return OwnChanges::read(shippedCatalogue(), {}).value();
}

const JsonPath chargeTolerance{"assumptions", "spent-tolerance-loss-of-charge", "value"};

} // namespace

TEST(OwnAssumptions, ALowerToleranceAsksToLookSooner)
{
    OwnChanges own = ours();
    const Date before = firstCheckWith(own);
    own.set(chargeTolerance, 0.002);
    EXPECT_LT(firstCheckWith(own), before);
    own.putBack(chargeTolerance);
    EXPECT_EQ(firstCheckWith(own), before);
}

TEST(OwnAssumptions, AWiderSpreadOfThePacePassesTheToleranceSooner)
{
    OwnChanges narrow = ours();
    narrow.set({"outlook", "pace_sigma"}, 0.2);
    OwnChanges wide = ours();
    wide.set({"outlook", "pace_sigma"}, 1.2);
    const auto narrowOver = reviewedWith(narrow).review.risks.at(0).overOn;
    const auto wideOver = reviewedWith(wide).review.risks.at(0).overOn;
    ASSERT_TRUE(narrowOver && wideOver);
    EXPECT_LT(*wideOver, *narrowOver);
}

TEST(OwnAssumptions, ALongerLeadTimeAsksToOrderSoonerByAsManyDays)
{
    OwnChanges own = ours();
    own.set({"supply", "suction-accumulator", "lead_days"}, 4.0);
    const PartToOrder soon = orderWith(own);
    own.set({"supply", "suction-accumulator", "lead_days"}, 9.0);
    const PartToOrder sooner = orderWith(own);
    EXPECT_EQ(sooner.needed, soon.needed);
    EXPECT_EQ(sooner.orderBy, soon.orderBy - std::chrono::days(5));
}

TEST(OwnAssumptions, OneNoLongerMadeIsOrderedAsSuch)
{
    OwnChanges own = ours();
    EXPECT_TRUE(orderWith(own).made);
    own.set({"supply", "suction-accumulator", "made"}, false);
    EXPECT_FALSE(orderWith(own).made);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/reviewed_fleet.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using testing::ElementsAre;

std::shared_ptr<const ReviewedUnit> unitAt(const std::string& site, const std::string& tag, std::uint8_t id)
{
    auto unit = std::make_shared<ReviewedUnit>();
    unit->site.name = site;
    unit->unit.tag = tag;
    unit->unit.id = UnitId(UuidBytes{id});
    return unit;
}

std::vector<std::string> tags(const ReviewedFleet& fleet)
{
    std::vector<std::string> all;
    for (const auto& unit : fleet.units)
        all.push_back(unit->site.name + "/" + unit->unit.tag);
    return all;
}

} // namespace

TEST(ReviewedFleet, UnitsStandBySiteAndTagHoweverTheyCome)
{
    ReviewedFleet fleet;
    put(fleet, {unitAt("Quay", "B", 1), unitAt("Barn", "C", 2)});
    put(fleet, {unitAt("Quay", "A", 3), unitAt("Barn", "D", 4)});
    EXPECT_THAT(tags(fleet), ElementsAre("Barn/C", "Barn/D", "Quay/A", "Quay/B"));
}

TEST(ReviewedFleet, AUnitReviewedAgainTakesItsOldPlace)
{
    ReviewedFleet fleet;
    put(fleet, {unitAt("Quay", "A", 1), unitAt("Quay", "B", 2)});
    const auto again = unitAt("Quay", "A", 1);
    put(fleet, {again});
    EXPECT_THAT(tags(fleet), ElementsAre("Quay/A", "Quay/B"));
    EXPECT_EQ(fleet.units.front(), again);
}

TEST(ReviewedFleet, AUnitThatCannotBeReadAnyMoreIsNotShownAsItWas)
{
    ReviewedFleet fleet;
    put(fleet, {unitAt("Quay", "A", 1)});
    put(fleet, {}, {UnreadUnit{UnitId(UuidBytes{1}), "A", Sentence{"damaged", {}}}});
    EXPECT_TRUE(fleet.units.empty());
    ASSERT_EQ(fleet.unread.size(), 1);
    put(fleet, {unitAt("Quay", "A", 1)});
    EXPECT_TRUE(fleet.unread.empty()) << "and it comes back when it can";
}

TEST(ReviewedFleet, ItIsWholeWhenEveryUnitWasReadOrRefused)
{
    ReviewedFleet fleet;
    fleet.count = 2;
    put(fleet, {unitAt("Quay", "A", 1)});
    EXPECT_FALSE(fleet.isWhole());
    put(fleet, {}, {UnreadUnit{UnitId(UuidBytes{2}), "B", {}}});
    EXPECT_TRUE(fleet.isWhole());
}

TEST(ReviewedFleet, OfAUnitThePartsFittedTodayAreKept)
{
    const UnitRecord record = aUnit("HB-01")
                                  .withPart("suction-accumulator", {"crown"}, "2015-04-01")
                                  .visit("2025-05-06")
                                  .graded("crown", 4)
                                  .replacedPart("suction-accumulator", "2026-05-06")
                                  .build();
    const Catalogue catalogue = test::smallCatalogue();
    const OutlookModel model(catalogue);
    EXPECT_EQ(reviewedUnit(record, catalogue, model, day("2026-04-01")).fitted.at(0).id, record.parts[0].id);
    const ReviewedUnit after = reviewedUnit(record, catalogue, model, day("2026-06-01"));
    ASSERT_EQ(after.fitted.size(), 1);
    EXPECT_EQ(after.fitted[0].id, record.parts[1].id);
    EXPECT_EQ(after.review, review(record, catalogue, day("2026-06-01")));
}

} // namespace padside

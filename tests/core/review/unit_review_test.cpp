// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_review.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace padside {

using test::aUnit;
using test::day;
using test::smallCatalogue;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

std::vector<std::string> rulesOf(const UnitReview& review)
{
    std::vector<std::string> rules;
    for (const Flag& flag : review.flags)
        rules.push_back(flag.rule);
    return rules;
}

UnitReview reviewOf(const UnitRecord& record, Date on)
{
    const Catalogue catalogue = smallCatalogue();
    return review(record, catalogue, OutlookModel(catalogue), on);
}

test::RecordBuilder gettingWorse()
{
    return aUnit("HB-01")
        .withPart("suction-accumulator", {"bottom"})
        .visit("2024-05-06")
        .graded("bottom", 2)
        .visit("2025-05-06")
        .graded("bottom", 3)
        .visit("2026-05-04")
        .graded("bottom", 5);
}

} // namespace

TEST(UnitReview, WhatCameAfterTodayIsNotKnownYet)
{
    const auto record = gettingWorse().build();
    const auto then = reviewOf(record, day("2026-05-03"));
    EXPECT_EQ(then.zones.front().known->grade, Grade::marked);
    EXPECT_THAT(rulesOf(then), ElementsAre("worse-by-a-grade"));
    EXPECT_EQ(reviewOf(record, day("2026-05-04")).zones.front().known->grade, Grade::spent);
}

TEST(UnitReview, BeforeTheFirstVisitNothingIsFlagged)
{
    EXPECT_THAT(reviewOf(gettingWorse().build(), day("2020-01-01")).flags, IsEmpty());
}

TEST(UnitReview, ACorrectionStandsForTheEntryItCorrects)
{
    const auto record = aUnit("HB-01")
                            .withPart("suction-accumulator", {"bottom"})
                            .visit("2025-05-06")
                            .graded("bottom", 2)
                            .visit("2026-05-04")
                            .graded("bottom", 5)
                            .corrected(2, "typed into the wrong zone")
                            .build();
    const auto today = reviewOf(record, day("2026-06-01"));
    EXPECT_EQ(today.zones.front().delta, 0);
    EXPECT_THAT(today.flags, IsEmpty());
}

TEST(UnitReview, APartReplacedLaterIsStillFittedToday)
{
    const auto record = gettingWorse().replacedPart("suction-accumulator", "2026-07-01").build();
    const auto before = reviewOf(record, day("2026-06-30"));
    ASSERT_EQ(before.zones.size(), 1U);
    EXPECT_EQ(before.zones.front().partId, record.parts.front().id);
    EXPECT_EQ(before.flags.front().rule, "spent");
    const auto after = reviewOf(record, day("2026-07-01"));
    ASSERT_EQ(after.zones.size(), 1U);
    EXPECT_EQ(after.zones.front().partId, record.parts.back().id);
    EXPECT_THAT(after.flags, IsEmpty());
}

TEST(UnitReview, APromiseSettledLaterIsStillOpenToday)
{
    auto record = gettingWorse()
                      .followUp("bottom", "2026-05-10", "2026-05-20", "look")
                      .visit("2026-05-12", VisitReason::callOut)
                      .build();
    record.followUps.front().settledAt = record.visits.back().id;
    const auto promised = [&](const std::string& today) {
        return std::ranges::any_of(reviewOf(record, day(today)).checks,
                                   [](const Check& check) { return check.followUpId.has_value(); });
    };
    EXPECT_FALSE(promised("2026-05-03")) << "not made yet";
    EXPECT_TRUE(promised("2026-05-11"));
    EXPECT_FALSE(promised("2026-05-12"));
}

TEST(UnitReview, PartsAndZonesComeInTheOrderOfTheCatalogue)
{
    const auto record = aUnit("HB-01")
                            .withPart("ice-guard", {"mesh"})
                            .withPart("run-capacitor", {"case"}, {}, "compressor")
                            .withPart("run-capacitor", {"case"}, {}, "fan")
                            .withPart("suction-accumulator", {"bottom", "crown"})
                            .build();
    std::vector<std::string> order;
    for (const ZoneHistory& zone : reviewOf(record, day("2026-06-01")).zones) {
        const Part* part = findPart(record, zone.partId);
        order.push_back(part->kind + " " + part->position + " " + findZone(record, zone.zoneId)->kind);
    }
    EXPECT_THAT(order,
                ElementsAre("suction-accumulator  crown", "suction-accumulator  bottom", "run-capacitor fan case",
                            "run-capacitor compressor case", "ice-guard  mesh"));
}

TEST(UnitReview, ARetiredUnitHasItsHistoryButNoFlagsAndNoChecks)
{
    auto record = gettingWorse().build();
    record.unit.retiredOn = day("2026-05-20");
    const auto today = reviewOf(record, day("2026-06-01"));
    EXPECT_EQ(today.zones.size(), 1U);
    EXPECT_THAT(today.flags, IsEmpty());
    EXPECT_THAT(today.checks, IsEmpty());
    EXPECT_FALSE(reviewOf(record, day("2026-05-19")).flags.empty());
}

TEST(UnitReview, AnEmptyRecordIsReviewedToo)
{
    const auto today = reviewOf(UnitRecord{}, day("2026-06-01"));
    EXPECT_THAT(today.zones, IsEmpty());
    EXPECT_THAT(today.flags, IsEmpty());
    EXPECT_THAT(today.checks, IsEmpty());
}

} // namespace padside

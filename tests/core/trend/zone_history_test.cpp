// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/zone_history.h"
#include "tests/support/record_builder.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;

RecordBuilder accumulator()
{
    return aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"});
}

/// The history of one zone of the part fitted last.
ZoneHistory historyOf(const RecordBuilder& builder, const std::string& zone)
{
    for (const ZoneHistory& history : zoneHistories(builder.build())) {
        if (history.zoneId == builder.zone(zone))
            return history;
    }
    throw std::invalid_argument("no history of " + zone);
}

} // namespace

TEST(ZoneHistory, AZoneNeverLookedAtHasAnEmptyHistory)
{
    const auto history = historyOf(accumulator().visit("2025-05-06").graded("crown", 1), "bottom");
    EXPECT_TRUE(history.seen.empty());
    EXPECT_FALSE(history.lastSeen);
    EXPECT_FALSE(history.known);
    EXPECT_FALSE(history.delta);
    EXPECT_FALSE(history.worstEver);
    EXPECT_EQ(history.timesNotSeen, 0);
}

TEST(ZoneHistory, OneSightingHasNoDeltaAndNoRate)
{
    const auto history = historyOf(accumulator().visit("2025-05-06").graded("bottom", 2), "bottom");
    EXPECT_EQ(history.lastSeen->grade, Grade::worn);
    EXPECT_EQ(history.lastSeen->on, day("2025-05-06"));
    EXPECT_FALSE(history.previousSeen);
    EXPECT_FALSE(history.delta);
    EXPECT_FALSE(history.rate);
}

TEST(ZoneHistory, TheDeltaIsSinceTheZoneWasLastSeenNotSinceTheLastVisit)
{
    const auto history = historyOf(accumulator()
                                       .visit("2023-05-06")
                                       .graded("bottom", 2)
                                       .visit("2024-05-06")
                                       .notSeen("bottom", NotSeenReason::covered)
                                       .visit("2025-05-06")
                                       .graded("bottom", 4),
                                   "bottom");
    EXPECT_EQ(history.delta, 2);
    EXPECT_EQ(history.previousSeen->on, day("2023-05-06"));
    EXPECT_NEAR(*history.rate, 1.0, 0.01);
    EXPECT_EQ(history.timesNotSeen, 0) << "it has been seen since";
    EXPECT_FALSE(history.notSeenSince);
}

TEST(ZoneHistory, AZoneNotSeenKeepsItsLastGradeAndIsNeverBetter)
{
    const auto history = historyOf(accumulator()
                                       .visit("2023-05-06")
                                       .graded("bottom", 3)
                                       .visit("2024-05-06")
                                       .notSeen("bottom", NotSeenReason::covered)
                                       .visit("2025-05-06")
                                       .notSeen("bottom", NotSeenReason::noTime),
                                   "bottom");
    EXPECT_EQ(history.known->grade, Grade::marked);
    EXPECT_FALSE(history.delta);
    EXPECT_EQ(history.notSeenSince, day("2024-05-06"));
    EXPECT_EQ(history.notSeenLast, day("2025-05-06"));
    EXPECT_EQ(history.timesNotSeen, 2);
    EXPECT_EQ(history.lastNotSeenReason, NotSeenReason::noTime);
}

TEST(ZoneHistory, WhatIsLeftAfterWorkIsKeptApartFromWhatWasFound)
{
    const auto history = historyOf(accumulator()
                                       .visit("2024-05-06")
                                       .graded("bottom", 3)
                                       .visit("2025-05-06")
                                       .graded("bottom", 4)
                                       .graded("bottom", 2, Phase::asLeft),
                                   "bottom");
    EXPECT_EQ(history.seen.size(), 2U);
    EXPECT_EQ(history.lastSeen->grade, Grade::poor);
    EXPECT_EQ(history.delta, 1) << "found worse, whatever was done then";
    EXPECT_EQ(history.asLeft, Grade::worn);
    EXPECT_EQ(history.known->grade, Grade::worn);
    EXPECT_EQ(history.worstEver, Grade::poor);
}

TEST(ZoneHistory, AGradeAsLeftIsForgottenWhenTheZoneIsSeenAgain)
{
    const auto history = historyOf(accumulator()
                                       .visit("2024-05-06")
                                       .graded("bottom", 4)
                                       .graded("bottom", 2, Phase::asLeft)
                                       .visit("2025-05-06")
                                       .graded("bottom", 3),
                                   "bottom");
    EXPECT_FALSE(history.asLeft);
    EXPECT_EQ(history.known->grade, Grade::marked);
    EXPECT_EQ(history.delta, -1);
}

TEST(ZoneHistory, AZoneCoveredAtFirstAndGradedAfterWorkCountsAsSeen)
{
    const auto history = historyOf(
        accumulator().visit("2024-05-06").notSeen("bottom", NotSeenReason::covered).graded("bottom", 2, Phase::asLeft),
        "bottom");
    EXPECT_EQ(history.timesNotSeen, 0);
    EXPECT_EQ(history.known->grade, Grade::worn);
    EXPECT_TRUE(history.seen.empty()) << "as found it was not seen";
}

TEST(ZoneHistory, TimeAtAGradeCountsFromTheFirstOfTheUnbrokenRun)
{
    const auto history = historyOf(accumulator()
                                       .visit("2021-05-06")
                                       .graded("bottom", 2)
                                       .visit("2022-05-06")
                                       .graded("bottom", 3)
                                       .visit("2023-05-06")
                                       .graded("bottom", 2)
                                       .visit("2024-05-06")
                                       .graded("bottom", 2)
                                       .visit("2025-05-06")
                                       .graded("bottom", 2),
                                   "bottom");
    EXPECT_EQ(history.atGradeSince, day("2023-05-06"));
    EXPECT_EQ(history.worstEver, Grade::marked);
}

TEST(ZoneHistory, RatesAreGradesPerYearOverTheLastTwoIntervals)
{
    const auto history = historyOf(accumulator()
                                       .visit("2023-05-06")
                                       .graded("bottom", 1)
                                       .visit("2025-05-06")
                                       .graded("bottom", 2)
                                       .visit("2025-11-06")
                                       .graded("bottom", 3),
                                   "bottom");
    // 184 days and 731 days, a year being 365.25 days.
    EXPECT_DOUBLE_EQ(*history.rate, 365.25 / 184);
    EXPECT_DOUBLE_EQ(*history.rateBefore, 365.25 / 731);
}

TEST(ZoneHistory, TwoVisitsOnOneDayMakeADeltaButNoRate)
{
    const auto history = historyOf(accumulator()
                                       .visit("2025-05-06")
                                       .graded("bottom", 1)
                                       .visit("2025-05-06", VisitReason::callOut)
                                       .graded("bottom", 2),
                                   "bottom");
    EXPECT_EQ(history.delta, 1);
    EXPECT_FALSE(history.rate);
}

TEST(ZoneHistory, AReplacedPartStartsFreshAndItsPredecessorIsLeftOut)
{
    const auto builder
        = accumulator().visit("2024-05-06").graded("bottom", 5).replacedPart("suction-accumulator", "2024-06-01");
    const auto histories = zoneHistories(builder.build());
    ASSERT_EQ(histories.size(), 2U);
    for (const ZoneHistory& history : histories)
        EXPECT_TRUE(history.seen.empty());
    EXPECT_EQ(histories.back().zoneId, builder.zone("bottom"));
}

TEST(ZoneHistory, EarlierWorkIsTheLastBeforeTheLastSightingWithTheGradeItLeft)
{
    const auto history = historyOf(accumulator()
                                       .visit("2023-05-06")
                                       .graded("bottom", 3)
                                       .treated("bottom", TreatmentKind::brushAndCoat)
                                       .graded("bottom", 2, Phase::asLeft)
                                       .visit("2025-05-06")
                                       .graded("bottom", 3)
                                       .treated("bottom", TreatmentKind::clean),
                                   "bottom");
    EXPECT_EQ(history.earlierWork->on, day("2023-05-06"));
    EXPECT_EQ(history.earlierWork->kind, TreatmentKind::brushAndCoat);
    EXPECT_EQ(history.earlierWork->left->grade, Grade::worn);
    EXPECT_EQ(history.lastTreatedOn, day("2025-05-06"));
}

TEST(ZoneHistory, WorkOnAWholePartIsWorkOnEachOfItsZones)
{
    const auto builder
        = accumulator().visit("2023-05-06").graded("bottom", 3).treated("bottom", TreatmentKind::brushAndCoat);
    auto record = builder.build();
    record.treatments.back().zoneId.reset();
    for (const ZoneHistory& history : zoneHistories(record))
        EXPECT_EQ(history.lastTreatedOn, day("2023-05-06"));
}

TEST(ZoneHistory, WetnessIsThatOfTheLastVisitThatRecordedItAsFound)
{
    const auto history = historyOf(accumulator()
                                       .visit("2024-05-06")
                                       .graded("bottom", 2)
                                       .wet(Wetness::wet)
                                       .visit("2025-05-06")
                                       .graded("bottom", 2)
                                       .graded("bottom", 1, Phase::asLeft)
                                       .wet(Wetness::damp),
                                   "bottom");
    EXPECT_EQ(history.lastWetness, Wetness::wet) << "what washing left is not how it was found";
}

TEST(ZoneHistory, TheOrderOfEntriesDoesNotMatter)
{
    const auto builder = accumulator()
                             .visit("2023-05-06")
                             .graded("bottom", 3)
                             .graded("bottom", 2, Phase::asLeft)
                             .graded("crown", 1)
                             .visit("2024-05-06")
                             .notSeen("bottom", NotSeenReason::covered)
                             .graded("crown", 2)
                             .visit("2024-05-06", VisitReason::callOut)
                             .graded("bottom", 3)
                             .visit("2025-05-06")
                             .graded("bottom", 4)
                             .graded("crown", 2);
    auto record = builder.build();
    const auto expected = zoneHistories(record);
    std::mt19937 random(7);
    for (int turn = 0; turn < 20; ++turn) {
        std::ranges::shuffle(record.findings, random);
        EXPECT_EQ(zoneHistories(record), expected);
    }
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/drawing/timeline.h"

#include <gtest/gtest.h>

namespace padside {

using test::aUnit;
using test::day;
using test::RecordBuilder;
using test::smallCatalogue;

namespace {

RecordBuilder accumulatorSince2012()
{
    return aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"}, "2012-05-01");
}

const TimelineLane& lane(const Timeline& timeline, const std::string& name)
{
    for (const TimelineGroup& group : timeline.groups) {
        for (const TimelineLane& one : group.lanes) {
            if (one.name == name)
                return one;
        }
    }
    throw std::invalid_argument("no such lane: " + name);
}

} // namespace

TEST(Timeline, AGradeHoldsUntilTheNextSightingAndIsUnsureOnceNotSeen)
{
    auto builder = accumulatorSince2012();
    builder.visit("2023-04-10").graded("bottom", 2);
    builder.visit("2023-10-10").notSeen("bottom", NotSeenReason::covered);
    builder.visit("2024-04-10").notSeen("bottom", NotSeenReason::noTime);
    builder.visit("2024-10-10").graded("bottom", 3);
    const Timeline timeline = timelineOf(builder.build(), smallCatalogue(), day("2025-01-01"));
    const std::vector<TimelineBand> expected{{day("2023-04-10"), day("2023-10-10"), Grade::worn, true},
                                             {day("2023-10-10"), day("2024-10-10"), Grade::worn, false},
                                             {day("2024-10-10"), day("2025-01-01"), Grade::marked, true}};
    EXPECT_EQ(lane(timeline, "bottom").bands, expected);
    EXPECT_TRUE(lane(timeline, "crown").bands.empty()) << "nothing is claimed of a zone nobody looked at";
}

TEST(Timeline, TheGradeAsLeftIsWhatHoldsAfterTheWork)
{
    auto builder = accumulatorSince2012();
    builder.visit("2024-04-10").graded("bottom", 4).wet(Wetness::wet).noted("bottom was wet");
    builder.treated("bottom", TreatmentKind::brushAndCoat, "zinc primer").graded("bottom", 2, Phase::asLeft);
    const Timeline timeline = timelineOf(builder.build(), smallCatalogue(), day("2024-12-31"));
    const TimelineLane& bottom = lane(timeline, "bottom");
    ASSERT_EQ(bottom.marks.size(), 1U) << "one mark for one zone at one visit";
    EXPECT_EQ(bottom.marks[0].found, Grade::poor);
    EXPECT_EQ(bottom.marks[0].left, Grade::worn);
    EXPECT_EQ(bottom.marks[0].wetness, Wetness::wet);
    EXPECT_EQ(bottom.marks[0].note, "bottom was wet");
    EXPECT_EQ(bottom.marks[0].treatments.size(), 1U);
    ASSERT_EQ(bottom.bands.size(), 1U);
    EXPECT_EQ(bottom.bands[0].grade, Grade::worn);
}

TEST(Timeline, APartAndItsReplacementShareTheirLanes)
{
    auto builder = accumulatorSince2012();
    builder.visit("2023-04-10").graded("bottom", 5);
    builder.replacedPart("suction-accumulator", "2023-04-10");
    builder.visit("2024-04-10").graded("bottom", 1);
    const Timeline timeline = timelineOf(builder.build(), smallCatalogue(), day("2024-12-31"));
    ASSERT_EQ(timeline.groups.size(), 2U) << "the whole unit, and one place for both parts";
    EXPECT_EQ(timeline.groups[1].lanes.size(), 2U);
    const TimelineLane& bottom = lane(timeline, "bottom");
    EXPECT_EQ(bottom.zones.size(), 2U);
    ASSERT_EQ(bottom.marks.size(), 2U);
    EXPECT_TRUE(bottom.marks[0].fitted) << "the day it was found spent is the day the new one was fitted";
    EXPECT_FALSE(bottom.marks[1].fitted);
    const std::vector<TimelineLife> lives{{day("2023-01-01"), day("2023-04-10")},
                                          {day("2023-04-10"), day("2024-12-31")}};
    EXPECT_EQ(bottom.lives, lives);
    const std::vector<TimelineBand> bands{{day("2024-04-10"), day("2024-12-31"), Grade::sound, true}};
    EXPECT_EQ(bottom.bands, bands) << "the old part's grade ends with it; the new one's begins when it is seen";
}

TEST(Timeline, ACorrectedGradeGivesWayAndSaysWhy)
{
    auto builder = accumulatorSince2012();
    builder.visit("2024-04-10").graded("bottom", 4).corrected(2, "graded the wrong vessel");
    const TimelineLane bottom = lane(timelineOf(builder.build(), smallCatalogue(), day("2024-12-31")), "bottom");
    ASSERT_EQ(bottom.marks.size(), 1U);
    EXPECT_EQ(bottom.marks[0].found, Grade::worn);
    EXPECT_EQ(bottom.marks[0].correction, "graded the wrong vessel");
}

TEST(Timeline, PartsStandInTheCataloguesOrderAndPositionsApart)
{
    auto builder = aUnit("HB-01");
    builder.withPart("run-capacitor", {"case"}, {}, "fan").withPart("unheard-of", {"somewhere"});
    builder.withPart("suction-accumulator", {"shell", "crown"}).withPart("run-capacitor", {"case"}, {}, "compressor");
    const Timeline timeline = timelineOf(builder.build(), smallCatalogue(), day("2024-12-31"));
    ASSERT_EQ(timeline.groups.size(), 5U);
    const Catalogue catalogue = smallCatalogue();
    std::vector<std::string> kinds;
    for (const PartKind& kind : catalogue.partKinds()) {
        if (kind.code == "run-capacitor" || kind.code == "suction-accumulator")
            kinds.push_back(kind.name);
    }
    ASSERT_EQ(kinds.size(), 2U);
    const std::size_t capacitors = kinds[0] == "Run capacitor" ? 1 : 2;
    EXPECT_EQ(timeline.groups[capacitors].position, "fan");
    EXPECT_EQ(timeline.groups[capacitors + 1].position, "compressor");
    EXPECT_EQ(timeline.groups[4].name, "unheard-of") << "an unknown kind is shown by its code, last";
    for (const TimelineGroup& group : timeline.groups) {
        if (group.name == "Suction accumulator") {
            EXPECT_EQ(group.lanes[0].name, "crown") << "zones in the catalogue's order, not as entered";
        }
    }
}

TEST(Timeline, VisitsAndRefrigerantStandInTheFirstGroup)
{
    auto builder = accumulatorSince2012();
    builder.visit("2024-04-10").graded("bottom", 2).notSeen("crown", NotSeenReason::covered);
    builder.visit("2024-07-20", VisitReason::callOut, false);
    UnitRecord record = builder.build();
    ChargeEntry charge;
    charge.id = ChargeId(UuidBytes{1});
    charge.visitId = record.visits.back().id;
    charge.on = record.visits.back().on;
    charge.mass = Measure{0.45, QuantityKind::mass, "kg", "0.45 kg"};
    record.charges.push_back(charge);
    const Timeline timeline = timelineOf(record, smallCatalogue(), day("2024-12-31"));
    ASSERT_EQ(timeline.groups[0].lanes.size(), 2U);
    const auto& visits = timeline.groups[0].lanes[0].marks;
    ASSERT_EQ(visits.size(), 2U);
    EXPECT_EQ(visits[0].zonesSeen, 1U);
    EXPECT_EQ(visits[0].zonesNotSeen, 1U);
    EXPECT_TRUE(visits[1].openVisit);
    EXPECT_EQ(visits[1].reason, VisitReason::callOut);
    EXPECT_EQ(timeline.groups[0].lanes[1].marks.at(0).charges.size(), 1U);
}

TEST(Timeline, WhatIsDatedAfterTodayIsNotShown)
{
    auto builder = accumulatorSince2012();
    builder.visit("2024-04-10").graded("bottom", 2);
    builder.visit("2024-10-10").graded("bottom", 3);
    const Timeline timeline = timelineOf(builder.build(), smallCatalogue(), day("2024-06-01"));
    EXPECT_EQ(lane(timeline, "bottom").marks.size(), 1U);
    EXPECT_EQ(lane(timeline, "visits").marks.size(), 1U);
    ASSERT_EQ(lane(timeline, "bottom").bands.size(), 1U);
    EXPECT_EQ(lane(timeline, "bottom").bands[0].to, day("2024-06-01"));
}

TEST(Timeline, AUnitWithoutVisitsStillHasItsLanes)
{
    const Timeline timeline = timelineOf(accumulatorSince2012().build(), smallCatalogue(), day("2024-06-01"));
    EXPECT_EQ(timeline.groups.size(), 2U);
    EXPECT_LE(timeline.first, day("2023-06-01")) << "at least a year is shown";
}

} // namespace padside

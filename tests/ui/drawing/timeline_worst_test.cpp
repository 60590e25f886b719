// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/drawing/timeline.h"

#include <gtest/gtest.h>

namespace padside {

using test::aUnit;
using test::day;
using test::smallCatalogue;

namespace {

TimelineLane worstOfAccumulator(const UnitRecord& record)
{
    return timelineOf(record, smallCatalogue(), day("2024-12-31")).groups.at(1).worst;
}

} // namespace

TEST(TimelineWorst, TheWorstGradeHoldsAtEachTime)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"});
    builder.visit("2022-04-10").graded("crown", 1).graded("bottom", 2);
    builder.visit("2023-04-10").graded("crown", 3).graded("bottom", 2);
    builder.visit("2024-04-10").graded("crown", 3).graded("bottom", 4);
    const TimelineLane worst = worstOfAccumulator(builder.build());
    EXPECT_EQ(worst.bands,
              (std::vector{TimelineBand{day("2022-04-10"), day("2023-04-10"), Grade::worn, true},
                           TimelineBand{day("2023-04-10"), day("2024-04-10"), Grade::marked, true},
                           TimelineBand{day("2024-04-10"), day("2024-12-31"), Grade::poor, true}}));
    ASSERT_EQ(worst.marks.size(), 3U);
    EXPECT_EQ(worst.marks[1].found, Grade::marked);
    EXPECT_EQ(worst.marks[1].worstZone, "crown");
    EXPECT_EQ(worst.marks[1].before, Grade::worn);
    EXPECT_EQ(worst.marks[2].worstZone, "bottom");
}

TEST(TimelineWorst, AZoneNotSeenMakesItsGradeUnsureButNeverBetter)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"});
    builder.visit("2022-04-10").graded("crown", 1).graded("bottom", 4);
    builder.visit("2023-04-10").graded("crown", 1).notSeen("bottom", NotSeenReason::covered);
    const TimelineLane worst = worstOfAccumulator(builder.build());
    ASSERT_EQ(worst.bands.size(), 2U);
    EXPECT_EQ(worst.bands[1].grade, Grade::poor);
    EXPECT_FALSE(worst.bands[1].sure);
    EXPECT_EQ(worst.marks.at(1).found, Grade::sound) << "what was found that day";
    EXPECT_EQ(worst.marks.at(1).zonesNotSeen, 1U);
}

TEST(TimelineWorst, WorkOnOneZoneLeavesThePartAtItsWorstOther)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"});
    builder.visit("2022-04-10").graded("crown", 3).graded("bottom", 4).treated("bottom", TreatmentKind::brushAndCoat);
    builder.graded("bottom", 2, Phase::asLeft);
    const TimelineLane worst = worstOfAccumulator(builder.build());
    ASSERT_EQ(worst.marks.size(), 1U);
    EXPECT_EQ(worst.marks[0].found, Grade::poor);
    EXPECT_EQ(worst.marks[0].left, Grade::marked) << "the crown was left as it was";
    EXPECT_EQ(worst.marks[0].treatments.size(), 1U);
}

TEST(TimelineWorst, OnlyPartsWithSeveralZonesFold)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"}).withPart("fan-blade", {"root"});
    builder.visit("2022-04-10").graded("crown", 3).graded("root", 1);
    const Timeline timeline = timelineOf(builder.build(), smallCatalogue(), day("2024-12-31"));
    ASSERT_EQ(timeline.groups.size(), 3U);
    EXPECT_FALSE(timeline.groups[0].foldable()) << "the lanes of the whole unit";
    for (std::size_t g = 1; g < 3; ++g)
        EXPECT_EQ(timeline.groups[g].foldable(), timeline.groups[g].lanes.size() == 2);
}

} // namespace padside

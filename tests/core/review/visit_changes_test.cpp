// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/visit_changes.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;
using test::smallCatalogue;
using testing::ElementsAre;
using testing::IsEmpty;

VisitChanges changesAtLast(const RecordBuilder& builder)
{
    const UnitRecord record = builder.build();
    return visitChanges(record, smallCatalogue(), record.visits.back().id);
}

std::vector<std::string> told(const VisitChanges& changes)
{
    std::vector<std::string> lines;
    for (const ZoneChange& change : changes.zones)
        lines.push_back(std::string(codeOf(change.kind)) + " | " + say(change.sentence));
    return lines;
}

RecordBuilder seenBefore(int grade)
{
    return aUnit("HB-01").withPart("suction-accumulator", {"bottom"}).visit("2025-05-06").graded("bottom", grade);
}

} // namespace

TEST(VisitChanges, TellWorseWithBothGrades)
{
    EXPECT_THAT(told(changesAtLast(seenBefore(2).visit("2026-05-04").graded("bottom", 3))),
                ElementsAre("worse | Suction accumulator, bottom: 3 marked, 2 worn on 2025-05-06; one grade worse."));
    EXPECT_THAT(
        told(changesAtLast(seenBefore(2).visit("2026-05-04").graded("bottom", 4).graded("bottom", 2, Phase::asLeft))),
        ElementsAre(
            "worse | Suction accumulator, bottom: 4 poor, 2 worn on 2025-05-06; 2 grades worse; left at 2 worn."));
}

TEST(VisitChanges, BetterAfterWorkIsNotBetterByItself)
{
    EXPECT_THAT(told(changesAtLast(seenBefore(3)
                                       .visit("2026-05-04")
                                       .graded("bottom", 3)
                                       .treated("bottom", TreatmentKind::clean)
                                       .graded("bottom", 1, Phase::asLeft))),
                ElementsAre("better-after-work | Suction accumulator, bottom: 3 marked, 3 marked on 2025-05-06; left "
                            "at 1 sound after work."));
    EXPECT_THAT(
        told(changesAtLast(
            seenBefore(3).treated("bottom", TreatmentKind::brushAndCoat).visit("2026-05-04").graded("bottom", 2))),
        ElementsAre("better-after-work | Suction accumulator, bottom: 2 worn after work, 3 marked on 2025-05-06."));
    EXPECT_THAT(told(changesAtLast(seenBefore(3).visit("2026-05-04").graded("bottom", 2))),
                ElementsAre("better-without-work | Suction accumulator, bottom: 2 worn, 3 marked on 2025-05-06 and no "
                            "work on record in between."));
}

TEST(VisitChanges, WorkAtTheVisitItselfDoesNotExplainABetterGradeAsFound)
{
    EXPECT_EQ(
        changesAtLast(seenBefore(3).visit("2026-05-04").graded("bottom", 2).treated("bottom", TreatmentKind::clean))
            .zones.front()
            .kind,
        ZoneChangeKind::betterWithoutWork);
}

TEST(VisitChanges, NotSeenIsNeverBetterAndNamesTheLastGradeSeen)
{
    EXPECT_THAT(told(changesAtLast(seenBefore(3).visit("2026-05-04").notSeen("bottom", NotSeenReason::covered))),
                ElementsAre("not-seen | Suction accumulator, bottom: not seen (covered by a panel or jacket); 3 marked "
                            "when last seen on 2025-05-06."));
    EXPECT_THAT(told(changesAtLast(aUnit("HB-01")
                                       .withPart("suction-accumulator", {"bottom"})
                                       .visit("2026-05-04")
                                       .notSeen("bottom", NotSeenReason::noTime))),
                ElementsAre("not-seen | Suction accumulator, bottom: not seen (no time); never seen before."));
}

TEST(VisitChanges, SameAndSeenForTheFirstTime)
{
    EXPECT_THAT(told(changesAtLast(seenBefore(3).visit("2026-05-04").graded("bottom", 3))),
                ElementsAre("same | Suction accumulator, bottom: 3 marked, the same as on 2025-05-06."));
    EXPECT_THAT(told(changesAtLast(seenBefore(3))),
                ElementsAre("first-seen | Suction accumulator, bottom: 3 marked, seen for the first time."));
}

TEST(VisitChanges, TheLastSightingCountsAcrossVisitsInVain)
{
    const auto changes = changesAtLast(seenBefore(2)
                                           .visit("2025-10-06")
                                           .notSeen("bottom", NotSeenReason::covered)
                                           .visit("2026-05-04")
                                           .graded("bottom", 3));
    EXPECT_EQ(changes.zones.front().before->on, day("2025-05-06"));
}

TEST(VisitChanges, ComeWorstNewsFirst)
{
    const auto changes = changesAtLast(aUnit("HB-01")
                                           .withPart("suction-accumulator", {"crown", "shell", "bottom"})
                                           .visit("2025-05-06")
                                           .graded("crown", 1)
                                           .graded("shell", 2)
                                           .graded("bottom", 2)
                                           .visit("2026-05-04")
                                           .graded("crown", 1)
                                           .notSeen("shell", NotSeenReason::noTime)
                                           .graded("bottom", 3));
    std::vector<ZoneChangeKind> kinds;
    for (const ZoneChange& change : changes.zones)
        kinds.push_back(change.kind);
    EXPECT_THAT(kinds, ElementsAre(ZoneChangeKind::worse, ZoneChangeKind::same, ZoneChangeKind::notSeen));
    EXPECT_EQ(changes.count(ZoneChangeKind::worse), 1);
    EXPECT_EQ(changes.count(ZoneChangeKind::firstSeen), 0);
}

TEST(VisitChanges, AnEarlierVisitIsToldAsItWasThen)
{
    const UnitRecord record
        = seenBefore(2).visit("2025-10-06").graded("bottom", 3).visit("2026-05-04").graded("bottom", 5).build();
    EXPECT_THAT(told(visitChanges(record, smallCatalogue(), record.visits[1].id)),
                ElementsAre("worse | Suction accumulator, bottom: 3 marked, 2 worn on 2025-05-06; one grade worse."));
}

TEST(VisitChanges, ZonesWithoutAFindingAreListedApart)
{
    const auto unit
        = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"}).visit("2026-05-04").graded("bottom", 2);
    EXPECT_THAT(changesAtLast(unit).notLookedAt, ElementsAre(unit.zone("crown")));
}

TEST(VisitChanges, APartReplacedThatDayIsToldAsFoundAndItsSuccessorAsFitted)
{
    const auto unit
        = seenBefore(4).visit("2026-05-04").graded("bottom", 5).replacedPart("suction-accumulator", "2026-05-04");
    const auto changes = changesAtLast(unit);
    EXPECT_THAT(told(changes),
                ElementsAre("worse | Suction accumulator, bottom: 5 spent, 4 poor on 2025-05-06; one grade worse."));
    EXPECT_THAT(changes.partsFitted, ElementsAre(unit.build().parts.back().id));
    EXPECT_THAT(changes.notLookedAt, IsEmpty());
}

TEST(VisitChanges, ACorrectionStandsForTheEntryItCorrects)
{
    EXPECT_EQ(changesAtLast(seenBefore(2).visit("2026-05-04").graded("bottom", 5).corrected(2, "wrong zone"))
                  .zones.front()
                  .kind,
              ZoneChangeKind::same);
}

TEST(VisitChanges, AReadingStandsBesideTheLastOfItsKind)
{
    const auto changes = changesAtLast(seenBefore(2)
                                           .read("fan-capacitance", 5e-6, QuantityKind::capacitance, "uF")
                                           .read("suction-pressure", 8e5, QuantityKind::gaugePressure, "kPa")
                                           .visit("2025-10-06")
                                           .read("suction-pressure", 7e5, QuantityKind::gaugePressure, "kPa")
                                           .visit("2026-05-04")
                                           .read("fan-capacitance", 4.8e-6, QuantityKind::capacitance, "uF")
                                           .read("suction-pressure", 9e5, QuantityKind::gaugePressure, "kPa")
                                           .read("fan-current", 1.1, QuantityKind::current, "A"));
    ASSERT_EQ(changes.readings.size(), 3U);
    EXPECT_EQ(changes.readings[0].before->on, day("2025-05-06"));
    EXPECT_EQ(changes.readings[1].before->value.si, 7e5);
    EXPECT_FALSE(changes.readings[2].before);
}

TEST(VisitChanges, TellWhatWasDonePromisedAndSettled)
{
    auto record = seenBefore(2)
                      .followUp("bottom", "2026-05-01", "2026-06-01", "see it dry")
                      .visit("2026-05-04")
                      .graded("bottom", 2)
                      .treated("bottom", TreatmentKind::brushAndCoat, "zinc primer")
                      .followUp("bottom", "2026-06-01", "2026-07-01", "coating look-over")
                      .build();
    record.followUps.front().settledAt = record.visits.back().id;
    const auto changes = visitChanges(record, smallCatalogue(), record.visits.back().id);
    ASSERT_EQ(changes.treatments.size(), 1U);
    EXPECT_EQ(changes.treatments.front().product, "zinc primer");
    ASSERT_EQ(changes.promised.size(), 1U);
    EXPECT_EQ(changes.promised.front().why, "coating look-over");
    ASSERT_EQ(changes.settled.size(), 1U);
    EXPECT_EQ(changes.settled.front().why, "see it dry");
}

TEST(VisitChanges, AVisitThatIsNotThereGivesAnEmptyAnswer)
{
    const auto changes = visitChanges(seenBefore(2).build(), smallCatalogue(), VisitId{});
    EXPECT_TRUE(changes.visitId.isNull());
    EXPECT_THAT(changes.zones, IsEmpty());
}

} // namespace padside

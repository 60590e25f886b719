// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/flags/raised.h"

#include <gmock/gmock.h>

namespace padside {

using test::aUnit;
using test::gradesOfEvidence;
using test::raisedBy;
using testing::ElementsAre;

namespace {

test::RecordBuilder found(const std::string& part, const std::string& zone, int grade)
{
    return aUnit("HB-01").withPart(part, {zone}).visit("2026-05-04").graded(zone, grade);
}

} // namespace

TEST(Spent, AsksToActAtGradeFiveOnly)
{
    const auto unit = found("run-capacitor", "case", 5);
    const auto flag = raisedBy("spent", unit);
    ASSERT_TRUE(flag);
    EXPECT_EQ(flag->severity, Severity::act);
    EXPECT_EQ(say(flag->sentence),
              "Run capacitor, case: 5 spent on 2026-05-04. Repair or replace it, or take the unit out of service.");
    EXPECT_THAT(gradesOfEvidence(*flag, unit), ElementsAre(5));
    EXPECT_FALSE(raisedBy("spent", found("run-capacitor", "case", 4)));
}

TEST(Spent, ClearsWhenRepairedAndLeftBetter)
{
    EXPECT_FALSE(raisedBy(
        "spent",
        found("run-capacitor", "case", 5).treated("case", TreatmentKind::repair).graded("case", 2, Phase::asLeft)));
}

TEST(Spent, StaysThoughTheZoneWasNotSeenSince)
{
    EXPECT_TRUE(raisedBy(
        "spent", found("run-capacitor", "case", 5).visit("2026-05-20").notSeen("case", NotSeenReason::notSafe)));
}

TEST(Spent, DirtIsToBeCleaned)
{
    EXPECT_EQ(say(raisedBy("spent", found("fins", "face", 5))->sentence),
              "Fins, face: 5 spent on 2026-05-04. Clean it before the unit runs on.");
}

TEST(EndOfUnitPart, IsPlannedAtPoorAndActedOnAtSpent)
{
    const auto flag = raisedBy("end-of-unit-part-poor", found("suction-accumulator", "bottom", 4));
    ASSERT_TRUE(flag);
    EXPECT_EQ(flag->severity, Severity::plan);
    EXPECT_EQ(say(flag->sentence),
              "Suction accumulator, bottom: 4 poor on 2026-05-04. Once spent, this part normally ends the unit.");
    EXPECT_EQ(raisedBy("end-of-unit-part-poor", found("suction-accumulator", "bottom", 5))->severity, Severity::act);
    EXPECT_FALSE(raisedBy("end-of-unit-part-poor", found("suction-accumulator", "bottom", 3)));
}

TEST(EndOfUnitPart, ALackOfSparesCountsToo)
{
    const auto flag = raisedBy("end-of-unit-part-poor", found("base-pan", "corners", 4));
    ASSERT_TRUE(flag);
    EXPECT_EQ(say(flag->sentence), "Base pan, corners: 4 poor on 2026-05-04. No separate spare is made for this part.");
}

TEST(EndOfUnitPart, IsNotAboutPartsWithSparesNorAboutDirt)
{
    EXPECT_FALSE(raisedBy("end-of-unit-part-poor", found("run-capacitor", "case", 4)));
    EXPECT_FALSE(raisedBy("end-of-unit-part-poor", found("fins", "face", 4)));
}

TEST(SafetyPart, AsksToActFromPoor)
{
    const auto flag = raisedBy("safety-part-poor", found("fan-blade", "root", 4));
    ASSERT_TRUE(flag);
    EXPECT_EQ(flag->severity, Severity::act);
    EXPECT_EQ(say(flag->sentence), "Fan blade, root: 4 poor on 2026-05-04, and its failure can hurt someone.");
    EXPECT_FALSE(raisedBy("safety-part-poor", found("fan-blade", "root", 3)));
    EXPECT_FALSE(raisedBy("safety-part-poor", found("suction-accumulator", "bottom", 5)));
}

TEST(BetterWithoutWork, DoubtsAGradeThatGotBetterByItself)
{
    const auto unit = found("suction-accumulator", "bottom", 3).visit("2026-10-04").graded("bottom", 2);
    const auto flag = raisedBy("better-without-work", unit, "2026-10-05");
    ASSERT_TRUE(flag);
    EXPECT_EQ(flag->severity, Severity::look);
    EXPECT_EQ(say(flag->sentence),
              "Suction accumulator, bottom: 2 worn on 2026-10-04, but 3 marked on 2026-05-04 with no work on record "
              "in between; one of the two is doubtful.");
    EXPECT_THAT(gradesOfEvidence(*flag, unit), ElementsAre(3, 2));
}

TEST(BetterWithoutWork, IsSilentAfterWorkOrAGradeAsLeft)
{
    const auto laterBetter = [](test::RecordBuilder unit) { return unit.visit("2026-10-04").graded("bottom", 2); };
    const auto first = found("suction-accumulator", "bottom", 3);
    EXPECT_FALSE(raisedBy("better-without-work",
                          laterBetter(test::RecordBuilder(first).treated("bottom", TreatmentKind::brushAndCoat)),
                          "2026-10-05"));
    EXPECT_FALSE(raisedBy("better-without-work",
                          laterBetter(test::RecordBuilder(first).graded("bottom", 2, Phase::asLeft)), "2026-10-05"));
}

TEST(BetterWithoutWork, AnAsLeftGradeIsNotBetterByItself)
{
    EXPECT_FALSE(raisedBy("better-without-work",
                          found("suction-accumulator", "bottom", 3)
                              .treated("bottom", TreatmentKind::clean)
                              .graded("bottom", 1, Phase::asLeft)));
}

TEST(BetterWithoutWork, AZoneNotSeenIsNeverBetter)
{
    EXPECT_FALSE(raisedBy(
        "better-without-work",
        found("suction-accumulator", "bottom", 3).visit("2026-10-04").notSeen("bottom", NotSeenReason::covered),
        "2026-10-05"));
}

TEST(BetterWithoutWork, RainMayWashDirtAway)
{
    EXPECT_FALSE(
        raisedBy("better-without-work", found("fins", "face", 3).visit("2026-10-04").graded("face", 2), "2026-10-05"));
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/flags/raised.h"

#include <gmock/gmock.h>

namespace padside {

using test::anAccumulator;
using test::gradesOfEvidence;
using test::raisedBy;
using testing::ElementsAre;

namespace {
const std::string worseFasterRule = "worse-faster";
}

TEST(WorseFaster, ComparesTheLastStepWithTheOneBefore)
{
    const auto unit = anAccumulator()
                          .visit("2023-05-06")
                          .graded("bottom", 1)
                          .visit("2025-05-06")
                          .graded("bottom", 2)
                          .visit("2026-05-06")
                          .graded("bottom", 3);
    const auto flag = raisedBy(worseFasterRule, unit);
    ASSERT_TRUE(flag);
    EXPECT_EQ(say(flag->sentence),
              "Suction accumulator, bottom: from 2 worn to 3 marked in 12 months, before that from 1 sound to "
              "2 worn in 24 months; getting worse faster.");
    EXPECT_EQ(flag->severity, Severity::plan);
    EXPECT_THAT(gradesOfEvidence(*flag, unit), ElementsAre(1, 2, 3));
}

TEST(WorseFaster, VisitsWithoutAChangeInBetweenDontHideThePace)
{
    const auto unit = anAccumulator()
                          .visit("2023-05-06")
                          .graded("bottom", 1)
                          .visit("2024-05-06")
                          .graded("bottom", 2)
                          .visit("2024-10-06")
                          .graded("bottom", 2)
                          .visit("2025-05-06")
                          .graded("bottom", 2)
                          .visit("2025-10-06")
                          .graded("bottom", 3)
                          .visit("2026-03-06")
                          .graded("bottom", 4);
    EXPECT_TRUE(raisedBy(worseFasterRule, unit)) << "17 months, then 5";
}

TEST(WorseFaster, ASteadyPaceIsNotFaster)
{
    EXPECT_FALSE(raisedBy(worseFasterRule,
                          anAccumulator()
                              .visit("2024-05-06")
                              .graded("bottom", 1)
                              .visit("2025-05-06")
                              .graded("bottom", 2)
                              .visit("2026-05-06")
                              .graded("bottom", 3)));
}

TEST(WorseFaster, TwoGradesInTheTimeOfOneAreTwiceAsFast)
{
    EXPECT_TRUE(raisedBy(worseFasterRule,
                         anAccumulator()
                             .visit("2024-05-06")
                             .graded("bottom", 1)
                             .visit("2025-05-06")
                             .graded("bottom", 2)
                             .visit("2026-05-06")
                             .graded("bottom", 4)));
}

TEST(WorseFaster, TheFactorIsAnAssumptionThePersonCanChange)
{
    const auto unit = anAccumulator()
                          .visit("2023-05-06")
                          .graded("bottom", 1)
                          .visit("2025-05-06")
                          .graded("bottom", 2)
                          .visit("2026-05-06")
                          .graded("bottom", 3);
    EXPECT_TRUE(raisedBy(worseFasterRule, unit, "2026-06-01", R"({"assumptions": {"faster-factor": {"value": 1.9}}})"));
    EXPECT_FALSE(
        raisedBy(worseFasterRule, unit, "2026-06-01", R"({"assumptions": {"faster-factor": {"value": 2.1}}})"));
}

TEST(WorseFaster, StepsShorterThanTheMinimumSayNothing)
{
    const auto unit = [](const std::string& last) {
        return anAccumulator()
            .visit("2022-05-06")
            .graded("bottom", 1)
            .visit("2024-01-01")
            .graded("bottom", 2)
            .visit(last, VisitReason::callOut)
            .graded("bottom", 3);
    };
    EXPECT_FALSE(raisedBy(worseFasterRule, unit("2024-02-29"))) << "59 days";
    EXPECT_TRUE(raisedBy(worseFasterRule, unit("2024-03-01"))) << "60 days, over a leap day";
}

TEST(WorseFaster, TheFirstStepAfterASoundStretchHasNothingToCompareWith)
{
    EXPECT_FALSE(raisedBy(worseFasterRule,
                          anAccumulator()
                              .visit("2024-05-06")
                              .graded("bottom", 1)
                              .visit("2025-05-06")
                              .graded("bottom", 1)
                              .visit("2026-05-06")
                              .graded("bottom", 2)));
}

TEST(WorseFaster, ALeapOfTwoGradesAfterAHeldGradeIsFaster)
{
    const auto unit = anAccumulator()
                          .visit("2024-05-06")
                          .graded("bottom", 1)
                          .visit("2025-05-06")
                          .graded("bottom", 1)
                          .visit("2026-05-06")
                          .graded("bottom", 3);
    const auto flag = raisedBy(worseFasterRule, unit);
    ASSERT_TRUE(flag);
    EXPECT_EQ(say(flag->sentence),
              "Suction accumulator, bottom: held at 1 sound from 2024-05-06 to 2025-05-06, then 2 grades worse "
              "by 2026-05-06; getting worse faster.");
}

TEST(WorseFaster, AStepAfterWorkMadeItBetterIsNotComparedWithTheTimeBefore)
{
    EXPECT_FALSE(raisedBy(worseFasterRule,
                          anAccumulator()
                              .visit("2020-05-06")
                              .graded("bottom", 1)
                              .visit("2024-05-06")
                              .graded("bottom", 3)
                              .treated("bottom", TreatmentKind::repair)
                              .visit("2025-05-06")
                              .graded("bottom", 2)
                              .visit("2026-05-06")
                              .graded("bottom", 3)));
}

TEST(WorseFaster, IsOverWhenTheNextSightingIsNoWorse)
{
    EXPECT_FALSE(raisedBy(worseFasterRule,
                          anAccumulator()
                              .visit("2022-05-06")
                              .graded("bottom", 1)
                              .visit("2024-05-06")
                              .graded("bottom", 2)
                              .visit("2025-05-06")
                              .graded("bottom", 3)
                              .visit("2026-05-06")
                              .graded("bottom", 3)));
}

} // namespace padside

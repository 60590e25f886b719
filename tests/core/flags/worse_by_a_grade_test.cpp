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
const std::string worseByAGradeRule = "worse-by-a-grade";
}

TEST(WorseByAGrade, SaysBothGradesTheirDatesAndTheTimeInBetween)
{
    const auto unit = anAccumulator().visit("2025-05-06").graded("bottom", 2).visit("2026-05-04").graded("bottom", 3);
    const auto flag = raisedBy(worseByAGradeRule, unit);
    ASSERT_TRUE(flag);
    EXPECT_EQ(say(flag->sentence),
              "Suction accumulator, bottom: 3 marked on 2026-05-04, 2 worn when last seen on 2025-05-06; one grade "
              "worse in 12 months.");
    EXPECT_EQ(say(flag->clears), "Seen no worse at the next visit, or worked on and left at 2 worn or better.");
    EXPECT_EQ(flag->severity, Severity::look);
    EXPECT_THAT(gradesOfEvidence(*flag, unit), ElementsAre(2, 3));
    EXPECT_EQ(flag->zoneId, unit.zone("bottom"));
}

TEST(WorseByAGrade, CountsFromTheLastSightingAcrossVisitsThatDidNotSeeIt)
{
    const auto unit = anAccumulator()
                          .visit("2024-05-06")
                          .graded("bottom", 1)
                          .visit("2025-05-06")
                          .notSeen("bottom", NotSeenReason::covered)
                          .visit("2026-05-04")
                          .graded("bottom", 3);
    const auto flag = raisedBy(worseByAGradeRule, unit);
    ASSERT_TRUE(flag);
    EXPECT_EQ(say(flag->sentence),
              "Suction accumulator, bottom: 3 marked on 2026-05-04, 1 sound when last seen on 2024-05-06; 2 grades "
              "worse in 24 months.");
    EXPECT_EQ(flag->severity, Severity::plan);
}

TEST(WorseByAGrade, TellsAShortStretchInDays)
{
    const auto flag = raisedBy(
        worseByAGradeRule,
        anAccumulator().visit("2024-02-15").graded("bottom", 1).visit("2024-03-01").graded("bottom", 2), "2024-03-01");
    ASSERT_TRUE(flag);
    // 2024 is a leap year: 15 February to 1 March is 15 days.
    EXPECT_THAT(say(flag->sentence), testing::HasSubstr("one grade worse in 15 days"));
}

TEST(WorseByAGrade, GetsMoreSevereWithTheGradeAndTheStep)
{
    const auto severity = [](int from, int to) {
        return raisedBy(
                   worseByAGradeRule,
                   anAccumulator().visit("2025-05-06").graded("bottom", from).visit("2026-05-04").graded("bottom", to))
            ->severity;
    };
    EXPECT_EQ(severity(1, 2), Severity::look);
    EXPECT_EQ(severity(2, 3), Severity::look);
    EXPECT_EQ(severity(1, 3), Severity::plan);
    EXPECT_EQ(severity(3, 4), Severity::plan);
    EXPECT_EQ(severity(2, 4), Severity::act);
    EXPECT_EQ(severity(4, 5), Severity::act);
}

TEST(WorseByAGrade, IsSilentWhereItTookMoreThanAYearFromSoundToWorn)
{
    const auto step = [](const char* before, int from, int to) {
        return raisedBy(worseByAGradeRule,
                        anAccumulator().visit(before).graded("bottom", from).visit("2026-05-04").graded("bottom", to));
    };
    EXPECT_TRUE(step("2025-05-04", 1, 2)) << "a year to the day";
    EXPECT_FALSE(step("2025-05-03", 1, 2));
    EXPECT_FALSE(step("2021-05-03", 1, 2));
    EXPECT_TRUE(step("2021-05-03", 1, 3)) << "two grades are never usual wear";
    EXPECT_TRUE(step("2021-05-03", 2, 3));
}

TEST(WorseByAGrade, IsSilentAtTheSameGradeABetterOneOrOneSighting)
{
    EXPECT_FALSE(
        raisedBy(worseByAGradeRule,
                 anAccumulator().visit("2025-05-06").graded("bottom", 3).visit("2026-05-04").graded("bottom", 3)));
    EXPECT_FALSE(
        raisedBy(worseByAGradeRule,
                 anAccumulator().visit("2025-05-06").graded("bottom", 3).visit("2026-05-04").graded("bottom", 2)));
    EXPECT_FALSE(raisedBy(worseByAGradeRule, anAccumulator().visit("2026-05-04").graded("bottom", 4)));
}

TEST(WorseByAGrade, StaysWhileTheZoneIsNotSeenAgain)
{
    EXPECT_TRUE(raisedBy(worseByAGradeRule,
                         anAccumulator()
                             .visit("2024-05-06")
                             .graded("bottom", 2)
                             .visit("2025-05-06")
                             .graded("bottom", 3)
                             .visit("2026-05-04")
                             .notSeen("bottom", NotSeenReason::covered)));
}

TEST(WorseByAGrade, ClearsWhenItIsLeftAsGoodAsBefore)
{
    const auto worse = anAccumulator().visit("2025-05-06").graded("bottom", 2).visit("2026-05-04").graded("bottom", 4);
    EXPECT_TRUE(raisedBy(worseByAGradeRule, test::RecordBuilder(worse).graded("bottom", 3, Phase::asLeft)));
    EXPECT_FALSE(raisedBy(worseByAGradeRule, test::RecordBuilder(worse).graded("bottom", 2, Phase::asLeft)));
}

TEST(WorseByAGrade, StartsAfreshWithAReplacedPart)
{
    const auto unit = anAccumulator()
                          .visit("2025-05-06")
                          .graded("bottom", 1)
                          .replacedPart("suction-accumulator", "2025-05-06")
                          .visit("2026-05-04")
                          .graded("bottom", 3);
    EXPECT_FALSE(raisedBy(worseByAGradeRule, unit));
}

} // namespace padside

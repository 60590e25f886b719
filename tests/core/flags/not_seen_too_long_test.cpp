// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/flags/raised.h"

#include <gmock/gmock.h>

namespace padside {

using test::anAccumulator;
using test::aUnit;
using test::gradesOfEvidence;
using test::raisedBy;
using testing::ElementsAre;

namespace {
const std::string notSeenTooLongRule = "not-seen-too-long";
}

TEST(NotSeenTooLong, StartsTheDayAfterTheMonthsAreOver)
{
    const auto unit = anAccumulator().visit("2024-05-06").graded("bottom", 2);
    EXPECT_FALSE(raisedBy(notSeenTooLongRule, unit, "2025-11-06"));
    const auto flag = raisedBy(notSeenTooLongRule, unit, "2025-11-07");
    ASSERT_TRUE(flag);
    EXPECT_EQ(say(flag->sentence), "Suction accumulator, bottom: last seen 18 months ago, 2 worn on 2024-05-06.");
    EXPECT_EQ(say(flag->clears), "Seen and graded at a visit.");
    EXPECT_THAT(gradesOfEvidence(*flag, unit), ElementsAre(2));
}

TEST(NotSeenTooLong, EighteenMonthsAfterTheEndOfAugustIsTheLastOfFebruary)
{
    const auto unit = anAccumulator().visit("2022-08-31").graded("bottom", 2);
    EXPECT_FALSE(raisedBy(notSeenTooLongRule, unit, "2024-02-29")) << "2024 is a leap year";
    EXPECT_TRUE(raisedBy(notSeenTooLongRule, unit, "2024-03-01"));
}

TEST(NotSeenTooLong, EighteenMonthsAfterALeapDay)
{
    const auto unit = anAccumulator().visit("2024-02-29").graded("bottom", 2);
    EXPECT_FALSE(raisedBy(notSeenTooLongRule, unit, "2025-08-29"));
    EXPECT_TRUE(raisedBy(notSeenTooLongRule, unit, "2025-08-30"));
}

TEST(NotSeenTooLong, NamesTheVisitsInVainAndRestsOnThem)
{
    const auto unit = anAccumulator()
                          .visit("2024-05-06")
                          .graded("bottom", 2)
                          .visit("2025-05-06")
                          .notSeen("bottom", NotSeenReason::covered)
                          .visit("2026-05-04")
                          .notSeen("bottom", NotSeenReason::noTime);
    const auto flag = raisedBy(notSeenTooLongRule, unit);
    ASSERT_TRUE(flag);
    EXPECT_EQ(say(flag->sentence),
              "Suction accumulator, bottom: last seen 25 months ago, 2 worn on 2024-05-06; looked for in vain at 2 "
              "visits since (last: no time).");
    EXPECT_THAT(gradesOfEvidence(*flag, unit), ElementsAre(2, 0, 0));
}

TEST(NotSeenTooLong, AVisitInVainDoesNotCountAsSeen)
{
    const auto flag = raisedBy(notSeenTooLongRule,
                               anAccumulator()
                                   .visit("2024-05-06")
                                   .graded("bottom", 1)
                                   .visit("2026-05-04")
                                   .notSeen("bottom", NotSeenReason::covered));
    ASSERT_TRUE(flag);
    EXPECT_THAT(say(flag->sentence),
                testing::HasSubstr("looked for in vain on 2026-05-04 (covered by a panel or jacket)"));
}

TEST(NotSeenTooLong, GradedAfterWorkCountsAsSeen)
{
    EXPECT_FALSE(raisedBy(notSeenTooLongRule,
                          anAccumulator()
                              .visit("2024-05-06")
                              .graded("bottom", 1)
                              .visit("2026-05-04")
                              .notSeen("bottom", NotSeenReason::covered)
                              .graded("bottom", 2, Phase::asLeft)));
}

TEST(NotSeenTooLong, AZoneNeverSeenIsFlaggedOnceAVisitWasClosed)
{
    const auto started = anAccumulator();
    EXPECT_FALSE(raisedBy(notSeenTooLongRule, started)) << "no visit yet";
    EXPECT_FALSE(
        raisedBy(notSeenTooLongRule, test::RecordBuilder(started).visit("2026-05-04", VisitReason::spring, false)))
        << "the first visit is still going on";
    const auto flag = raisedBy(notSeenTooLongRule, test::RecordBuilder(started).visit("2026-05-04"));
    ASSERT_TRUE(flag);
    EXPECT_EQ(say(flag->sentence), "Suction accumulator, bottom: never looked at; nothing is known of it.");
    EXPECT_TRUE(flag->evidence.empty());
}

TEST(NotSeenTooLong, AZoneNeverSeenNamesTheAttempts)
{
    const auto unit = anAccumulator()
                          .visit("2025-05-06")
                          .notSeen("bottom", NotSeenReason::covered)
                          .visit("2026-05-04")
                          .notSeen("bottom", NotSeenReason::running);
    const auto flag = raisedBy(notSeenTooLongRule, unit);
    ASSERT_TRUE(flag);
    EXPECT_EQ(say(flag->sentence),
              "Suction accumulator, bottom: never seen; looked for in vain at 2 visits since 2025-05-06 (last: unit "
              "had to keep running).");
}

TEST(NotSeenTooLong, TheVisitThatFittedAReplacementDoesNotCountAgainstIt)
{
    const auto replaced
        = anAccumulator().visit("2026-05-04").graded("bottom", 5).replacedPart("suction-accumulator", "2026-05-04");
    EXPECT_FALSE(raisedBy(notSeenTooLongRule, replaced));
    EXPECT_TRUE(raisedBy(notSeenTooLongRule, test::RecordBuilder(replaced).visit("2026-10-04"), "2026-10-05"));
}

TEST(NotSeenTooLong, IsToBePlannedWhereTheLossIsGraveOrTheZoneWasMarked)
{
    const auto severity = [](const std::string& part, const std::string& zone, int grade) {
        return raisedBy(notSeenTooLongRule,
                        aUnit("HB-01").withPart(part, {zone}).visit("2024-05-06").graded(zone, grade))
            ->severity;
    };
    EXPECT_EQ(severity("run-capacitor", "case", 2), Severity::look);
    EXPECT_EQ(severity("run-capacitor", "case", 3), Severity::plan);
    EXPECT_EQ(severity("fan-blade", "root", 1), Severity::plan);
    EXPECT_EQ(severity("suction-accumulator", "bottom", 1), Severity::plan);
}

} // namespace padside

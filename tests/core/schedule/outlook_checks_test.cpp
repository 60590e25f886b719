// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/next_checks.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <gmock/gmock.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;
using testing::HasSubstr;

/// The checks of zones with the outlook behind them.
std::vector<Check> outlookChecksOf(const RecordBuilder& builder, const std::string& today,
                                   const std::string& ownChanges = {})
{
    const UnitRecord record = builder.build();
    const Catalogue catalogue = test::smallCatalogue(ownChanges);
    const OutlookModel model(catalogue);
    const auto risks = zoneRisks(zoneBeliefs(record, catalogue, model, day(today)), catalogue);
    return zoneChecks(record, catalogue, day(today), zoneHistories(record), risks);
}

Check onlyOutlookCheck(const RecordBuilder& builder, const std::string& today = "2026-06-01",
                       const std::string& ownChanges = {})
{
    const auto checks = outlookChecksOf(builder, today, ownChanges);
    if (checks.size() != 1)
        throw std::logic_error("one check expected");
    return checks.front();
}

RecordBuilder accumulatorSeen(int grade, const std::string& on = "2026-05-04")
{
    return aUnit("HB-01").withPart("suction-accumulator", {"bottom"}).visit(on).graded("bottom", grade);
}

} // namespace

TEST(OutlookChecks, ASoundZoneWaitsTwelveMonthsAndNoLonger)
{
    const Check check = onlyOutlookCheck(accumulatorSeen(1));
    EXPECT_EQ(check.latest, day("2027-05-04"));
    EXPECT_THAT(say(check.why), HasSubstr("to be seen again by 2027-05-04"));
}

TEST(OutlookChecks, APoorOneComesBeforeItsToleranceIsSpentAndSaysWhen)
{
    const Check check = onlyOutlookCheck(accumulatorSeen(4), "2026-05-05");
    EXPECT_LT(check.latest, day("2026-08-04"));
    EXPECT_GT(check.latest, day("2026-05-05"));
    EXPECT_EQ(say(check.what), "Suction accumulator, bottom: look again");
    EXPECT_EQ(
        say(check.why),
        "4 poor when last seen on 2026-05-04; the chance that it is spent passes 2 % (loss of refrigerant charge) "
        "on about "
            + isoText(check.latest + std::chrono::days(1)) + ".");
}

TEST(OutlookChecks, WhatIsMoreToleratedWaitsLonger)
{
    const auto latest = [](const std::string& toleratedAs) {
        return onlyOutlookCheck(accumulatorSeen(4), "2026-05-05",
                                R"({"part_kinds": {"suction-accumulator": {"zones": {"bottom": {"tolerated_as": ")"
                                    + toleratedAs + R"("}}}}})")
            .latest;
    };
    EXPECT_LT(latest("loss-of-charge"), latest("loss-of-cooling"));
    EXPECT_LT(latest("loss-of-cooling"), latest("nuisance"));
    EXPECT_LE(latest("nuisance"), latest("looks")) << "both may reach the twelve months";
}

TEST(OutlookChecks, ATolerancePassedTodayIsDueNowAndSaysWhy)
{
    const Check check = onlyOutlookCheck(accumulatorSeen(4), "2026-12-01");
    EXPECT_LT(check.latest, day("2026-12-01"));
    EXPECT_THAT(say(check.why), HasSubstr("so it is due now."));
}

TEST(OutlookChecks, AnOldPartNeverSeenIsDueNow)
{
    const auto old = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"}, "1995-05-04");
    const Check check = onlyOutlookCheck(old);
    EXPECT_EQ(check.latest, day("2026-06-01"));
    EXPECT_EQ(say(check.what), "Suction accumulator: see 2 zones");
    EXPECT_THAT(say(check.why), HasSubstr("Never seen yet."));
    EXPECT_THAT(say(check.why), HasSubstr("by the usual life of its kind the chance that it is spent passed 2 %"));
    const auto young = aUnit("HB-01").withPart("suction-accumulator", {"crown"}, "2026-05-04");
    EXPECT_EQ(onlyOutlookCheck(young).latest, day("2026-11-08")) << "the next season will do";
}

TEST(OutlookChecks, ALookInVainNeverMovesItLater)
{
    const Check before = onlyOutlookCheck(accumulatorSeen(4), "2026-05-20");
    for (const NotSeenReason reason : {NotSeenReason::covered, NotSeenReason::running}) {
        const auto inVain = accumulatorSeen(4).visit("2026-05-20", VisitReason::callOut).notSeen("bottom", reason);
        const Check after = onlyOutlookCheck(inVain, "2026-05-20");
        EXPECT_LE(after.latest, before.latest);
        EXPECT_EQ(say(after.what), "Suction accumulator, bottom: look again");
    }
}

TEST(OutlookChecks, SeeingItDryComesFirstWhereThatIsSooner)
{
    const std::string soon = R"({"assumptions": {"see-dry-months": {"value": 1}}})";
    const std::string strict = R"({"assumptions": {"spent-tolerance-loss-of-charge": {"value": 0.01}}})";
    const auto wet = [](int grade) { return accumulatorSeen(grade).wet(Wetness::wet); };
    EXPECT_EQ(say(onlyOutlookCheck(wet(3), "2026-05-05", soon).what), "Suction accumulator, bottom: see it dry");
    const Check poor = onlyOutlookCheck(wet(4), "2026-05-05", strict);
    EXPECT_EQ(say(poor.what), "Suction accumulator, bottom: look again");
    EXPECT_THAT(poor.conditions, testing::ElementsAre(Condition::dry)) << "dry still, since it was wet";
}

TEST(OutlookChecks, ZonesOfOnePartWhoseWindowsMeetShareACheckByTheMostPressing)
{
    const auto checks = outlookChecksOf(aUnit("HB-01")
                                            .withPart("suction-accumulator", {"crown", "shell", "bottom"})
                                            .withPart("run-capacitor", {"case"})
                                            .visit("2026-05-04")
                                            .graded("crown", 4)
                                            .graded("shell", 1)
                                            .graded("bottom", 4)
                                            .wet(Wetness::damp)
                                            .graded("case", 4),
                                        "2026-05-05");
    ASSERT_EQ(checks.size(), 3U);
    const auto accumulator = std::ranges::find_if(checks, [](const Check& one) { return one.zones.size() == 2; });
    ASSERT_NE(accumulator, checks.end());
    EXPECT_EQ(say(accumulator->what), "Suction accumulator: look again at 2 zones");
    EXPECT_THAT(say(accumulator->why), testing::StartsWith("bottom: 4 poor")) << "the damp one ages faster";
    EXPECT_FALSE(accumulator->zoneId);
}

TEST(OutlookChecks, TheNextVisitIsThatOfTheChecklistDueFirst)
{
    const UnitRecord record = accumulatorSeen(1, "2026-04-04").build();
    const Catalogue catalogue = test::smallCatalogue();
    EXPECT_EQ(nextVisitBy(record, catalogue, day("2026-05-05")), day("2026-11-08"));
    const UnitRecord bare = aUnit("HB-01").withPart("run-capacitor", {"case"}).build();
    EXPECT_EQ(nextVisitBy(bare, catalogue, day("2026-06-01")), day("2026-11-08")) << "no tasks: the next season";
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/raise_flags.h"
#include "tests/core/flags/raised.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::anAccumulator;
using test::aUnit;
using test::day;
using test::RecordBuilder;
using testing::HasSubstr;

/// The flag of one rule with the outlook behind it, if it was raised.
std::optional<Flag> raisedByRisk(const std::string& rule, const RecordBuilder& builder, const std::string& today,
                                 const std::string& ownChanges = {})
{
    const UnitRecord record = builder.build();
    const Catalogue catalogue = test::smallCatalogue(ownChanges);
    const OutlookModel model(catalogue);
    const auto risks = zoneRisks(zoneBeliefs(record, catalogue, model, day(today)), catalogue);
    for (const Flag& flag : raiseFlags(record, catalogue, day(today), zoneHistories(record), risks)) {
        if (flag.rule == rule)
            return flag;
    }
    return std::nullopt;
}

RecordBuilder bottomGraded(int grade, const std::string& on = "2026-05-04")
{
    return anAccumulator().visit(on).graded("bottom", grade);
}

const std::string beforeVisit = "spent-before-next-visit";
const std::string order = "order-spare-now";

/// A spare that takes so many days to come.
std::string leadTime(int days, bool made = true)
{
    return R"({"supply": {"suction-accumulator": {"lead_days": )" + std::to_string(days) + R"(, "made": )"
        + (made ? "true" : "false") + R"(, "source": "s"}}})";
}

} // namespace

TEST(SpentBeforeNextVisit, IsRaisedWhereTheChanceByThenIsOverItsTolerance)
{
    const auto flag = raisedByRisk(beforeVisit, bottomGraded(4), "2026-05-05");
    ASSERT_TRUE(flag);
    EXPECT_THAT(say(flag->sentence),
                testing::StartsWith("Suction accumulator, bottom: 4 poor on 2026-05-04; the chance that it is spent "
                                    "before the next visit (2026-11-08) is "));
    EXPECT_THAT(say(flag->sentence), HasSubstr("more than the 2 % tolerated (loss of refrigerant charge)."));
    ASSERT_TRUE(flag->extent);
    EXPECT_GT(*flag->extent, 0.02);
    EXPECT_EQ(flag->evidence.size(), 1U);
    EXPECT_FALSE(say(flag->clears).empty());
}

TEST(SpentBeforeNextVisit, IsSilentOnWhatIsSoundOrToleratedOrKnownToBeSpent)
{
    EXPECT_FALSE(raisedByRisk(beforeVisit, bottomGraded(1), "2026-05-05"));
    EXPECT_FALSE(raisedByRisk(beforeVisit, bottomGraded(5), "2026-05-05")) << "another rule says so";
    EXPECT_FALSE(raisedByRisk(beforeVisit, bottomGraded(4), "2026-05-05",
                              R"({"assumptions": {"spent-tolerance-loss-of-charge": {"value": 0.5},
                              "spent-tolerance-ends-unit": {"value": 0.5}}})"));
}

TEST(SpentBeforeNextVisit, IsAsUrgentAsItIsLikelyAndNeverMoreThanALookWhereLittleIsAtStake)
{
    const auto severity = [](const std::string& own) {
        return raisedByRisk(beforeVisit, bottomGraded(4), "2027-03-05", own)->severity;
    };
    const auto chances = [](const std::string& plan, const std::string& act) {
        return R"({"assumptions": {"spent-plan-chance": {"value": )" + plan + R"(}, "spent-act-chance": {"value": )"
            + act + "}}}";
    };
    EXPECT_EQ(severity(chances("0.9", "0.95")), Severity::look);
    EXPECT_EQ(severity(chances("0.03", "0.95")), Severity::plan);
    EXPECT_EQ(severity(chances("0.03", "0.03")), Severity::act);
    const std::string looks
        = R"({"part_kinds": {"suction-accumulator": {"zones": {"bottom": {"tolerated_as": "looks"}}}},
        "assumptions": {"not-seen-months": {"value": 200}}})";
    const auto flag = raisedByRisk(beforeVisit, bottomGraded(4, "2021-05-04"), "2027-03-05", looks);
    ASSERT_TRUE(flag);
    EXPECT_EQ(flag->severity, Severity::look);
}

TEST(SpentBeforeNextVisit, LeavesALookToTheFlagThatItIsUnseenTooLong)
{
    const auto unseen = bottomGraded(4, "2021-05-04");
    const auto planned = [](const std::string& chance) {
        return R"({"assumptions": {"spent-plan-chance": {"value": )" + chance
            + R"(}, "spent-act-chance": {"value": 1}}})";
    };
    EXPECT_FALSE(raisedByRisk(beforeVisit, unseen, "2027-03-05", planned("0.99")));
    EXPECT_TRUE(raisedByRisk("not-seen-too-long", unseen, "2027-03-05", planned("0.99")));
    EXPECT_TRUE(raisedByRisk(beforeVisit, unseen, "2027-03-05", planned("0.01")))
        << "more than a look stands beside it";
}

TEST(SpentBeforeNextVisit, ClearsWhenItIsSeenBetterOrReplaced)
{
    auto repaired = bottomGraded(4).treated("bottom", TreatmentKind::repair).graded("bottom", 1, Phase::asLeft);
    EXPECT_FALSE(raisedByRisk(beforeVisit, repaired, "2026-05-05"));
    EXPECT_FALSE(
        raisedByRisk(beforeVisit, bottomGraded(4).replacedPart("suction-accumulator", "2026-05-04"), "2026-05-05"));
}

TEST(SpentBeforeNextVisit, AnOldPartNeverSeenIsJudgedByTheUsualLifeOfItsKind)
{
    const auto old = aUnit("HB-01").withPart("suction-accumulator", {"bottom"}, "1990-05-04");
    const auto flag = raisedByRisk(beforeVisit, old, "2026-05-05");
    ASSERT_TRUE(flag);
    EXPECT_THAT(say(flag->sentence), HasSubstr("never seen; by the usual life of its kind"));
}

TEST(OrderSpareNow, IsRaisedWhereTheToleranceIsPassedBeforeASpareWouldBeThere)
{
    EXPECT_FALSE(raisedByRisk(order, bottomGraded(4), "2026-05-05", leadTime(0)));
    const auto flag = raisedByRisk(order, bottomGraded(4), "2026-05-05", leadTime(120));
    ASSERT_TRUE(flag);
    EXPECT_EQ(flag->severity, Severity::look) << "less likely than a tenth";
    EXPECT_EQ(raisedByRisk(order, bottomGraded(4), "2026-05-05",
                           R"({"supply": {"suction-accumulator": {"lead_days": 120, "made": true, "source": "s"}},
                               "assumptions": {"spent-plan-chance": {"value": 0.03}}})")
                  ->severity,
              Severity::plan);
    EXPECT_TRUE(flag->partId);
    EXPECT_FALSE(flag->zoneId) << "it is about the part";
    EXPECT_THAT(say(flag->sentence),
                testing::StartsWith("Suction accumulator, bottom: a spare ordered today is there by about "
                                    "2026-09-02; the chance that it is spent by then is "));
    EXPECT_THAT(say(flag->sentence), testing::EndsWith("Order one now."));
    EXPECT_THAT(say(flag->clears), HasSubstr("acknowledge it once the spare is ordered"));
    EXPECT_GT(flag->extent.value_or(0), 0.02);
}

TEST(OrderSpareNow, WantsActionWhereThePartIsSpentAndSaysSoWhereNoneIsMade)
{
    EXPECT_EQ(raisedByRisk(order, bottomGraded(5), "2026-05-05")->severity, Severity::act);
    const auto gone = raisedByRisk(order, bottomGraded(4), "2026-05-05", leadTime(120, false));
    ASSERT_TRUE(gone);
    EXPECT_THAT(say(gone->sentence), HasSubstr("this part is no longer made."));
}

TEST(OrderSpareNow, IsSilentWhereNoSpareIsEverMadeAndOnDirt)
{
    const auto dirty = aUnit("HB-01").withPart("fins", {"face"}).visit("2026-05-04").graded("face", 5);
    EXPECT_FALSE(raisedByRisk(order, dirty, "2026-05-05"));
    const auto pan = aUnit("HB-01").withPart("base-pan", {"corners"}).visit("2026-05-04").graded("corners", 5);
    EXPECT_FALSE(raisedByRisk(order, pan, "2026-05-05"));
}

TEST(OrderSpareNow, IsRaisedOncePerPartByItsMostPressingZone)
{
    const auto builder = aUnit("HB-01")
                             .withPart("suction-accumulator", {"crown", "bottom"})
                             .visit("2026-05-04")
                             .graded("crown", 3)
                             .graded("bottom", 4);
    const UnitRecord record = builder.build();
    const Catalogue catalogue = test::smallCatalogue(leadTime(300));
    const OutlookModel model(catalogue);
    const auto risks = zoneRisks(zoneBeliefs(record, catalogue, model, day("2026-05-05")), catalogue);
    std::vector<std::string> said;
    for (const Flag& flag : raiseFlags(record, catalogue, day("2026-05-05"), zoneHistories(record), risks)) {
        if (flag.rule == order)
            said.push_back(say(flag.sentence));
    }
    ASSERT_EQ(said.size(), 1U);
    EXPECT_THAT(said[0], testing::StartsWith("Suction accumulator, bottom: "));
}

} // namespace padside

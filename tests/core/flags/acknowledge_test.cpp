// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/acknowledge.h"
#include "tests/core/flags/raised.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::anAccumulator;
using test::day;
using test::RecordBuilder;
using test::smallCatalogue;

Acknowledgement saying(Acknowledgement acknowledgement, const std::string& reason, const std::string& at)
{
    acknowledgement.id = AcknowledgementId(UuidBytes{static_cast<std::uint8_t>(reason.size())});
    acknowledgement.reason = reason;
    acknowledgement.technician = "R. Vane";
    acknowledgement.at = *parseInstant(at);
    return acknowledgement;
}

/// A flag with everything an acknowledgement looks at.
Flag aFlag()
{
    Flag flag;
    flag.rule = "rust-growing";
    flag.severity = Severity::plan;
    flag.partId = PartId(UuidBytes{1});
    flag.zoneId = ZoneId(UuidBytes{2});
    flag.grade = Grade::marked;
    flag.extent = 0.08;
    return flag;
}

bool holds(const Acknowledgement& acknowledgement, const Flag& flag)
{
    return stillHolds(acknowledgement, flag, smallCatalogue());
}

} // namespace

TEST(Acknowledge, HoldsAsLongAsTheFlagIsNoWorse)
{
    const auto acknowledgement = acknowledgementOf(aFlag());
    EXPECT_TRUE(holds(acknowledgement, aFlag()));
    Flag better = aFlag();
    better.severity = Severity::look;
    better.grade = Grade::worn;
    better.extent = 0.01;
    EXPECT_TRUE(holds(acknowledgement, better));
}

TEST(Acknowledge, AHigherSeverityBringsTheFlagBack)
{
    Flag flag = aFlag();
    flag.severity = Severity::act;
    EXPECT_FALSE(holds(acknowledgementOf(aFlag()), flag));
}

TEST(Acknowledge, AWorseGradeBringsTheFlagBack)
{
    Flag flag = aFlag();
    flag.grade = Grade::poor;
    EXPECT_FALSE(holds(acknowledgementOf(aFlag()), flag));
    Flag unseen = aFlag();
    unseen.grade.reset();
    EXPECT_FALSE(holds(acknowledgementOf(unseen), aFlag())) << "a grade where there was none is news";
}

TEST(Acknowledge, AnExtentLargerByMoreThanAQuarterBringsTheFlagBack)
{
    Flag flag = aFlag();
    flag.extent = 0.08 * 1.24;
    EXPECT_TRUE(holds(acknowledgementOf(aFlag()), flag));
    flag.extent = 0.08 * 1.26;
    EXPECT_FALSE(holds(acknowledgementOf(aFlag()), flag));
    const Catalogue patient = smallCatalogue(R"({"assumptions": {"acknowledged-worse-share": {"value": 0.5}}})");
    EXPECT_TRUE(stillHolds(acknowledgementOf(aFlag()), flag, patient));
}

TEST(Acknowledge, IsAboutOneRuleOneAspectOnePartAndOneZone)
{
    const auto acknowledgement = acknowledgementOf(aFlag());
    Flag other = aFlag();
    other.rule = "worse-faster";
    EXPECT_FALSE(holds(acknowledgement, other));
    other = aFlag();
    other.zoneId = ZoneId(UuidBytes{3});
    EXPECT_FALSE(holds(acknowledgement, other));
    other = aFlag();
    other.partId = PartId(UuidBytes{3});
    EXPECT_FALSE(holds(acknowledgement, other)) << "a new part begins anew";
    other = aFlag();
    other.aspect = "superheat";
    EXPECT_FALSE(holds(acknowledgement, other));
    EXPECT_TRUE(holds(acknowledgementOf(other), other));
}

TEST(Acknowledge, OneTakenBackHoldsNoMore)
{
    auto acknowledgement = acknowledgementOf(aFlag());
    acknowledgement.takenBackAt = *parseInstant("2026-05-04T10:00:00+00:00");
    EXPECT_FALSE(holds(acknowledgement, aFlag()));
}

TEST(Acknowledge, MarkedFlagsStandBelowTheOthersWithReasonDayAndPerson)
{
    std::vector<Flag> flags{aFlag(), aFlag(), aFlag()};
    flags[0].rule = "spent";
    flags[2].rule = "wet-and-bare";
    const std::vector acknowledgements{saying(acknowledgementOf(flags[0]), "early", "2026-05-04T10:00:00+00:00"),
                                       saying(acknowledgementOf(flags[0]), "ordered", "2026-05-06T10:00:00+00:00")};
    markAcknowledged(flags, acknowledgements, smallCatalogue());
    EXPECT_EQ(flags[0].rule, "rust-growing");
    EXPECT_EQ(flags[1].rule, "wet-and-bare");
    ASSERT_TRUE(flags[2].acknowledged);
    EXPECT_EQ(flags[2].acknowledged->reason, "ordered") << "the latest word holds";
    EXPECT_EQ(flags[2].acknowledged->by, "R. Vane");
    EXPECT_EQ(flags[2].acknowledged->on, day("2026-05-06"));
    EXPECT_EQ(standingFlags(flags), 2U);
}

TEST(Acknowledge, AFlagOfARecordIsAcknowledgedAndComesBackWithAWorseGrade)
{
    RecordBuilder builder
        = anAccumulator().visit("2025-05-06").graded("bottom", 2).visit("2026-05-04").graded("bottom", 3);
    const auto flagsOf = [](const UnitRecord& record) {
        return raiseFlags(record, smallCatalogue(), day("2026-12-01"), zoneHistories(record), {});
    };
    UnitRecord record = builder.build();
    const auto before = flagsOf(record);
    ASSERT_EQ(before.size(), 1U);
    const auto acknowledgement = saying(acknowledgementOf(before[0]), "watched", "2026-05-05T10:00:00+00:00");
    record.acknowledgements = {acknowledgement};
    const auto after = flagsOf(record);
    ASSERT_EQ(after.size(), 1U);
    EXPECT_TRUE(after[0].acknowledged);
    record = builder.visit("2026-10-04", VisitReason::fall).graded("bottom", 4).build();
    record.acknowledgements = {acknowledgement};
    for (const Flag& flag : flagsOf(record))
        EXPECT_FALSE(flag.acknowledged) << flag.rule;
}

} // namespace padside

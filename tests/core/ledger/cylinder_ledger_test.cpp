// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/cylinder_ledger.h"
#include "tests/support/record_builder.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using enum ChargeDirection;
using test::aUnit;
using test::day;
using test::RecordBuilder;
using testing::EndsWith;

UnitRecord numbered(const RecordBuilder& unit, std::uint8_t number)
{
    UnitRecord record = unit.build();
    record.unit.id = UnitId(UuidBytes{number}); // builders give all units the same keys
    return record;
}

std::vector<CylinderLine> linesOf(const std::vector<UnitRecord>& records, const std::string& today = "2026-06-01")
{
    CylinderLedger ledger;
    for (const UnitRecord& record : records)
        ledger.take(record, day(today));
    return ledger.lines();
}

TEST(CylinderLedger, AddsUpOverUnitsWhatWentOutAndIn)
{
    const auto lines = linesOf(
        {numbered(aUnit("A").visit("2026-03-01").charged(added, 0.5, {}, "9").charged(recovered, 2.0, {}, "R1"), 1),
         numbered(aUnit("B").visit("2026-05-01").charged(added, 0.25, {}, "9").charged(lost, 1.0, {}, "9"), 2)});
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].cylinder, "9");
    EXPECT_DOUBLE_EQ(lines[0].outKg, 0.75);
    EXPECT_DOUBLE_EQ(lines[0].intoKg, 0); // what was lost went into no cylinder
    EXPECT_EQ(lines[0].units, 2);
    EXPECT_EQ(lines[0].first, day("2026-03-01"));
    EXPECT_EQ(lines[0].last, day("2026-05-01"));
    EXPECT_DOUBLE_EQ(lines[1].intoKg, 2.0);
    EXPECT_EQ(say(cylinderSentence(lines[0])),
              "Out of it 0.75 kg, into it 0.00 kg, at units: 2, 2026-03-01 to 2026-05-01.");
}

TEST(CylinderLedger, StandsInReadingOrderWhateverOrderTheUnitsCameIn)
{
    const auto one = numbered(aUnit("A").visit("2026-03-01").charged(added, 0.1, {}, "cylinder 10"), 1);
    const auto other = numbered(
        aUnit("B").visit("2026-03-01").charged(added, 0.2, {}, "cylinder 9").charged(added, 0.7, {}, "cylinder 10"), 2);
    EXPECT_EQ(linesOf({one, other}), linesOf({other, one}));
    EXPECT_EQ(linesOf({one, other}).front().cylinder, "cylinder 9");
}

TEST(CylinderLedger, ALineWithoutACylinderIsKeptToo)
{
    const auto lines = linesOf({numbered(aUnit("A").visit("2026-03-01").charged(added, 0.5), 1)});
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines.front().cylinder, "");
    EXPECT_DOUBLE_EQ(lines.front().outKg, 0.5);
}

TEST(CylinderLedger, WarnsWhereDifferentRefrigerantsWereRecoveredIntoOne)
{
    const auto lines = linesOf({numbered(aUnit("A")
                                             .visit("2026-03-01")
                                             .charged(recovered, 2.0, {}, "R1", "R-22")
                                             .charged(recovered, 1.0, {}, "R1", "r22")
                                             .visit("2026-04-01")
                                             .charged(recovered, 1.0, {}, "R1", "R-410A"),
                                         1)});
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_DOUBLE_EQ(lines[0].intoKg, 3.0); // R-22, however it is spelled
    EXPECT_TRUE(lines[0].mixed);
    EXPECT_TRUE(lines[1].mixed);
    EXPECT_THAT(say(cylinderSentence(lines[0])), EndsWith("what is in it can't be used again."));
}

TEST(CylinderLedger, LeavesOutWhatComesLater)
{
    EXPECT_TRUE(linesOf({numbered(aUnit("A").visit("2026-07-01").charged(added, 0.5, {}, "9"), 1)}).empty());
}

} // namespace

} // namespace padside

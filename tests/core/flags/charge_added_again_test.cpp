// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/flags/raised.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using enum ChargeDirection;
using test::raisedBy;
using test::RecordBuilder;
using testing::StartsWith;

constexpr auto addedAgain = "charge-added-again";

/// Holds 3 kg when full; the accumulator holds the charge, the base pan doesn't.
RecordBuilder aUnitOfThreeKilograms()
{
    return test::aUnit("HB-01")
        .factoryCharge(3.0)
        .withPart("suction-accumulator", {"bottom"})
        .withPart("base-pan", {"corners"});
}

// A second addition within 24 months, or more than 10 % of the charge in a season: common practice, no source.
TEST(ChargeAddedAgain, IsRaisedByASecondAdditionWithin24Months)
{
    const auto unit
        = aUnitOfThreeKilograms().visit("2024-06-01").charged(added, 0.1).visit("2026-05-31").charged(added, 0.12);
    const auto flag = raisedBy(addedAgain, unit);
    ASSERT_TRUE(flag);
    EXPECT_EQ(flag->severity, Severity::plan);
    EXPECT_FALSE(flag->partId);
    EXPECT_EQ(say(flag->sentence),
              "Charge added again: 0.12 kg on 2026-05-31, after 0.10 kg on 2024-06-01; it leaks, "
              "4.0 % of the full charge a year.");
    EXPECT_EQ(flag->charges.size(), 2U);
    EXPECT_TRUE(flag->evidence.empty());
}

TEST(ChargeAddedAgain, IsNotRaisedByOneSmallAdditionOrOneLongAfter)
{
    EXPECT_FALSE(raisedBy(addedAgain, aUnitOfThreeKilograms().visit("2026-05-31").charged(added, 0.12)));
    EXPECT_FALSE(raisedBy(
        addedAgain,
        aUnitOfThreeKilograms().visit("2024-05-30").charged(added, 0.1).visit("2026-05-31").charged(added, 0.12)));
}

TEST(ChargeAddedAgain, IsRaisedByOneAdditionOfMoreThanATenthOfTheCharge)
{
    EXPECT_FALSE(raisedBy(addedAgain, aUnitOfThreeKilograms().visit("2026-05-31").charged(added, 0.3)));
    const auto flag = raisedBy(addedAgain, aUnitOfThreeKilograms().visit("2026-05-31").charged(added, 0.36));
    ASSERT_TRUE(flag);
    EXPECT_EQ(flag->severity, Severity::act); // 12 % a year is above the advisory 10 %
    EXPECT_EQ(say(flag->sentence),
              "Much charge added in one season: 0.36 kg up to 2026-05-31, 12.0 % of the full charge; it leaks.");
}

TEST(ChargeAddedAgain, IsRaisedWithoutAFactoryChargeToo)
{
    const auto unit
        = test::aUnit("HB-01").visit("2025-06-01").charged(added, 0.1).visit("2026-05-31").charged(added, 0.12);
    const auto flag = raisedBy(addedAgain, unit);
    ASSERT_TRUE(flag);
    EXPECT_EQ(flag->severity, Severity::plan);
    EXPECT_THAT(say(flag->sentence), testing::HasSubstr("can't be told without the nameplate's factory charge"));
}

TEST(ChargeAddedAgain, TwoAdditionsOnOneDayAreOne)
{
    EXPECT_FALSE(
        raisedBy(addedAgain, aUnitOfThreeKilograms().visit("2026-05-31").charged(added, 0.1).charged(added, 0.1)));
}

TEST(ChargeAddedAgain, AChargePutBackAfterARecoveryIsNone)
{
    EXPECT_FALSE(raisedBy(addedAgain,
                          aUnitOfThreeKilograms()
                              .visit("2025-06-01")
                              .charged(added, 0.1)
                              .visit("2026-05-31")
                              .charged(recovered, 3.0)
                              .charged(added, 3.0)));
}

TEST(ChargeAddedAgain, ClearsWhenAPartThatHoldsTheChargeIsRepaired)
{
    const auto leaking
        = aUnitOfThreeKilograms().visit("2025-06-01").charged(added, 0.2).visit("2026-05-01").charged(added, 0.2);
    EXPECT_TRUE(raisedBy(addedAgain, leaking));
    EXPECT_FALSE(raisedBy(addedAgain, RecordBuilder(leaking).treated("bottom", TreatmentKind::repair)));
    EXPECT_FALSE(
        raisedBy(addedAgain, RecordBuilder(leaking).visit("2026-05-20").treated("bottom", TreatmentKind::repair)));
    // Other work, or work on what holds no charge, doesn't see to the leak.
    EXPECT_TRUE(raisedBy(addedAgain, RecordBuilder(leaking).treated("bottom", TreatmentKind::brushAndCoat)));
    EXPECT_TRUE(raisedBy(addedAgain, RecordBuilder(leaking).treated("corners", TreatmentKind::repair)));
    // It leaks on after the repair.
    EXPECT_TRUE(raisedBy(
        addedAgain,
        RecordBuilder(leaking).treated("bottom", TreatmentKind::repair).visit("2026-05-30").charged(added, 0.1)));
}

TEST(ChargeAddedAgain, ClearsAfter24MonthsWithoutAnother)
{
    const auto leaking
        = aUnitOfThreeKilograms().visit("2024-01-01").charged(added, 0.2).visit("2024-05-01").charged(added, 0.2);
    EXPECT_TRUE(raisedBy(addedAgain, leaking, "2026-05-01"));
    EXPECT_FALSE(raisedBy(addedAgain, leaking, "2026-05-02"));
}

TEST(ChargeAddedAgain, IsToBeActedUponOnlyWhileTheLastAdditionIsOfThisYear)
{
    const auto leaking
        = aUnitOfThreeKilograms().visit("2024-01-01").charged(added, 0.2).visit("2024-05-01").charged(added, 0.2);
    EXPECT_EQ(raisedBy(addedAgain, leaking, "2025-05-01")->severity, Severity::act); // 20 % a year
    EXPECT_EQ(raisedBy(addedAgain, leaking, "2025-05-02")->severity, Severity::plan);
}

} // namespace

} // namespace padside

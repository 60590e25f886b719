// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/unit_ledger.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using enum ChargeDirection;
using test::aUnit;
using test::day;
using test::RecordBuilder;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::StartsWith;

UnitLedger ledgerOf(const RecordBuilder& unit, const std::string& today = "2026-06-01")
{
    return unitLedger(unit.build(), test::smallCatalogue(), day(today));
}

/// Holds 3 kg when full.
RecordBuilder threeKilograms()
{
    return aUnit("HB-01").factoryCharge(3.0);
}

TEST(UnitLedger, WithoutEntriesSaysSo)
{
    const UnitLedger ledger = ledgerOf(threeKilograms());
    EXPECT_TRUE(ledger.days.empty());
    EXPECT_EQ(ledger.lastTopUp(), nullptr);
    EXPECT_FALSE(rateSentence(ledger));
    ASSERT_EQ(ledgerSentences(ledger).size(), 1U);
    EXPECT_EQ(say(ledgerSentences(ledger).front()), "No refrigerant put in or taken out is on record.");
}

TEST(UnitLedger, KeepsInRecoveredAndLostApart)
{
    const UnitLedger ledger = ledgerOf(threeKilograms()
                                           .visit("2025-05-06")
                                           .charged(added, 0.5)
                                           .visit("2025-10-06")
                                           .charged(recovered, 1.0)
                                           .charged(lost, 0.25)
                                           .charged(added, 2.0));
    EXPECT_DOUBLE_EQ(ledger.addedKg, 2.5);
    EXPECT_DOUBLE_EQ(ledger.recoveredKg, 1.0);
    EXPECT_DOUBLE_EQ(ledger.lostKg, 0.25);
    EXPECT_DOUBLE_EQ(ledger.netKg(), 1.25);
}

TEST(UnitLedger, MergesTheEntriesOfADayOfWhateverVisit)
{
    const UnitLedger ledger = ledgerOf(threeKilograms()
                                           .visit("2025-05-06")
                                           .charged(added, 0.2, "leak", "cylinder 10")
                                           .charged(added, 0.1, "leak", "cylinder 9")
                                           .visit("2025-05-06", VisitReason::callOut)
                                           .charged(added, 0.3, {}, "cylinder 9"));
    ASSERT_EQ(ledger.days.size(), 1U);
    EXPECT_DOUBLE_EQ(ledger.days.front().addedKg, 0.6);
    EXPECT_EQ(ledger.days.front().entries.size(), 3U);
    EXPECT_THAT(ledger.days.front().cylinders, ElementsAre("cylinder 9", "cylinder 10"));
    EXPECT_THAT(ledger.days.front().reasons, ElementsAre("leak"));
    EXPECT_DOUBLE_EQ(*ledger.days.front().annualized, 0.2); // 0.6 of 3 kg, reckoned over a year
}

TEST(UnitLedger, AnnualizesOverTheDaysSinceTheLastAddition)
{
    const UnitLedger ledger
        = ledgerOf(threeKilograms().visit("2025-05-06").charged(added, 0.3).visit("2025-11-02").charged(added, 0.3));
    ASSERT_EQ(ledger.days.size(), 2U);
    EXPECT_EQ(ledger.days[1].daysSinceAdded, 180);
    // 0.1 * 365 / 180: 40 CFR 82.152, as 10 lb of 100 lb after 180 days
    EXPECT_NEAR(*ledger.days[1].annualized, 0.2028, 1e-4);
    EXPECT_NEAR(*ledger.days[1].rolling, 0.2, 1e-12);
    EXPECT_NEAR(*ledger.rollingToday, 0.1, 1e-12); // on 2026-06-01 the first of both is more than 365 days ago
    EXPECT_THAT(say(*rateSentence(ledger)), HasSubstr("20.3 % of the full charge a year by annualizing, 20.0 % by"));
}

TEST(UnitLedger, OfAFirstAdditionSaysAtLeast)
{
    const UnitLedger ledger = ledgerOf(threeKilograms().visit("2026-05-06").charged(added, 0.3));
    EXPECT_FALSE(ledger.days.front().daysSinceAdded);
    EXPECT_NEAR(*ledger.days.front().annualized, 0.1, 1e-12);
    EXPECT_THAT(say(*rateSentence(ledger)), HasSubstr("at least 10.0 % of the full charge a year"));
}

TEST(UnitLedger, CountsAFirstAdditionFromTheDayTheUnitWasInstalledFull)
{
    const UnitLedger ledger
        = ledgerOf(threeKilograms().installed("2025-11-07").visit("2026-05-06").charged(added, 0.3));
    EXPECT_EQ(ledger.days.front().daysSinceAdded, 180);
    EXPECT_NEAR(*ledger.days.front().annualized, 0.2028, 1e-4);
}

TEST(UnitLedger, TellsNoRateWithoutTheFactoryCharge)
{
    for (const auto& unit : {aUnit("HB-01"), aUnit("HB-01").factoryCharge(0)}) {
        const UnitLedger ledger = ledgerOf(RecordBuilder(unit).visit("2026-05-06").charged(added, 0.3));
        EXPECT_FALSE(ledger.fullChargeKg);
        EXPECT_FALSE(ledger.days.front().annualized);
        EXPECT_FALSE(ledger.rollingToday);
        EXPECT_FALSE(ledger.limit);
        EXPECT_FALSE(ledger.isOverLimit());
        EXPECT_THAT(say(ledgerSentences(ledger).front()), HasSubstr("factory charge is not written down"));
    }
}

TEST(UnitLedger, AChargeRecoveredAndPutBackIsNoLeak)
{
    const UnitLedger ledger = ledgerOf(
        threeKilograms().visit("2026-05-06").charged(recovered, 3.0, "repair").charged(added, 3.0, "repair"));
    EXPECT_DOUBLE_EQ(ledger.days.front().topUpKg, 0);
    EXPECT_FALSE(ledger.days.front().annualized);
    EXPECT_DOUBLE_EQ(*ledger.rollingToday, 0);
    EXPECT_FALSE(rateSentence(ledger));
    EXPECT_THAT(say(balanceSentence(ledger)), StartsWith("What went in and what came out balance"));
}

TEST(UnitLedger, WhatGoesInBeyondTheRecoveredChargeIsALeak)
{
    const UnitLedger ledger
        = ledgerOf(threeKilograms().visit("2026-05-06").charged(recovered, 2.0).charged(added, 3.0));
    EXPECT_DOUBLE_EQ(ledger.days.front().topUpKg, 1.0);
    EXPECT_NEAR(*ledger.rollingToday, 1.0 / 3, 1e-12);
}

TEST(UnitLedger, AChargeMayBePutBackALittleLater)
{
    const auto recoveredFirst = threeKilograms().visit("2026-03-01").charged(recovered, 3.0);
    const UnitLedger soon = ledgerOf(RecordBuilder(recoveredFirst).visit("2026-04-30").charged(added, 3.0));
    EXPECT_DOUBLE_EQ(soon.days[1].topUpKg, 0); // 60 days
    const UnitLedger late = ledgerOf(RecordBuilder(recoveredFirst).visit("2026-05-01").charged(added, 3.0));
    EXPECT_DOUBLE_EQ(late.days[1].topUpKg, 3.0);
}

TEST(UnitLedger, ARecoveryIsUsedUpByTheFirstAddition)
{
    const UnitLedger ledger = ledgerOf(threeKilograms()
                                           .visit("2026-03-01")
                                           .charged(recovered, 3.0)
                                           .charged(added, 2.5)
                                           .visit("2026-03-20")
                                           .charged(added, 0.4));
    EXPECT_DOUBLE_EQ(ledger.days[0].topUpKg, 0);
    EXPECT_DOUBLE_EQ(ledger.days[1].topUpKg, 0.4);
    EXPECT_EQ(ledger.days[1].daysSinceAdded, 19);
}

TEST(UnitLedger, AFirstChargeIsNoLeak)
{
    const UnitLedger byReason = ledgerOf(threeKilograms().visit("2026-03-01").charged(added, 3.1, "first charge"));
    EXPECT_TRUE(byReason.days.front().firstCharge);
    EXPECT_DOUBLE_EQ(byReason.days.front().topUpKg, 0);
    EXPECT_DOUBLE_EQ(byReason.beyondFullKg, 0);
    const UnitLedger byDay
        = ledgerOf(threeKilograms().installed("2026-03-01").visit("2026-03-01").charged(added, 0.3, "long lines"));
    EXPECT_TRUE(byDay.days.front().firstCharge);
    EXPECT_DOUBLE_EQ(byDay.days.front().topUpKg, 0);
}

TEST(UnitLedger, ALostChargeThatIsReplacedIsALeakCountedOnce)
{
    const UnitLedger ledger = ledgerOf(threeKilograms().visit("2026-03-01").charged(lost, 3.0).charged(added, 3.0));
    EXPECT_NEAR(*ledger.rollingToday, 1.0, 1e-12);
    EXPECT_DOUBLE_EQ(ledger.beyondFullKg, 0);
}

TEST(UnitLedger, HoldsTheBalanceAgainstTheFactoryCharge)
{
    EXPECT_EQ(say(balanceSentence(ledgerOf(threeKilograms().visit("2026-05-06").charged(added, 0.75)))),
              "0.75 kg more went in than came out (25.0 % of the factory charge of 3.00 kg): so much has leaked away, "
              "unless the unit was low before or is overcharged.");
    EXPECT_EQ(
        say(balanceSentence(ledgerOf(threeKilograms().visit("2026-05-06").charged(recovered, 0.5)))),
        "0.50 kg more came out or was lost than went in: of the factory charge of 3.00 kg no more than 2.50 kg should "
        "be left.");
    EXPECT_THAT(say(balanceSentence(ledgerOf(threeKilograms().visit("2026-05-06").charged(recovered, 3.5)))),
                StartsWith("0.50 kg more came out than the factory charge of 3.00 kg and all that went in"));
}

TEST(UnitLedger, LeavesOutWhatWasCorrectedAndWhatComesLater)
{
    auto record
        = threeKilograms().visit("2026-05-06").charged(added, 3.0).visit("2026-09-01").charged(added, 1.0).build();
    ChargeEntry right = record.charges.front();
    right.correction = Correction<ChargeId>{right.id, "a slip"};
    right.id = ChargeId(UuidBytes{9});
    right.mass.si = 0.3;
    record.charges.push_back(right);
    const UnitLedger ledger = unitLedger(record, test::smallCatalogue(), day("2026-06-01"));
    EXPECT_DOUBLE_EQ(ledger.addedKg, 0.3);
    EXPECT_EQ(ledger.days.size(), 1U);
}

TEST(UnitLedger, NamesARefrigerantThatDoesNotBelongInTheUnit)
{
    const auto unit = threeKilograms().visit("2026-05-06");
    const UnitLedger right = ledgerOf(RecordBuilder(unit).charged(added, 0.3, {}, {}, "r410a"));
    EXPECT_FALSE(right.otherRefrigerantOn);
    const UnitLedger wrong = ledgerOf(RecordBuilder(unit).charged(added, 0.3, {}, {}, "R-407C"));
    EXPECT_THAT(say(ledgerSentences(wrong).back()),
                StartsWith("R-407C was put in on 2026-05-06, but the nameplate says R-410A"));
}

TEST(UnitLedger, SaysWhetherALimitBinds)
{
    const auto limitOf = [](double fullKg, const std::string& refrigerant) {
        auto record = aUnit("HB-01").factoryCharge(fullKg).visit("2026-05-06").charged(added, fullKg / 5).build();
        record.unit.refrigerant = refrigerant;
        return ledgerSentences(unitLedger(record, test::smallCatalogue(), day("2026-06-01")));
    };
    EXPECT_EQ(say(limitOf(3, "R-410A").at(2)), "Limit: 10.0 % a year, advisory (any charge).");
    EXPECT_EQ(limitOf(3, "R-410A").size(), 3U); // a unit that no rule binds has no duties
    EXPECT_EQ(say(limitOf(30, "R-22").at(2)), "Limit: 10.0 % a year, regulatory (the law).");
    EXPECT_THAT(say(limitOf(30, "R-22").at(3)), HasSubstr("within 30 days (120 where"));
}

} // namespace

} // namespace padside

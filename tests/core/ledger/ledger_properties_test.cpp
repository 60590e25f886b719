// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/cylinder_ledger.h"
#include "core/ledger/unit_ledger.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace padside {

namespace {

using test::day;

/// A unit with up to forty entries on some fifteen days, with whatever masses, also absurd ones.
UnitRecord randomRecord(std::mt19937& random)
{
    const auto below = [&random](int end) { return static_cast<int>(random() % static_cast<unsigned>(end)); };
    auto unit = test::aUnit("HB-01");
    if (below(4) > 0)
        unit.factoryCharge(below(5) == 0 ? 1e-9 : 0.1 * (1 + below(80)));
    if (below(2) > 0)
        unit.installed(isoText(day("2020-01-01") + std::chrono::days(below(1500))));
    for (int visit = 0; visit < 15; ++visit) {
        unit.visit(isoText(day("2020-01-01") + std::chrono::days(below(600) * 4)));
        for (int entry = below(4); entry > 0; --entry) {
            constexpr std::array masses{0.0, 0.1, 0.3, 0.7, 2.9, 1e6, 1e-12};
            constexpr std::array reasons{"", "leak", "first charge", "repair"};
            unit.charged(static_cast<ChargeDirection>(below(3)), masses.at(static_cast<std::size_t>(below(7))),
                         reasons.at(static_cast<std::size_t>(below(4))), below(2) > 0 ? "A" : "B");
        }
    }
    return unit.build();
}

class LedgerProperties : public testing::TestWithParam<unsigned>
{
protected:
    std::mt19937 m_random{GetParam()};
    UnitRecord m_record = randomRecord(m_random);
    UnitLedger m_ledger = unitLedger(m_record, test::smallCatalogue(), day("2025-06-01"));
};

TEST_P(LedgerProperties, NetIsInLessOutLessLost)
{
    double net = 0;
    for (const ChargeEntry& entry : m_record.charges) {
        if (entry.on <= m_ledger.today)
            net += entry.direction == ChargeDirection::added ? entry.mass.si : -entry.mass.si;
    }
    EXPECT_NEAR(m_ledger.netKg(), net, 1e-6);
}

TEST_P(LedgerProperties, TheOrderOfEntriesChangesNothingAtAll)
{
    UnitRecord shuffled = m_record;
    std::ranges::shuffle(shuffled.charges, m_random);
    const UnitLedger again = unitLedger(shuffled, test::smallCatalogue(), m_ledger.today);
    EXPECT_EQ(again.days, m_ledger.days);
    EXPECT_EQ(again.netKg(), m_ledger.netKg());
    EXPECT_EQ(ledgerSentences(again), ledgerSentences(m_ledger));
    CylinderLedger one;
    CylinderLedger other;
    one.take(m_record, m_ledger.today);
    other.take(shuffled, m_ledger.today);
    EXPECT_EQ(one.lines(), other.lines());
}

TEST_P(LedgerProperties, RatesAreNeverBelowZeroAndAlwaysNumbers)
{
    for (const LedgerDay& one : m_ledger.days) {
        for (const auto& rate : {one.annualized, one.rolling}) {
            EXPECT_TRUE(!rate || (std::isfinite(*rate) && *rate >= 0));
        }
        EXPECT_GE(one.topUpKg, 0);
        EXPECT_LE(one.topUpKg, one.addedKg);
        EXPECT_EQ(one.annualized.has_value(), one.topUpKg > 0 && m_ledger.fullChargeKg);
    }
    EXPECT_EQ(m_ledger.rollingToday.has_value(), m_ledger.fullChargeKg.has_value());
}

TEST_P(LedgerProperties, DaysAreInOrderAndEachStandsOnce)
{
    EXPECT_TRUE(std::ranges::is_sorted(m_ledger.days, std::less(), &LedgerDay::on));
    EXPECT_EQ(std::ranges::adjacent_find(m_ledger.days, {}, &LedgerDay::on), m_ledger.days.end());
}

TEST_P(LedgerProperties, NoSentenceSpeaksOfWhatIsNoNumber)
{
    for (const Sentence& sentence : ledgerSentences(m_ledger)) {
        const std::string said = say(sentence);
        EXPECT_EQ(said.find("nan"), std::string::npos) << said;
        EXPECT_EQ(said.find("inf"), std::string::npos) << said;
        EXPECT_EQ(said.find('{'), std::string::npos) << said;
    }
}

INSTANTIATE_TEST_SUITE_P(RandomRecords, LedgerProperties, testing::Range(1U, 81U));

} // namespace

} // namespace padside

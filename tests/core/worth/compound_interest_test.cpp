// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/compound_interest.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace padside::test {

struct TableRow
{
    double rate;
    double years;
    double capitalRecovery;
    double presentWorth;
};

class InterestTable : public ::testing::TestWithParam<TableRow>
{
};

TEST_P(InterestTable, IsMatched)
{
    const auto factors = interestFactors(GetParam().rate, GetParam().years);
    ASSERT_TRUE(factors);
    EXPECT_NEAR(factors->capitalRecovery, GetParam().capitalRecovery, 1e-5);
    EXPECT_NEAR(factors->seriesPresentWorth, GetParam().presentWorth, 1e-4);
}

// Discrete compound interest table for 0.25 % a period, as printed in an engineering economy textbook.
INSTANTIATE_TEST_SUITE_P(QuarterPercent, InterestTable,
                         ::testing::Values(TableRow{0.0025, 1, 1.0025, 0.9975}, TableRow{0.0025, 5, 0.2015, 4.9627},
                                           TableRow{0.0025, 10, 0.10138, 9.8639},
                                           TableRow{0.0025, 15, 0.06801, 14.7042},
                                           TableRow{0.0025, 20, 0.05132, 19.4845}));
// Computed from i(1+i)^n/((1+i)^n - 1); the same figures stand in NIST Handbook 135 and every table.
INSTANTIATE_TEST_SUITE_P(Computed, InterestTable,
                         ::testing::Values(TableRow{0.03, 5, 0.21835, 4.5797}, TableRow{0.03, 15, 0.08377, 11.9379},
                                           TableRow{0.03, 20, 0.06722, 14.8775}, TableRow{0.06, 5, 0.23740, 4.2124},
                                           TableRow{0.06, 15, 0.10296, 9.7122}, TableRow{0.06, 20, 0.08718, 11.4699},
                                           TableRow{0.08, 5, 0.25046, 3.9927}, TableRow{0.08, 15, 0.11683, 8.5595},
                                           TableRow{0.08, 20, 0.10185, 9.8181}, TableRow{0.1, 5, 0.26380, 3.7908},
                                           TableRow{0.1, 15, 0.13147, 7.6061}, TableRow{0.1, 20, 0.11746, 8.5136}));

TEST(InterestFactors, WithoutInterestAreTheCountOfYears)
{
    const auto factors = interestFactors(0, 10);
    ASSERT_TRUE(factors);
    EXPECT_DOUBLE_EQ(factors->capitalRecovery, 0.1);
    EXPECT_DOUBLE_EQ(factors->seriesPresentWorth, 10);
    EXPECT_DOUBLE_EQ(factors->seriesCompoundAmount, 10);
    EXPECT_DOUBLE_EQ(factors->singlePresentWorth, 1);
}

TEST(InterestFactors, ATinyRateDoesNotCancel)
{
    const auto factors = interestFactors(1e-12, 20);
    ASSERT_TRUE(factors);
    EXPECT_NEAR(factors->seriesPresentWorth, 20, 1e-8);
}

TEST(InterestFactors, HangTogether)
{
    for (const double rate : {0.001, 0.03, 0.08, 0.5}) {
        for (const double years : {0.5, 1.0, 7.0, 40.0}) {
            const auto factors = interestFactors(rate, years);
            ASSERT_TRUE(factors);
            EXPECT_NEAR(factors->capitalRecovery * factors->seriesPresentWorth, 1, 1e-12);
            EXPECT_NEAR(factors->singleCompoundAmount * factors->singlePresentWorth, 1, 1e-12);
            EXPECT_NEAR(factors->seriesPresentWorth * factors->singleCompoundAmount, factors->seriesCompoundAmount,
                        1e-9 * factors->seriesCompoundAmount);
        }
    }
}

TEST(InterestFactors, RefuseNonsense)
{
    const double infinite = std::numeric_limits<double>::infinity();
    for (const double rate : {-0.01, 1.5, std::nan(""), infinite})
        EXPECT_FALSE(interestFactors(rate, 10)) << rate;
    for (const double years : {0.0, -1.0, 201.0, std::nan(""), infinite})
        EXPECT_FALSE(interestFactors(0.05, years)) << years;
}

TEST(GrowingCost, IsTheModifiedUniformPresentValue)
{
    // NIST Handbook 135, UPV*; computed from its formula.
    EXPECT_NEAR(*growingPresentWorth(0.03, 0.01, 15), 12.868, 0.001);
    EXPECT_NEAR(*growingPresentWorth(0.06, 0.03, 12), 10.006, 0.001);
    EXPECT_DOUBLE_EQ(*growingPresentWorth(0.03, 0.03, 10), 10);
}

TEST(EquivalentAnnualCost, OfAWorkedExample)
{
    // Nothing in years 1 to 5, 1 000 in 6 to 10, 2 000 in 11 to 15, at 10 %: published exercise.
    std::array<double, 15> payments{};
    for (std::size_t year = 5; year < 15; ++year)
        payments.at(year) = year < 10 ? 1000 : 2000;
    EXPECT_NEAR(*presentWorth(payments, 0.1), 5276.80, 0.01);
    EXPECT_NEAR(*equivalentAnnualCost(payments, 0.1), 693.76, 0.01);
}

TEST(EquivalentAnnualCost, TellsKeepingFromReplacing)
{
    // A repair of 1 800 that gains 3 years against a new one of 9 000 for 15, at 6 %: computed.
    EXPECT_NEAR(1800 * interestFactors(0.06, 3)->capitalRecovery + 450 + 700, 1823.40, 0.01);
    EXPECT_NEAR(9000 * interestFactors(0.06, 15)->capitalRecovery + 250 + 420, 1596.66, 0.01);
}

} // namespace padside::test

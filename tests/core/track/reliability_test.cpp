// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/reliability.h"

#include <gtest/gtest.h>
#include <random>
#include <tuple>

namespace padside {

TEST(ShareInterval, AgreesWithPublishedScoreIntervals)
{
    // Newcombe (1998), Two-sided confidence intervals for the single proportion, table I, method 3 (95 %); worked out
    // again with scipy's binomtest.
    constexpr double ninetyFive = 1.959963985;
    using Row = std::tuple<std::size_t, std::size_t, double, double>;
    for (const auto& [hits, trials, low, high] : {Row{81, 263, 0.2553, 0.3662}, Row{15, 148, 0.0624, 0.1605},
                                                  Row{0, 20, 0, 0.1611}, Row{1, 29, 0.0061, 0.1718}}) {
        const ShareInterval interval = shareInterval(hits, trials, ninetyFive);
        EXPECT_NEAR(interval.low, low, 5e-5) << hits << " of " << trials;
        EXPECT_NEAR(interval.high, high, 5e-5) << hits << " of " << trials;
    }
}

TEST(ShareInterval, IsNeverOutsideZeroToOneNorWithoutWidth)
{
    for (const std::size_t trials : {1U, 2U, 10U, 1000U}) {
        EXPECT_DOUBLE_EQ(shareInterval(0, trials).low, 0);
        EXPECT_GT(shareInterval(0, trials).high, 0);
        EXPECT_DOUBLE_EQ(shareInterval(trials, trials).high, 1);
        EXPECT_LT(shareInterval(trials, trials).low, 1);
    }
    EXPECT_DOUBLE_EQ(shareInterval(0, 0).low, 0);
    EXPECT_DOUBLE_EQ(shareInterval(0, 0).high, 1);
}

TEST(ReliabilityTable, SortsChancesIntoTenthsAndOneIntoTheLast)
{
    ReliabilityTable table;
    table.add(0, false);
    table.add(0.1, true);
    table.add(0.9, false);
    table.add(1, true);
    const auto lines = table.lines();
    EXPECT_EQ(lines[0].count, 1U);
    EXPECT_EQ(lines[1].count, 1U);
    EXPECT_EQ(lines[9].count, 2U);
    EXPECT_DOUBLE_EQ(lines[9].meanForecast, 0.95);
    EXPECT_DOUBLE_EQ(lines[9].observed, 0.5);
    EXPECT_EQ(lines[5].count, 0U);
}

TEST(ReliabilityTable, ChancesThatAreAlikeWithinATenthComeApartAsMurphySays)
{
    // Murphy (1973): the score is reliability - resolution + uncertainty where each tenth holds one chance.
    ReliabilityTable table;
    double brier = 0;
    int count = 0;
    const auto say = [&](double chance, int spent, int sound) {
        for (int i = 0; i < spent + sound; ++i) {
            table.add(chance, i < spent);
            brier += (chance - (i < spent ? 1 : 0)) * (chance - (i < spent ? 1 : 0));
            ++count;
        }
    };
    say(0.05, 2, 38);
    say(0.25, 6, 14);
    say(0.75, 11, 5);
    brier /= count;
    const BrierParts parts = table.parts();
    EXPECT_NEAR(parts.reliability - parts.resolution + parts.uncertainty, brier, 1e-12);
    EXPECT_NEAR(parts.spread, 0, 1e-12);
    EXPECT_NEAR(parts.covariance, 0, 1e-12);
    EXPECT_NEAR(parts.uncertainty, 19.0 / 76 * 57 / 76, 1e-12);
}

TEST(ReliabilityTable, ChancesThatDifferWithinATenthNeedTheirSpreadAndCovariance)
{
    // Stephenson, Coelho and Jolliffe (2008), Two extra components in the Brier score decomposition.
    std::mt19937 dice(7); // NOLINT(cert-msc51-cpp): the same chances each time
    std::uniform_real_distribution<double> share(0, 1);
    for (int round = 0; round < 20; ++round) {
        ReliabilityTable table;
        double brier = 0;
        constexpr int count = 200;
        for (int i = 0; i < count; ++i) {
            const double chance = share(dice);
            const bool spent = share(dice) < chance * chance;
            table.add(chance, spent);
            brier += (chance - (spent ? 1 : 0)) * (chance - (spent ? 1 : 0)) / count;
        }
        const BrierParts parts = table.parts();
        EXPECT_NEAR(parts.reliability - parts.resolution + parts.uncertainty + parts.spread - parts.covariance, brier,
                    1e-12);
        EXPECT_GT(parts.spread, 0);
    }
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/transition.h"
#include "core/outlook/transition_series.h"
#include "tests/support/reference_table.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <gtest/gtest.h>
#include <random>

namespace padside {

namespace {

Rates someRates(std::mt19937& random, double lowest, double highest)
{
    std::uniform_real_distribution<double> exponent(lowest, highest);
    Rates rates{};
    for (double& rate : rates)
        rate = std::pow(10, exponent(random));
    return rates;
}

double largestOf(const Rates& rates)
{
    return *std::ranges::max_element(rates);
}

/// Each chance against that of transitionAfter(), relative to it.
void expectAgrees(TransitionSeries& series, double years, double tolerance)
{
    const Transition expected = transitionAfter(series.rates(), years);
    const WayChances chances = series.after(years);
    for (std::size_t way = 0; way < wayCount; ++way) {
        const double chance = expected.at(ways[way][0]).at(ways[way][1]);
        EXPECT_LE(std::abs(chances[way] - chance), tolerance * chance + 1e-300)
            << ways[way][0] + 1 << " to " << ways[way][1] + 1 << " after " << years << " years";
    }
}

} // namespace

// Computed outside the project with 50 digits, see tests/reference/README.md.
TEST(TransitionSeries, AgreesWithFiftyDigitArithmeticToElevenFigures)
{
    const test::ReferenceTable table("grade_transitions.csv");
    ASSERT_EQ(table.rows(), 450U);
    int compared = 0;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        TransitionSeries series(
            {table.number(row, "q12"), table.number(row, "q23"), table.number(row, "q34"), table.number(row, "q45")});
        const WayChances chances = series.after(table.number(row, "t"));
        const std::array asked{static_cast<std::size_t>(table.number(row, "i")) - 1,
                               static_cast<std::size_t>(table.number(row, "j")) - 1};
        const auto way = static_cast<std::size_t>(std::ranges::find(ways, asked) - ways.begin());
        if (way == wayCount)
            continue; // never back, always spent
        const double expected = std::strtod(table.text(row, "P").c_str(), nullptr); // 0 below the smallest double
        EXPECT_NEAR(chances.at(way), expected, expected * 1e-11) << "row " << row + 2;
        ++compared;
    }
    EXPECT_GT(compared, 400);
}

TEST(TransitionSeries, IsTheTransitionAtAnyTimeAndAnyRates)
{
    std::mt19937 random(3);
    std::uniform_real_distribution<double> jumps(-7, 2.9);
    for (int round = 0; round < 200; ++round) {
        Rates rates = round % 2 == 0 ? someRates(random, -1, 1) : someRates(random, -9, 3);
        if (round % 7 == 0)
            rates = {0.3, 0.3, 0.3, 0.3};
        if (round % 11 == 0)
            rates[random() % 4] = 0;
        TransitionSeries series(rates);
        for (int time = 0; time < 40; ++time)
            expectAgrees(series, std::pow(10, jumps(random)) / largestOf(rates), 2e-12);
    }
}

TEST(TransitionSeries, WhatLeadsToSpentIsAsGoodWhereItMatters)
{
    std::mt19937 random(4);
    std::uniform_real_distribution<double> jumps(-6, 4);
    for (int round = 0; round < 100; ++round) {
        TransitionSeries series(someRates(random, -1, 0.5));
        for (int time = 0; time < 40; ++time) {
            const double years = std::pow(10, jumps(random)) / largestOf(series.rates());
            const Transition expected = transitionAfter(series.rates(), years);
            const WayChances chances = series.towardsSpent(years);
            for (std::size_t way = 0; way < waysToPoorOrSpent; ++way)
                EXPECT_NEAR(chances[way], expected.at(ways[way][0]).at(ways[way][1]), 1e-13);
        }
    }
}

TEST(TransitionSeries, NoTimeChangesNothing)
{
    TransitionSeries series({0.3, 0.2, 0.1, 0.4});
    const WayChances chances = series.after(0);
    for (std::size_t way = 0; way < wayCount; ++way)
        EXPECT_EQ(chances[way], ways[way][0] == ways[way][1] ? 1 : 0);
}

} // namespace padside

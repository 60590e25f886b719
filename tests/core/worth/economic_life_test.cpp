// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/economic_life.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace padside::test {

namespace {

/// 25 000 at first; worth 20 000 at once, 20 % less each year; running 3 000, 7.5 % more each year: published exercise.
EconomicLife lifeAt(double rate)
{
    std::vector<double> running;
    std::vector<double> salvage;
    for (int year = 1; year <= 40; ++year) {
        running.push_back(3000 * std::pow(1.075, year - 1));
        salvage.push_back(20000 * std::pow(0.8, year));
    }
    return *economicLife(25000, running, salvage, rate);
}

} // namespace

TEST(EconomicLife, OfAWorkedExample)
{
    EXPECT_EQ(lifeAt(0.12).years, 14);
    EXPECT_NEAR(lifeAt(0.12).annualCost, 8137.95, 0.05);
    EXPECT_EQ(lifeAt(0.05).years, 12);
    EXPECT_NEAR(lifeAt(0.05).annualCost, 7151.59, 0.05);
}

TEST(EconomicLife, NeedsAYear)
{
    EXPECT_FALSE(economicLife(1000, {}, {}, 0.05));
}

} // namespace padside::test

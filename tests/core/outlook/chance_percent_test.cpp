// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/chance_percent.h"

#include <gtest/gtest.h>

namespace padside::test {

namespace {

std::string said(double chance)
{
    return say(Sentence{"{0} %", {chancePercent(chance)}});
}

/// "19 % to 22 %".
std::string bothSaid(double before, double after)
{
    const auto [one, other] = chancePercents(before, after);
    return say(Sentence{"{0} % to {1} %", {one, other}});
}

} // namespace

TEST(ChancePercent, IsWholeFromTenPercentOn)
{
    EXPECT_EQ(said(0.4219), "42 %");
    EXPECT_EQ(said(0.0999), "10 %");
}

TEST(ChancePercent, HasADecimalWhereTolerancesLie)
{
    EXPECT_EQ(said(0.0231), "2.3 %");
    EXPECT_EQ(said(0.0994), "9.9 %");
    EXPECT_EQ(said(0), "0.0 %");
}

TEST(ChancePercent, NeverPromisesCertainty)
{
    EXPECT_EQ(said(0.9999), "99 %");
    EXPECT_EQ(said(1), "99 %");
}

TEST(ChancePercents, AreWholeFromTenPercentOnUnlessTheyWouldBeTheSame)
{
    EXPECT_EQ(bothSaid(0.197, 0.218), "20 % to 22 %");
    EXPECT_EQ(bothSaid(0.197, 0.203), "19.7 % to 20.3 %");
    EXPECT_EQ(bothSaid(0.021, 0.034), "2.1 % to 3.4 %");
    EXPECT_EQ(bothSaid(0.094, 0.118), "9.4 % to 12 %");
}

} // namespace padside::test

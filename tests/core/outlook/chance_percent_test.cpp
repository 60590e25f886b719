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

} // namespace padside::test

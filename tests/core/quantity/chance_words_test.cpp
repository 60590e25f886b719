// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/chance_words.h"

#include <gtest/gtest.h>

namespace padside::test {

namespace {

std::string said(double chance)
{
    return say(chanceWords(chance));
}

} // namespace

TEST(ChanceWords, AreWholePerCentFromTenOn)
{
    EXPECT_EQ(said(0.4219), "42 %");
    EXPECT_EQ(said(0.0999), "10 %");
    EXPECT_EQ(said(0.0995), "10 %");
    EXPECT_EQ(said(0.9849), "98 %");
}

TEST(ChanceWords, HaveADecimalBelowTen)
{
    EXPECT_EQ(said(0.0994), "9.9 %");
    EXPECT_EQ(said(0.0231), "2.3 %");
    EXPECT_EQ(said(0.0097), "1.0 %");
    EXPECT_EQ(said(0.001), "0.1 %");
}

TEST(ChanceWords, WriteARoundFigureAsItIs)
{
    EXPECT_EQ(said(0.02), "2 %");
    EXPECT_EQ(said(0.1), "10 %");
    EXPECT_EQ(said(0.99), "99 %");
}

TEST(ChanceWords, OfWhatHardlyCanBeAreUnderTheLeastToldNotNothing)
{
    EXPECT_EQ(said(0.00099), "under 0.1 %");
    EXPECT_EQ(said(1e-15), "under 0.1 %");
    EXPECT_EQ(said(0), "0 %");
}

TEST(ChanceWords, OfWhatIsAlmostSureAreOverTheMostToldNotCertain)
{
    EXPECT_EQ(said(0.9901), "over 99 %");
    EXPECT_EQ(said(0.999999), "over 99 %");
    EXPECT_EQ(said(1), "100 %");
}

TEST(ChanceWords, TakeTheErrorOfLongSumsForWhatItIs)
{
    EXPECT_EQ(said(1 + 1e-15), "100 %");
    EXPECT_EQ(said(1 - 1e-15), "100 %");
    EXPECT_EQ(said(-1e-17), "0 %");
}

TEST(ChanceWords, OfTwoBesideEachOtherAreWholeFromTenPercentOnUnlessTheyWouldBeTheSame)
{
    const auto both = [](double one, double other) {
        const auto [before, after] = chancesBeside(one, other);
        return say({"{0} to {1}", {before, after}});
    };
    EXPECT_EQ(both(0.197, 0.218), "20 % to 22 %");
    EXPECT_EQ(both(0.197, 0.203), "19.7 % to 20.3 %");
    EXPECT_EQ(both(0.021, 0.034), "2.1 % to 3.4 %");
    EXPECT_EQ(both(0.094, 0.118), "9.4 % to 12 %");
    EXPECT_EQ(both(0.99, 0.993), "99 % to over 99 %");
}

TEST(ChanceWords, StandInsideASentence)
{
    EXPECT_EQ(say({"The chance is {0}, not {1}.", {Chance{0.0231}, Chance{0.9999}}}),
              "The chance is 2.3 %, not over 99 %.");
}

} // namespace padside::test

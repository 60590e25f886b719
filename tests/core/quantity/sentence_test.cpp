// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/date.h"
#include "core/quantity/sentence.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

/// A reader who has other words, signs and units.
class OtherReader final : public Speaker
{
public:
    [[nodiscard]] std::string translate(const std::string& english) const override
    {
        if (english == "{0} on {1}")
            return "am {1}: {0}";
        return english == "crown" ? "Krone" : english;
    }
    [[nodiscard]] std::string number(double value, int decimals) const override
    {
        return "<" + std::to_string(value) + "/" + std::to_string(decimals) + ">";
    }
    [[nodiscard]] std::string amount(const Amount& amount) const override { return std::to_string(amount.si) + " SI"; }
    [[nodiscard]] std::string money(const Money& money) const override
    {
        return std::to_string(money.amount) + " Taler";
    }
    [[nodiscard]] std::string date(Date) const override { return "4. Mai"; }
};

} // namespace

TEST(SentenceAsData, PutsEachArgumentInItsPlace)
{
    EXPECT_EQ(say({"{1} before {0}, {1} again", {std::string("a"), std::string("b")}}), "b before a, b again");
    EXPECT_EQ(say({"no place", {}}), "no place");
    EXPECT_EQ(say({"", {}}), "");
}

TEST(SentenceAsData, SaysNumbersAmountsAndDatesInPlainEnglish)
{
    const Sentence sentence{"{0}, {1}, {2}, {3}, {4}",
                            {std::int64_t{-7}, Number{2.25, 1}, Amount{300.15, QuantityKind::temperature},
                             parseDate("2026-05-04").value(), Word{"crown"}}};
    EXPECT_EQ(say(sentence), "-7, 2.2, 27.0 °C, 2026-05-04, crown");
}

TEST(SentenceAsData, TranslatesPatternAndWordsButNotNames)
{
    const OtherReader reader;
    EXPECT_EQ(say({"{0} on {1}", {Word{"crown"}, parseDate("2026-05-04").value()}}, reader), "am 4. Mai: Krone");
    EXPECT_EQ(say({"{0} on {1}", {std::string("crown"), Number{1, 2}}}, reader), "am <1.000000/2>: crown");
}

TEST(SentenceAsData, WhatIsNoPlaceStaysAsItIsWritten)
{
    EXPECT_EQ(say({"{1} {x} {} {0", {std::string("a")}}), "{1} {x} {} {0");
    EXPECT_EQ(say({"{0", {std::string("a")}}), "{0");
    EXPECT_EQ(say({"{99999999999999999999999999}", {std::string("a")}}), "{99999999999999999999999999}");
    EXPECT_EQ(say({"{-0} {0 } {+0}", {std::string("a")}}), "{-0} {0 } {+0}");
}

TEST(SentenceAsData, AnArgumentThatLooksLikeAPlaceIsNotFilledAgain)
{
    EXPECT_EQ(say({"{0} {1}", {std::string("{1}"), std::string("b")}}), "{1} b");
}

TEST(SentenceAsData, PutsAWordInBracketsBehindABlankOrNothing)
{
    EXPECT_EQ(say({"Fan{0}", {Bracketed{"crown"}}}, OtherReader()), "Fan (Krone)");
    EXPECT_EQ(say({"Fan{0}", {Bracketed{}}}, OtherReader()), "Fan");
}

} // namespace padside

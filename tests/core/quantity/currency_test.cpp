// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/amounts.h"
#include "core/quantity/currency.h"
#include "core/quantity/plain_english.h"

#include <gtest/gtest.h>

namespace padside {

TEST(Currency, IsTakenAsThePersonWritesIt)
{
    for (const char* name : {"EUR", "$", "kr", "Fr.", "R$", "₹", "руб."})
        EXPECT_EQ(parseCurrency(name), std::string(name)) << name;
    EXPECT_EQ(parseCurrency("  US$ "), std::string("US$"));
    EXPECT_EQ(parseCurrency(" "), std::string()) << "none";
}

TEST(Currency, WhatWouldBeReadAsPartOfTheNumberIsRefused)
{
    for (const char* name : {"100", "EUR 2", "-", "+kr", "1.", "%", "a,b", "E\nUR", "Reichsmark"})
        EXPECT_FALSE(parseCurrency(name)) << name;
    EXPECT_EQ(
        say(parseCurrency("EUR2").error().what),
        "“EUR2” can't stand beside amounts of money. Give the currency's name or sign without figures, like EUR, $ "
        "or kr, in at most 8 letters.");
}

TEST(Money, HasItsCurrencyBeforeItInPlainEnglish)
{
    const Sentence sentence{"It saves {0}, at {1} per kWh.", {roundMoney(1240.4), roundMoney(0.214)}};
    EXPECT_EQ(say(sentence), "It saves 1240, at 0.21 per kWh.") << "none is known";
    EXPECT_EQ(say(sentence, PlainEnglish("EUR")), "It saves EUR 1240, at EUR 0.21 per kWh.");
}

TEST(Money, HasDecimalsOnlyWhereItIsSmall)
{
    EXPECT_EQ(roundMoney(0), (Money{0, 0}));
    EXPECT_EQ(roundMoney(9.99), (Money{9.99, 2}));
    EXPECT_EQ(roundMoney(-0.5), (Money{-0.5, 2}));
    EXPECT_EQ(roundMoney(10), (Money{10, 0}));
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/reading_order.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <random>
#include <string>
#include <vector>

namespace padside {

namespace {

std::vector<std::string> sorted(std::vector<std::string> texts)
{
    std::ranges::sort(texts, [](const auto& one, const auto& other) { return inReadingOrder(one, other) < 0; });
    return texts;
}

} // namespace

using testing::ElementsAre;

TEST(ReadingOrder, NumbersInATagCountAsNumbers)
{
    EXPECT_THAT(sorted({"HP-10", "HP-2", "HP-1", "HP-02B", "AC-3"}),
                ElementsAre("AC-3", "HP-1", "HP-2", "HP-02B", "HP-10"));
    EXPECT_THAT(sorted({"Yard 3 pad 10", "Yard 3 pad 9", "Yard 20 pad 1"}),
                ElementsAre("Yard 3 pad 9", "Yard 3 pad 10", "Yard 20 pad 1"));
}

TEST(ReadingOrder, NumbersMayBeLongerThanAnyMachineNumber)
{
    EXPECT_THAT(sorted({"100000000000000000000000000000001", "99999999999999999999999999999999"}),
                ElementsAre("99999999999999999999999999999999", "100000000000000000000000000000001"));
}

TEST(ReadingOrder, CapitalsStandBesideSmallLetters)
{
    EXPECT_THAT(sorted({"b", "C", "a", "B"}), ElementsAre("a", "B", "b", "C"));
}

TEST(ReadingOrder, WhatIsLeftOverStandsLater)
{
    EXPECT_THAT(sorted({"HW-01 north", "HW-01", ""}), ElementsAre("", "HW-01", "HW-01 north"));
}

TEST(ReadingOrder, OnlyEqualTextsAreEqual)
{
    EXPECT_TRUE(inReadingOrder("HP-2", "HP-2") == 0);
    EXPECT_TRUE(inReadingOrder("HP-2", "HP-02") != 0);
    EXPECT_TRUE(inReadingOrder("hp", "HP") != 0);
}

TEST(ReadingOrder, IsAnOrderForAnyTexts)
{
    std::mt19937 dice(20261125);
    const std::string letters = "0019aAbB-é ";
    const auto text = [&] {
        std::string made;
        for (auto length = dice() % 5; length > 0; --length)
            made += letters[dice() % letters.size()];
        return made;
    };
    for (int i = 0; i < 20000; ++i) {
        const std::string a = text();
        const std::string b = text();
        const std::string c = text();
        EXPECT_EQ(inReadingOrder(a, b) < 0, inReadingOrder(b, a) > 0) << a << " | " << b;
        EXPECT_EQ(inReadingOrder(a, b) == 0, a == b) << a << " | " << b;
        const bool risesTwice = inReadingOrder(a, b) < 0 && inReadingOrder(b, c) < 0;
        EXPECT_TRUE(!risesTwice || inReadingOrder(a, c) < 0) << a << " | " << b << " | " << c;
    }
}

} // namespace padside

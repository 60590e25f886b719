// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/measure.h"
#include "tests/core/quantity/number_styles.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace padside {

namespace {

const NumberStyle french{',', "\u202f"};

double numberOf(std::string_view text, const NumberStyle& style = test::englishNumbers)
{
    const auto number = parseNumber(text, style);
    EXPECT_TRUE(number) << text;
    return number.value_or(std::numeric_limits<double>::quiet_NaN());
}

std::string refusalOf(std::string_view text, const NumberStyle& style = test::englishNumbers)
{
    const auto number = parseNumber(text, style);
    if (number)
        return "taken as " + std::to_string(*number);
    EXPECT_EQ(number.error().kind, ProblemKind::badInput);
    return say(number.error().what);
}

} // namespace

// A reading wrong by a thousand is the worst a record can hold.
TEST(TypedNumber, WhatCouldBeAThousandIsRefusedAndBothMeaningsAreOffered)
{
    EXPECT_EQ(refusalOf("1.250", test::germanNumbers), "“1.250” could mean 1250 or 1,250. Type one of these.");
    EXPECT_EQ(refusalOf("1.250", french), "“1.250” could mean 1250 or 1,250. Type one of these.");
    EXPECT_EQ(refusalOf("1,250", test::englishNumbers), "“1,250” could mean 1250 or 1.250. Type one of these.");
    EXPECT_EQ(refusalOf("-12,500", test::englishNumbers), "“-12,500” could mean -12500 or -12.500. Type one of these.");
    EXPECT_EQ(refusalOf("1.250e3", test::germanNumbers), "“1.250e3” could mean 1250e3 or 1,250e3. Type one of these.");
}

TEST(TypedNumber, EachOfferedMeaningIsUnderstood)
{
    EXPECT_EQ(numberOf("1250", test::germanNumbers), 1250);
    EXPECT_EQ(numberOf("1,250", test::germanNumbers), 1.25);
    EXPECT_EQ(numberOf("1250", test::englishNumbers), 1250);
    EXPECT_EQ(numberOf("1.250", test::englishNumbers), 1.25);
    EXPECT_EQ(numberOf("1,250", french), 1.25);
}

TEST(TypedNumber, BothDecimalSignsAreUnderstoodEverywhere)
{
    for (const NumberStyle& style : {test::englishNumbers, test::germanNumbers, french}) {
        EXPECT_EQ(numberOf("12.5", style), 12.5);
        EXPECT_EQ(numberOf("12,5", style), 12.5);
        EXPECT_EQ(numberOf("0.125", style), 0.125) << "no thousand begins with 0";
        EXPECT_EQ(numberOf("0,125", style), 0.125);
        EXPECT_EQ(numberOf("-0.125", style), -0.125);
        EXPECT_EQ(numberOf(".125", style), 0.125);
        EXPECT_EQ(numberOf("-,125", style), -0.125);
        EXPECT_EQ(numberOf("1.2504", style), 1.2504);
        EXPECT_EQ(numberOf("1,25", style), 1.25);
        EXPECT_EQ(numberOf("5.", style), 5);
    }
}

TEST(TypedNumber, ThousandsSeparatorsAreRefusedWhateverTheyAre)
{
    for (const NumberStyle& style : {test::englishNumbers, test::germanNumbers, french}) {
        for (const char* text : {"1 250", "1\u202f250", "1\u00a0250", "1\u2009250", "1'250", "1’250", "1,250.5",
                                 "1.250,5", "1.250.000", "1\u202f250,5"})
            EXPECT_EQ(refusalOf(text, style),
                      "“" + std::string(text)
                          + "” has a thousands separator or two decimal signs. Type the number without separators.");
    }
}

TEST(TypedNumber, FractionsAreUnderstood)
{
    EXPECT_EQ(numberOf("1/8"), 0.125);
    EXPECT_EQ(numberOf("-1/8"), -0.125);
    EXPECT_EQ(numberOf("1 3/16"), 1.1875);
    EXPECT_EQ(numberOf("-1 3/16"), -1.1875);
    EXPECT_EQ(numberOf("1\u00a01/2"), 1.5);
    EXPECT_EQ(numberOf("9/8"), 1.125);
    EXPECT_EQ(numberOf("0/8"), 0);
}

TEST(TypedNumber, FractionsThatCannotBeMeantAreRefused)
{
    for (const char* text : {"1/0", "1/", "/8", "1/8/2", "1//8", "1.250/8", "1,250/8", "1 250/8", "1 8/8", "1/-8",
                             "1 -1/8", "1/8 1", "a/8", "1.5 1/8", "1/1e1"})
        EXPECT_EQ(refusalOf(text, test::germanNumbers),
                  "“" + std::string(text) + "” is not a number. Type digits, like 12.5 or 1/8.");
}

TEST(TypedNumber, SignsBlanksAndExponentsAreUnderstood)
{
    EXPECT_EQ(numberOf("  12 "), 12);
    EXPECT_EQ(numberOf("\u00a012\u202f"), 12);
    EXPECT_EQ(numberOf("+12"), 12);
    EXPECT_EQ(numberOf("-3"), -3);
    EXPECT_EQ(numberOf("−3"), -3) << "U+2212";
    EXPECT_EQ(numberOf("2e-3"), 0.002);
    EXPECT_EQ(numberOf("2E3"), 2000);
    EXPECT_EQ(numberOf("2,5e1", test::germanNumbers), 25);
}

TEST(TypedNumber, WhatIsNoFiniteNumberIsRefused)
{
    for (const char* text :
         {"NaN", "nan", "inf", "-inf", "Infinity", "1e999", "-1e999", "0x10",  "1e",  "e5",    "--5", "+-5", "-+5",
          "++5", "-",   "+",   ".",    ",",        "5-",    "5-3",    "12abc", "abc", "1_000", "١٢",  "5 %", "1e5,5"})
        EXPECT_EQ(refusalOf(text), "“" + std::string(text) + "” is not a number. Type digits, like 12.5 or 1/8.");
    for (const char* text : {"", "   ", "\u202f"})
        EXPECT_EQ(refusalOf(text), "There is no number here. Type digits, like 12.5 or 1/8.");
}

TEST(TypedNumber, WhatIsShownCanBeTypedBack)
{
    for (const NumberStyle& style : {test::englishNumbers, test::germanNumbers, french}) {
        for (const double value : {0.0, 1.25, -40.0, 1250.0, 123456.789, 0.001}) {
            for (int decimals = 0; decimals <= 4; ++decimals) {
                const std::string shown = showNumber(value, decimals, style);
                EXPECT_NEAR(numberOf(shown, style), value, 0.5 * std::pow(10, -decimals) + 1e-9) << shown;
            }
        }
    }
}

TEST(TypedNumber, IsShownInThePersonsStyleAndNeverAsMinusZero)
{
    EXPECT_EQ(showNumber(1250.5, 2, test::englishNumbers), "1250.50");
    EXPECT_EQ(showNumber(1250.5, 2, test::germanNumbers), "1250,50");
    EXPECT_EQ(showNumber(-0.04, 1), "0.0");
    EXPECT_EQ(showNumber(-0.0, 0), "0");
    EXPECT_EQ(showNumber(-0.06, 1), "-0.1");
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/inspection_interval.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace padside::test {

// Answer key of training texts on API 510 (examples 8 and 9); the cap of 10 years is theirs too.
TEST(InspectionInterval, IsHalfOfTheRemainingLifeAtMostTenYears)
{
    EXPECT_NEAR(vesselInterval(14), 7, 1e-9);
    EXPECT_NEAR(vesselInterval(18.7), 9.35, 1e-9);
    EXPECT_NEAR(vesselInterval(9), 4.5, 1e-9);
    EXPECT_NEAR(vesselInterval(5.5), 2.75, 1e-9);
    EXPECT_NEAR(vesselInterval(20), 10, 1e-9);
    EXPECT_NEAR(vesselInterval(40), 10, 1e-9);
    EXPECT_NEAR(vesselInterval(11.2), 5.6, 1e-9);
    EXPECT_NEAR(vesselInterval(8.441), 4.22, 0.01); // notes on API 570: half of the life
}

// API 510, from memory.
TEST(InspectionInterval, AShortLifeMayBeUsedUpButForNoMoreThanTwoYears)
{
    EXPECT_EQ(vesselInterval(3), 2);
    EXPECT_EQ(vesselInterval(1.5), 1.5);
    EXPECT_EQ(vesselInterval(0), 0);
    EXPECT_EQ(outsideLookInterval(16), 5);
    EXPECT_EQ(outsideLookInterval(6), 3);
}

// API 570 by class, API 653 for shells (remaining allowance 0.096 in at 0.006 in/a), from memory.
TEST(InspectionInterval, OtherRulesDifferInTheirCap)
{
    EXPECT_EQ(halfLifeInterval(16, 5), 5);
    EXPECT_EQ(halfLifeInterval(16, 10), 8);
    EXPECT_NEAR(halfLifeInterval(0.096 / 0.006, 15), 8, 1e-9);
}

TEST(InspectionInterval, NeverGrowsShorterWithALongerLifeNorPastIt)
{
    double last = 0;
    for (double life = 0; life <= 40; life += 0.01) {
        EXPECT_GE(vesselInterval(life), last);
        EXPECT_LE(vesselInterval(life), life);
        last = vesselInterval(life);
    }
}

namespace {

/// The training texts count a month as a twelfth, April being .33: year and month, in twelfths.
struct PrintedDate
{
    int year;
    unsigned month;
};

struct PrintedCase
{
    PrintedDate last;
    double remainingYears;
    PrintedDate next;
};

Date middleOf(PrintedDate printed)
{
    return std::chrono::year(printed.year) / std::chrono::month(printed.month) / 15;
}

/// The month nearest to the year's fraction, never carried into another year ("2009.02" is January).
PrintedDate printedOf(double decimal)
{
    const double year = std::floor(decimal);
    const double month = std::clamp(std::round((decimal - year) * 12), 1.0, 12.0);
    return {static_cast<int>(year), static_cast<unsigned>(month)};
}

double decimalOf(PrintedDate printed)
{
    return printed.year + printed.month / 12.0;
}

} // namespace

// Dates of the same answer key: April 1999 is 1999.33, September 2003 is 2003.75.
TEST(InspectionInterval, LeadsToTheMonthsOfThePrintedAnswers)
{
    EXPECT_NEAR(decimalOf({1999, 4}), 1999.33, 0.005);
    EXPECT_NEAR(decimalOf({2003, 9}), 2003.75, 0.005);
    for (const PrintedCase& printed :
         {PrintedCase{{2001, 4}, 18.7, {2010, 8}}, PrintedCase{{2002, 2}, 9, {2006, 8}},
          PrintedCase{{2003, 9}, 5.5, {2006, 6}}, PrintedCase{{2001, 11}, 20, {2011, 11}},
          PrintedCase{{2003, 5}, 11.2, {2009, 1}}, PrintedCase{{2003, 3}, 14, {2010, 3}}}) {
        const double interval = vesselInterval(printed.remainingYears);
        const PrintedDate next = printedOf(decimalOf(printed.last) + interval);
        EXPECT_EQ(next.year, printed.next.year);
        EXPECT_EQ(next.month, printed.next.month);
        // By real days, from the middle of the month: within a month of that.
        const Date day = dayAfter(middleOf(printed.last), interval);
        EXPECT_LE(std::abs((day - middleOf(printed.next)).count()), 31) << isoText(day);
    }
}

} // namespace padside::test

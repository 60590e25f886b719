// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/leak_rate.h"
#include "tests/support/record_builder.h"

#include <array>
#include <gtest/gtest.h>
#include <limits>

namespace padside {

namespace {

using test::day;

constexpr double pound = 0.45359237; // kg, international pound of 1959

/// A worked example of the methods of 40 CFR 82.152 (definition of "leak rate"); the arithmetic is exact.
struct Annualized
{
    double addedLb;
    double fullLb;
    int days;
    double percent;
    double tolerance;
};

class AnnualizingMethod : public testing::TestWithParam<Annualized>
{
};

TEST_P(AnnualizingMethod, GivesTheWorkedExample)
{
    const auto rate = annualizedLeakRate(GetParam().addedLb * pound, GetParam().fullLb * pound, GetParam().days);
    ASSERT_TRUE(rate);
    EXPECT_NEAR(*rate * 100, GetParam().percent, GetParam().tolerance);
}

INSTANTIATE_TEST_SUITE_P(Of40Cfr82p152, AnnualizingMethod,
                         testing::Values(Annualized{10, 100, 180, 20.28, 0.01}, // 10 / 100 * 365 / 180
                                         Annualized{3, 12, 400, 25.0, 0.01}, // not more than 365 days count
                                         Annualized{30, 200, 120, 45.63, 0.01}, // 30 / 200 * 365 / 120
                                         Annualized{1, 8, 365, 12.5, 1e-9}, Annualized{0, 8, 10, 0, 0}));

TEST(AnnualizingMethod, ReckonsAWholeYearWhereNoAdditionIsKnown)
{
    EXPECT_EQ(annualizedLeakRate(1, 8, std::nullopt), annualizedLeakRate(1, 8, 365));
}

TEST(AnnualizingMethod, NeverDividesByZero)
{
    constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
    constexpr double endless = std::numeric_limits<double>::infinity();
    EXPECT_FALSE(annualizedLeakRate(1, 8, 0)); // a second addition on the same day is to be merged with the first
    EXPECT_FALSE(annualizedLeakRate(1, 8, -3));
    EXPECT_FALSE(annualizedLeakRate(1, 0, 100));
    EXPECT_FALSE(annualizedLeakRate(1, -2, 100));
    EXPECT_FALSE(annualizedLeakRate(-1, 8, 100));
    EXPECT_FALSE(annualizedLeakRate(notANumber, 8, 100));
    EXPECT_FALSE(annualizedLeakRate(1, notANumber, 100));
    EXPECT_FALSE(annualizedLeakRate(endless, 8, 100));
    EXPECT_FALSE(annualizedLeakRate(1e300, 1e-300, 1));
}

TEST(RollingAverageMethod, GivesTheWorkedExamples)
{
    const Date today = day("2026-06-01");
    const auto ago = [today](int days) { return today - std::chrono::days(days); };
    // 40 CFR 82.152: two additions of 1 lb within 365 days, full charge 8 lb: 25 %.
    const std::array both{TopUp{ago(200), pound}, TopUp{ago(30), pound}};
    EXPECT_NEAR(*rollingLeakRate(both, 8 * pound, today), 0.25, 1e-12);
    // The same with the first one 400 days ago: 12.5 %.
    const std::array one{TopUp{ago(400), pound}, TopUp{ago(30), pound}};
    EXPECT_NEAR(*rollingLeakRate(one, 8 * pound, today), 0.125, 1e-12);
}

TEST(RollingAverageMethod, CountsTheDayItselfAndTheDayAYearBefore)
{
    const Date today = day("2026-06-01");
    EXPECT_DOUBLE_EQ(*rollingLeakRate(std::array{TopUp{today, 1}}, 4, today), 0.25);
    EXPECT_DOUBLE_EQ(*rollingLeakRate(std::array{TopUp{day("2025-06-01"), 1}}, 4, today), 0.25);
    EXPECT_DOUBLE_EQ(*rollingLeakRate(std::array{TopUp{day("2025-05-31"), 1}}, 4, today), 0);
    EXPECT_DOUBLE_EQ(*rollingLeakRate(std::array{TopUp{day("2026-06-02"), 1}}, 4, today), 0); // not yet
}

TEST(RollingAverageMethod, OfALeapYearCounts365DaysToo)
{
    EXPECT_DOUBLE_EQ(*rollingLeakRate(std::array{TopUp{day("2023-03-01"), 1}}, 4, day("2024-02-29")), 0.25);
    EXPECT_DOUBLE_EQ(*rollingLeakRate(std::array{TopUp{day("2023-03-01"), 1}}, 4, day("2024-03-01")), 0); // 366 days
}

TEST(RollingAverageMethod, SaysNothingWithoutAFullCharge)
{
    EXPECT_FALSE(rollingLeakRate({}, 0, day("2026-06-01")));
    EXPECT_FALSE(rollingLeakRate({}, std::numeric_limits<double>::quiet_NaN(), day("2026-06-01")));
    EXPECT_DOUBLE_EQ(*rollingLeakRate({}, 4, day("2026-06-01")), 0);
}

} // namespace

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/long_term_loss.h"
#include "core/corrosion/wall_readings.h"
#include "tests/support/reference_table.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace padside::test {

namespace {

constexpr std::array bothExponents{LossExponent::mean, LossExponent::upper};

} // namespace

// ISO 9224:2012 table 2 in a transcription.
TEST(LongTermLoss, ExponentsAreThoseOfIso9224)
{
    const std::array mean{0.523, 0.813, 0.667, 0.728};
    const std::array upper{0.575, 0.873, 0.726, 0.807};
    for (std::size_t i = 0; i < allMetals.size(); ++i) {
        EXPECT_EQ(exponentOf(allMetals.at(i), LossExponent::mean), mean.at(i));
        EXPECT_EQ(exponentOf(allMetals.at(i), LossExponent::upper), upper.at(i));
    }
}

// The composition formula of ISO 9224, from memory; the value computed outside this project.
TEST(LongTermLoss, ExponentOfASteelComesFromItsComposition)
{
    SteelAlloy alloy;
    alloy.carbon = 0.15;
    alloy.phosphorus = 0.02;
    alloy.sulphur = 0.02;
    alloy.silicon = 0.2;
    alloy.copper = 0.2;
    EXPECT_NEAR(exponentOf(alloy), 0.529, 5e-4);
}

// Source: tests/reference/README.md, long_term_loss.csv.
TEST(LongTermLoss, FollowsTheTableOfIso9224AndTheTangentBeyondTwentyYears)
{
    const ReferenceTable table("long_term_loss.csv");
    ASSERT_EQ(table.rows(), 58U);
    double worst = 0;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const Metal metal = fromCode<Metal>(table.text(row, "metal")).value();
        const auto which = table.text(row, "exponent") == "B1" ? LossExponent::mean : LossExponent::upper;
        const double loss
            = longTermLoss(table.number(row, "first_year"), exponentOf(metal, which), table.number(row, "years"))
                  .value();
        EXPECT_NEAR(loss, table.number(row, "loss"), table.number(row, "tolerance")) << row;
        worst = std::max(worst, std::abs(loss - table.number(row, "loss")));
    }
    RecordProperty("largest_deviation", std::to_string(worst));
    EXPECT_LT(worst, 1.0e-3);
}

// 50 µm/a, the upper limit of C3 for steel; years computed outside this project.
TEST(LongTermLoss, YearsToALossTurnItRound)
{
    const double exponent = exponentOf(Metal::steel, LossExponent::mean);
    EXPECT_NEAR(yearsToLoss(50, exponent, 500).value(), 61.575, 0.01);
    EXPECT_NEAR(yearsToLoss(50, exponent, 150).value(), 8.171, 0.001);
    for (const Metal metal : allMetals) {
        for (const LossExponent which : bothExponents) {
            for (const double years : {0.0, 0.25, 1.0, 3.0, 20.0, 20.5, 80.0, 999.0}) {
                const double b = exponentOf(metal, which);
                EXPECT_NEAR(yearsToLoss(7, b, longTermLoss(7, b, years).value()).value(), years, 1e-9 * (1 + years));
            }
        }
    }
}

// Life of 20 µm of zinc at the upper limit of C3 (2.1 µm/a); computed outside this project.
TEST(LongTermLoss, AZincCoatingLastsLongerThanInAStraightLine)
{
    EXPECT_NEAR(yearsToLoss(2.1, 1, 20).value(), 9.524, 0.01);
    EXPECT_NEAR(yearsToLoss(2.1, exponentOf(Metal::zinc, LossExponent::mean), 20).value(), 15.994, 0.01);
}

TEST(LongTermLoss, HasNoStepAtOneNorAtTwentyYears)
{
    for (const Metal metal : allMetals) {
        for (const LossExponent which : bothExponents) {
            const double b = exponentOf(metal, which);
            for (const double years : {1.0, 20.0})
                EXPECT_NEAR(lossFactor(b, years - 1e-9), lossFactor(b, years + 1e-9), 1e-8);
            // nor a kink at 20: the slopes on both sides agree
            const double before = (lossFactor(b, 20) - lossFactor(b, 19.999)) / 0.001;
            const double after = (lossFactor(b, 20.001) - lossFactor(b, 20)) / 0.001;
            EXPECT_NEAR(before, after, 1e-4);
        }
    }
}

TEST(LongTermLoss, NeverShrinksWithTimeNorWithTheRateAndTheUpperExponentIsNeverBelowTheMean)
{
    for (const Metal metal : allMetals) {
        double last = -1;
        for (double years = 0; years <= 100; years += 0.25) {
            const double mean = longTermLoss(50, exponentOf(metal, LossExponent::mean), years).value();
            EXPECT_GT(mean, last);
            EXPECT_LE(longTermLoss(49, exponentOf(metal, LossExponent::mean), years).value(), mean);
            EXPECT_GE(longTermLoss(50, exponentOf(metal, LossExponent::upper), years).value(), mean);
            last = mean;
        }
    }
}

TEST(LongTermLoss, WhatCanNotBeIsRefused)
{
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    constexpr double inf = std::numeric_limits<double>::infinity();
    for (const double years : {-0.1, 1000.1, nan, inf})
        EXPECT_FALSE(longTermLoss(50, 0.5, years)) << years;
    for (const double loss : {-1.0, nan, inf, 1.7e308})
        EXPECT_FALSE(longTermLoss(loss, 0.5, 900)) << loss;
    EXPECT_FALSE(yearsToLoss(0, 0.5, 10));
    EXPECT_FALSE(yearsToLoss(1, 0.5, -1));
    EXPECT_FALSE(yearsToLoss(1e-6, 0.5, 10)); // over a thousand years
}

// 2.5 mm shell, 40 µm in the first year, 10 years, pitting factor 4; computed outside this project.
TEST(LongTermLoss, TheDeepestPitIsSomeTimesTheMeanLoss)
{
    const double mean = longTermLoss(40e-6, exponentOf(Metal::steel, LossExponent::mean), 10).value();
    EXPECT_NEAR(wallAtDeepestPitM(2.5e-3, mean, 4), 1.9665e-3, 1e-6);
    EXPECT_EQ(wallAtDeepestPitM(2.5e-3, 1e-3, 4), 0);
}

} // namespace padside::test

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/transition.h"
#include "tests/support/reference_table.h"

#include <cmath>
#include <cstdlib>
#include <gtest/gtest.h>
#include <random>

namespace padside {

namespace {

using test::ReferenceTable;

void expectChances(const Transition& chance, const std::string& what)
{
    for (std::size_t from = 0; from < gradeCount; ++from) {
        double sum = 0;
        for (std::size_t to = 0; to < gradeCount; ++to) {
            EXPECT_TRUE(std::isfinite(chance[from][to])) << what;
            EXPECT_GE(chance[from][to], 0) << what;
            EXPECT_LE(chance[from][to], 1 + 1e-13) << what;
            sum += chance[from][to];
        }
        EXPECT_NEAR(sum, 1, 1e-12) << what;
    }
}

} // namespace

// Computed outside the project with 50 digits, see tests/reference/README.md. Known, equal, nearly equal and stiff
// rates, .01 to 100 years; the smallest chance is 7e-522, below what a double holds.
TEST(Transition, AgreesWithFiftyDigitArithmeticToTwelveFiguresAlsoInTheSmallestChances)
{
    const ReferenceTable table("grade_transitions.csv");
    ASSERT_EQ(table.rows(), 450U);
    double worst = 0;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const Rates rates{table.number(row, "q12"), table.number(row, "q23"), table.number(row, "q34"),
                          table.number(row, "q45")};
        const Transition chance = transitionAfter(rates, table.number(row, "t"));
        const double computed = chance.at(static_cast<std::size_t>(table.number(row, "i")) - 1)
                                    .at(static_cast<std::size_t>(table.number(row, "j")) - 1);
        const double expected = std::strtod(table.text(row, "P").c_str(), nullptr); // 0 below the smallest double
        EXPECT_NEAR(computed, expected, expected * 1e-12) << "row " << row + 2;
        if (expected > 0)
            worst = std::max(worst, std::abs(computed / expected - 1));
    }
    RecordProperty("worst_relative_deviation", std::to_string(worst));
    EXPECT_GT(worst, 0); // the table was really compared
}

TEST(Transition, NoTimeOrNoRateChangesNothing)
{
    for (const Transition& chance : {transitionAfter({1, 2, 3, 4}, 0), transitionAfter({0, 0, 0, 0}, 1000)}) {
        for (std::size_t from = 0; from < gradeCount; ++from) {
            for (std::size_t to = 0; to < gradeCount; ++to)
                EXPECT_EQ(chance[from][to], from == to ? 1 : 0);
        }
    }
}

// Computed by hand: with tiny rates each further grade costs one factor rate times years, divided by the factorial.
TEST(Transition, TinyRatesKeepEveryFigure)
{
    const Transition chance = transitionAfter({1e-12, 1e-12, 1e-12, 1e-12}, 10);
    EXPECT_NEAR(chance[0][1] / 1e-11, 1, 1e-10);
    EXPECT_NEAR(chance[0][2] / (1e-22 / 2), 1, 1e-10);
    EXPECT_NEAR(chance[0][3] / (1e-33 / 6), 1, 1e-10);
    EXPECT_NEAR(chance[0][4] / (1e-44 / 24), 1, 1e-10);
}

// Computed by hand: equal rates count the events of a Poisson process.
TEST(Transition, AThousandYearsOfEqualRatesAreAPoissonCount)
{
    const Transition chance = transitionAfter({0.02, 0.02, 0.02, 0.02}, 1000);
    const double none = std::exp(-20.0);
    EXPECT_NEAR(chance[0][0] / none, 1, 1e-12);
    EXPECT_NEAR(chance[0][1] / (none * 20), 1, 1e-12);
    EXPECT_NEAR(chance[0][2] / (none * 200), 1, 1e-12);
    EXPECT_NEAR(chance[0][3] / (none * 8000 / 6), 1, 1e-12);
}

TEST(Transition, ARateOfZeroIsNeverPassed)
{
    const Transition chance = transitionAfter({0.3, 0, 0.3, 0.3}, 50);
    EXPECT_EQ(chance[0][2], 0);
    EXPECT_EQ(chance[1][4], 0);
    EXPECT_NEAR(chance[0][1], 1 - std::exp(-15.0), 1e-14);
    EXPECT_GT(chance[2][4], 0.99);
}

TEST(Transition, ChancesStayChancesForAnyRatesAndTimes)
{
    std::mt19937 random(11);
    std::uniform_real_distribution<double> exponent(-12, 4);
    for (int round = 0; round < 2000; ++round) {
        Rates rates{};
        for (double& rate : rates)
            rate = round % 7 == 0 ? 0.3 : std::pow(10, exponent(random));
        const double years = std::pow(10, exponent(random) / 2);
        expectChances(transitionAfter(rates, years), "round " + std::to_string(round));
    }
}

TEST(Transition, TwoStretchesOneAfterTheOtherAreOneLongStretch)
{
    const Rates rates{0.9, 0.05, 2.5, 0.3};
    const Transition first = transitionAfter(rates, 0.7);
    const Transition second = transitionAfter(rates, 3.1);
    const Transition both = transitionAfter(rates, 3.8);
    for (std::size_t from = 0; from < gradeCount; ++from) {
        for (std::size_t to = from; to < gradeCount; ++to) {
            double sum = 0;
            for (std::size_t by = from; by <= to; ++by)
                sum += first[from][by] * second[by][to];
            EXPECT_NEAR(sum / both[from][to], 1, 1e-13);
        }
    }
}

TEST(TransitionSlopes, AreTheDifferencesOfNearbyRates)
{
    for (const Rates& rates : {Rates{0.45, 0.30, 0.22, 0.15}, Rates{0.3, 0.3, 0.3, 0.3}, Rates{12, 0.02, 3, 0.001}}) {
        for (const double years : {0.01, 0.5, 3.0, 20.0}) {
            const TransitionSlopes both = transitionSlopesAfter(rates, years);
            const Transition plain = transitionAfter(rates, years);
            for (std::size_t k = 0; k < 4; ++k) {
                Rates more = rates;
                Rates less = rates;
                const double step = rates[k] * 1e-5;
                more[k] += step;
                less[k] -= step;
                const Transition up = transitionAfter(more, years);
                const Transition down = transitionAfter(less, years);
                for (std::size_t from = 0; from < gradeCount; ++from) {
                    for (std::size_t to = 0; to < gradeCount; ++to) {
                        EXPECT_NEAR(both.chance[from][to], plain[from][to], 1e-14);
                        const double difference = (up[from][to] - down[from][to]) / (2 * step);
                        EXPECT_NEAR(both.slope[k][from][to] * rates[k], difference * rates[k], 1e-9)
                            << years << ": " << k << ' ' << from << ' ' << to;
                    }
                }
            }
        }
    }
}

} // namespace padside

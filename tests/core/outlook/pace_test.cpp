// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/pace.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>

namespace padside {

// Abramowitz and Stegun (1964), table 25.10, n = 5: abscissas and weights of Gauss-Hermite integration; from memory.
TEST(Pace, UsesTheNodesOfThePrintedTable)
{
    const auto pace = logNormalPace(1, 5);
    ASSERT_TRUE(pace);
    const std::vector<double> x{-2.0201828704561, -0.9585724646138, 0, 0.9585724646138, 2.0201828704561};
    const std::vector<double> w{0.01995324205905, 0.3936193231522, 0.9453087204829, 0.3936193231522, 0.01995324205905};
    ASSERT_EQ(pace->pace.size(), 5U);
    for (std::size_t node = 0; node < 5; ++node) {
        EXPECT_NEAR((std::log(pace->pace[node]) + 0.5) / std::numbers::sqrt2, x[node], 1e-12);
        EXPECT_NEAR(pace->weight[node] * std::sqrt(std::numbers::pi), w[node], 1e-12);
    }
}

TEST(Pace, HasMeanOneAndTheVarianceOfALogNormal)
{
    const auto pace = logNormalPace(0.6);
    ASSERT_TRUE(pace);
    ASSERT_EQ(pace->pace.size(), 15U);
    double sum = 0;
    double mean = 0;
    double square = 0;
    for (std::size_t node = 0; node < 15; ++node) {
        sum += pace->weight[node];
        mean += pace->weight[node] * pace->pace[node];
        square += pace->weight[node] * pace->pace[node] * pace->pace[node];
    }
    EXPECT_NEAR(sum, 1, 1e-13);
    EXPECT_NEAR(mean, 1, 1e-12);
    EXPECT_NEAR(square, std::exp(0.36), 1e-10);
}

TEST(Pace, WithoutSpreadThereIsOnePace)
{
    const auto pace = logNormalPace(0);
    ASSERT_TRUE(pace);
    EXPECT_EQ(pace->pace, std::vector<double>{1});
    EXPECT_EQ(pace->weight, std::vector<double>{1});
}

TEST(Pace, RefusesSpreadsAndNodesThatCantBe)
{
    for (const double sigma : {-0.1, 3.1, std::nan(""), std::numeric_limits<double>::infinity()})
        EXPECT_FALSE(logNormalPace(sigma));
    EXPECT_FALSE(logNormalPace(0.6, 0));
    EXPECT_FALSE(logNormalPace(0.6, 65));
    EXPECT_TRUE(logNormalPace(0.6, 64));
}

} // namespace padside

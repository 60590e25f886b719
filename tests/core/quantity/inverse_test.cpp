// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/inverse.h"

#include <cmath>
#include <gtest/gtest.h>

namespace padside {

TEST(InverseOfRising, FindsWhereTheValueIsTaken)
{
    for (double at = 0.01; at < 8; at += 0.37) {
        EXPECT_NEAR(inverseOfRising([](double x) { return std::exp(x); }, std::exp(at), 0, 9), at, 1e-12);
        EXPECT_NEAR(inverseOfRising([](double x) { return x * x * x; }, at * at * at, 0, 9), at, 1e-12);
    }
    EXPECT_NEAR(inverseOfRising([](double x) { return std::atan(1e6 * x); }, 0, -1, 3), 0, 1e-12); // steep in one place
}

TEST(InverseOfRising, StopsAtAStepWithoutStickingThere)
{
    const auto stepped = [](double x) { return x < 2 ? x : x + 1; };
    EXPECT_NEAR(inverseOfRising(stepped, 2.5, 0, 9), 2, 1e-12);
}

TEST(InverseOfRising, GivesAnEndForWhatLiesBeyondIt)
{
    const auto same = [](double x) { return x; };
    EXPECT_EQ(inverseOfRising(same, -1, 0, 9), 0);
    EXPECT_EQ(inverseOfRising(same, 0, 0, 9), 0);
    EXPECT_EQ(inverseOfRising(same, 9, 0, 9), 9);
    EXPECT_EQ(inverseOfRising(same, 10, 0, 9), 9);
}

} // namespace padside

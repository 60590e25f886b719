// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/energy_use.h"

#include <cmath>
#include <gtest/gtest.h>

namespace padside::test {

namespace {

constexpr double watts(double btuPerHour)
{
    return btuPerHour * 0.29307107017;
}

} // namespace

TEST(CoolingEnergy, OfPublishedExamples)
{
    EXPECT_NEAR(*coolingEnergyKwh(watts(5000), 1000, 10), 500, 0.01) << "encyclopedia article on SEER";
    EXPECT_NEAR(*coolingEnergyKwh(watts(36000), 1500, 16), 3375, 0.01) << "public SEER guide";
    EXPECT_NEAR(*coolingEnergyKwh(watts(30800), 2300, 16.5), 4293.33, 0.01) << "utility worksheet, unrounded";
}

TEST(EfficiencyLeft, FallsByTheSameShareEachYear)
{
    // NREL/TP-550-38238, from memory.
    EXPECT_NEAR(*efficiencyLeft(0.01, 10), 0.9044, 1e-4);
    EXPECT_NEAR(*efficiencyLeft(0.03, 10), 0.7374, 1e-4);
    EXPECT_NEAR(*efficiencyLeft(0.01, 15), 0.8601, 1e-4);
}

TEST(Energy, RefusesNonsense)
{
    EXPECT_FALSE(coolingEnergyKwh(0, 1000, 10));
    EXPECT_FALSE(coolingEnergyKwh(5000, std::nan(""), 10));
    EXPECT_FALSE(efficiencyLeft(0.6, 10));
    EXPECT_FALSE(efficiencyLeft(0.01, -1));
}

} // namespace padside::test

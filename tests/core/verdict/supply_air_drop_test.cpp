// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/supply_air_drop.h"
#include "tests/core/verdict/verdict_fixture.h"

namespace padside::test {

namespace {

double kelvin(double fahrenheit)
{
    return (fahrenheit + 459.67) / 1.8;
}

} // namespace

// California Title 24 RA3.2, extract, from memory.
TEST(SupplyAirDrop, IsAsPrinted)
{
    EXPECT_NEAR(*targetSupplyAirDropK(kelvin(75), kelvin(63)), 18.6 * fahrenheitStep, 1e-6);
    EXPECT_NEAR(*targetSupplyAirDropK(kelvin(80), kelvin(67)), 18.3 * fahrenheitStep, 1e-6);
    EXPECT_NEAR(*targetSupplyAirDropK(kelvin(70), kelvin(57)), 19.1 * fahrenheitStep, 1e-6);
    EXPECT_NEAR(*targetSupplyAirDropK(kelvin(80), kelvin(69)), 16.4 * fahrenheitStep, 1e-6);
}

TEST(SupplyAirDrop, IsReadBetweenTheCells)
{
    EXPECT_NEAR(*targetSupplyAirDropK(kelvin(75), kelvin(62)), (19.9 + 18.6) / 2 * fahrenheitStep, 1e-6);
}

TEST(SupplyAirDrop, IsNotGuessedOutsideTheTable)
{
    EXPECT_FALSE(targetSupplyAirDropK(kelvin(69), kelvin(60)));
    EXPECT_FALSE(targetSupplyAirDropK(kelvin(75), kelvin(70)));
    EXPECT_FALSE(targetSupplyAirDropK(std::nan(""), kelvin(60)));
}

class SupplyAir : public VerdictTest
{
};

TEST_F(SupplyAir, ALargeDropMeansLittleAir)
{
    read("return-dry-bulb", "75 F");
    read("return-wet-bulb", "63 F");
    read("supply-dry-bulb", "51 F"); // 24 °F, 5.4 above the target
    EXPECT_EQ(judgementOf("supply-air-drop"), Judgement::outside);
    EXPECT_EQ(verdict("supply-air-drop")->side, Side::above);
}

} // namespace padside::test

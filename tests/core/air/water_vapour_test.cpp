// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/psychrometry.h"
#include "core/air/sweating.h"
#include "core/air/water_vapour.h"
#include "tests/support/check_rows.h"
#include "tests/support/typed_units.h"

#include <gtest/gtest.h>

namespace padside::test {

TEST(WaterVapour, HasTheSaturationPressureOfThePublishedTable)
{
    for (const CheckRow& row : checkRows("air_checks.csv", "sat_vapor_pressure_Pa")) {
        EXPECT_NEAR(saturationPressureOfWaterPa(celsius(row.number("T_C"))).value(), *row.expected, row.tolerance)
            << row.what;
    }
    for (const CheckRow& row : checkRows("air_checks.csv", "sat_vapor_pressure_psi")) {
        const double pressure = saturationPressureOfWaterPa(fahrenheit(row.number("T_F"))).value();
        EXPECT_NEAR(in("psia", pressure), *row.expected, row.tolerance) << row.what;
    }
}

TEST(WaterVapour, RisesWithEveryStepOfTemperatureAlsoAcrossFreezing)
{
    double below = saturationPressureOfWaterPa(lowestVapourTemperatureK).value();
    for (double at = lowestVapourTemperatureK + 0.05; at <= highestVapourTemperatureK; at += 0.05) {
        const double here = saturationPressureOfWaterPa(at).value();
        EXPECT_GT(here, below) << at;
        below = here;
    }
}

TEST(WaterVapour, HasOnePressureForIceAndWaterAtTheTriplePoint)
{
    // 611.657 Pa: International Association for the Properties of Water and Steam, from memory.
    EXPECT_NEAR(waterSaturationPa(triplePointK), 611.657, 0.01);
    EXPECT_NEAR(waterSaturationPa(triplePointK + 1e-9), waterSaturationPa(triplePointK), 0.01);
}

TEST(WaterVapour, TellsItsDewPointBackFromItsPressure)
{
    for (double at = lowestVapourTemperatureK; at <= highestVapourTemperatureK; at += 0.37) {
        const double pressure = saturationPressureOfWaterPa(at).value();
        EXPECT_NEAR(dewPointOfVapourK(pressure).value(), at, 1e-9) << at;
    }
    for (const double at : {273.14, 273.15, 273.155, 273.1599, 273.16, 273.1601, 273.17}) // nothing sticks there
        EXPECT_NEAR(dewPointOfVapourK(saturationPressureOfWaterPa(at).value()).value(), at, 2e-4) << at;
}

TEST(WaterVapour, RefusesWhatLiesOutsideTheEquations)
{
    for (const double at : {notANumber, endless, -endless, 173.1, 473.2, -5.0, 0.0}) {
        EXPECT_FALSE(saturationPressureOfWaterPa(at)) << at;
    }
    for (const double pressure : {notANumber, endless, -endless, 0.0, -1.0, 1e-4, 1.6e6})
        EXPECT_FALSE(dewPointOfVapourK(pressure)) << pressure;
    EXPECT_EQ(say(saturationPressureOfWaterPa(500).error().what),
              "226.9 °C is outside the range in which the pressure of water vapour is known, -100.0 °C to 200.0 °C.");
    EXPECT_EQ(say(dewPointOfVapourK(0).error().what),
              "Air this dry has its dew point below -100.0 °C, where it is not known any more.");
}

TEST(SweatMargin, IsHowFarASurfaceIsAboveTheDewPoint)
{
    EXPECT_DOUBLE_EQ(sweatMarginK(290, 287).value(), 3);
    EXPECT_DOUBLE_EQ(sweatMarginK(280, 287.5).value(), -7.5);
    EXPECT_FALSE(sweatMarginK(290, notANumber));
    EXPECT_FALSE(sweatMarginK(endless, 290));
}

} // namespace padside::test

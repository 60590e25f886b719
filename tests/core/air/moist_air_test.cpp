// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/moist_air.h"
#include "core/air/psychrometry.h"
#include "core/air/station_pressure.h"
#include "tests/support/typed_units.h"

#include <cmath>
#include <gmock/gmock.h>
#include <random>

namespace padside::test {

namespace {

using testing::HasSubstr;

MoistAir airOf(double dryBulbC, double humidity, double stationPa = seaLevelPressurePa)
{
    return moistAir({.dryBulbK = celsius(dryBulbC), .relativeHumidity = humidity}, stationPa).value();
}

std::string refusalOf(const AirReadings& readings, double stationPa = seaLevelPressurePa)
{
    const auto air = moistAir(readings, stationPa);
    if (air)
        return "taken";
    EXPECT_EQ(air.error().kind, ProblemKind::badInput);
    return say(air.error().what);
}

/// Every pair of the four readings of `air`.
std::vector<AirReadings> pairsOf(const MoistAir& air)
{
    return {{.dryBulbK = air.dryBulbK, .relativeHumidity = air.relativeHumidity},
            {.dryBulbK = air.dryBulbK, .wetBulbK = air.wetBulbK},
            {.dryBulbK = air.dryBulbK, .dewPointK = air.dewPointK},
            {.relativeHumidity = air.relativeHumidity, .wetBulbK = air.wetBulbK},
            {.relativeHumidity = air.relativeHumidity, .dewPointK = air.dewPointK},
            {.wetBulbK = air.wetBulbK, .dewPointK = air.dewPointK}};
}

/// Air of any place and season, the same every time.
std::vector<MoistAir> manyStates()
{
    std::mt19937 random(4); // NOLINT(bugprone-random-generator-seed): the same states each time
    std::uniform_real_distribution<double> temperature(-40, 55);
    std::uniform_real_distribution<double> humidity(0.01, 1);
    std::uniform_real_distribution<double> altitude(-300, 4000);
    std::vector<MoistAir> all;
    for (int i = 0; i < 3000; ++i)
        all.push_back(airOf(temperature(random), humidity(random), stationPressurePa(altitude(random)).value()));
    return all;
}

} // namespace

TEST(MoistAir, IsTheSameFromAnyTwoOfItsReadings)
{
    for (const MoistAir& air : manyStates()) {
        for (const AirReadings& pair : pairsOf(air)) {
            const auto again = moistAir(pair, air.stationPressurePa);
            ASSERT_TRUE(again) << say(again.error().what) << " at " << air.dryBulbK << " " << air.relativeHumidity;
            EXPECT_NEAR(again->dryBulbK, air.dryBulbK, 1e-5);
            EXPECT_NEAR(again->relativeHumidity, air.relativeHumidity, 1e-6);
            EXPECT_NEAR(again->dewPointK, air.dewPointK, 1e-4); // at 1 % humidity the bulbs tell it no better
            EXPECT_NEAR(again->humidityRatio, air.humidityRatio, 1e-9);
        }
    }
}

TEST(MoistAir, GivesBackWhatWasGiven)
{
    const MoistAir air = airOf(30, 0.5);
    for (const AirReadings& pair : pairsOf(air)) {
        const MoistAir again = moistAir(pair, seaLevelPressurePa).value();
        EXPECT_EQ(again.dryBulbK, pair.dryBulbK.value_or(again.dryBulbK));
        EXPECT_EQ(again.relativeHumidity, pair.relativeHumidity.value_or(again.relativeHumidity));
        EXPECT_EQ(again.wetBulbK, pair.wetBulbK.value_or(again.wetBulbK));
        EXPECT_EQ(again.dewPointK, pair.dewPointK.value_or(again.dewPointK));
    }
}

TEST(MoistAir, HasItsDewPointBelowItsWetBulbBelowItsDryBulb)
{
    for (const MoistAir& air : manyStates()) {
        for (const AirReadings& pair : pairsOf(air)) {
            const MoistAir again = moistAir(pair, air.stationPressurePa).value();
            EXPECT_LE(again.dewPointK, again.wetBulbK);
            EXPECT_LE(again.wetBulbK, again.dryBulbK);
            EXPECT_GT(again.relativeHumidity, 0);
            EXPECT_LE(again.relativeHumidity, 1);
        }
    }
}

TEST(MoistAir, SaturatedHasOneTemperature)
{
    for (const double temperature : {-25.0, -0.01, 0.0, 0.005, 0.01, 12.0, 49.0}) {
        for (const AirReadings& pair : pairsOf(airOf(temperature, 1))) {
            const MoistAir air = moistAir(pair, seaLevelPressurePa).value();
            EXPECT_NEAR(air.dryBulbK, celsius(temperature), 1e-6);
            EXPECT_NEAR(air.wetBulbK, celsius(temperature), 1e-6);
            EXPECT_NEAR(air.dewPointK, celsius(temperature), 2e-4); // ice and water meet within this
        }
    }
}

TEST(MoistAir, WithMoreWaterHasAHigherDewPointAndWetBulb)
{
    for (double temperature = -30; temperature <= 50; temperature += 4) {
        MoistAir drier = airOf(temperature, 0.02);
        for (double humidity = 0.03; humidity < 1; humidity += 0.01) {
            const MoistAir air = airOf(temperature, humidity);
            EXPECT_GT(air.dewPointK, drier.dewPointK);
            EXPECT_GT(air.humidityRatio, drier.humidityRatio);
            // Close to freezing a wet and an iced bulb are both right; see moistAir().
            if (std::abs(in("degC", air.wetBulbK)) > 1) {
                EXPECT_GT(air.wetBulbK, drier.wetBulbK) << temperature << " " << humidity;
            }
            drier = air;
        }
    }
}

TEST(MoistAir, HasAWetBulbThatItsOwnEquationAnswers)
{
    for (const MoistAir& air : manyStates()) {
        if (std::abs(in("degC", air.wetBulbK)) < 1e-6)
            continue; // on the step between wet and iced
        EXPECT_NEAR(humidityRatioFromBulbs(air.dryBulbK, air.wetBulbK, air.stationPressurePa), air.humidityRatio,
                    1e-11);
    }
}

TEST(MoistAir, NeedsExactlyTwoReadings)
{
    const std::string pattern
        = "Exactly two of dry bulb, relative humidity, wet bulb and dew point are needed to know the air; ";
    EXPECT_EQ(refusalOf({}), pattern + "0 are given.");
    EXPECT_EQ(refusalOf({.dryBulbK = 300}), pattern + "1 are given.");
    EXPECT_EQ(refusalOf({.dryBulbK = 300, .relativeHumidity = 0.5, .wetBulbK = 290}), pattern + "3 are given.");
    EXPECT_EQ(refusalOf({300, 0.5, 290, 280}), pattern + "4 are given.");
}

TEST(MoistAir, SaysWhichPairCanNotBe)
{
    EXPECT_EQ(refusalOf({.dryBulbK = celsius(20), .wetBulbK = celsius(21)}),
              "The wet bulb (21.0 °C) is above the dry bulb (20.0 °C), which never happens. Look at the two again.");
    EXPECT_EQ(refusalOf({.dryBulbK = celsius(20), .dewPointK = celsius(21)}),
              "The dew point (21.0 °C) is above the dry bulb (20.0 °C), which never happens. Look at the two again.");
    EXPECT_EQ(refusalOf({.wetBulbK = celsius(20), .dewPointK = celsius(21)}),
              "The dew point (21.0 °C) is above the wet bulb (20.0 °C), which never happens. Look at the two again.");
    EXPECT_EQ(refusalOf({.dryBulbK = celsius(40), .wetBulbK = celsius(5)}),
              "A wet bulb of 5.0 °C is colder than even dry air of 40.0 °C makes it. Look at the two again.");
    EXPECT_THAT(refusalOf({.relativeHumidity = 0.001, .dewPointK = celsius(60)}),
                HasSubstr("asks for air hotter than"));
    EXPECT_THAT(refusalOf({.relativeHumidity = 0.0001, .wetBulbK = celsius(60)}),
                HasSubstr("asks for air hotter than"));
    EXPECT_THAT(refusalOf({.dryBulbK = celsius(-60), .relativeHumidity = 0.001}),
                HasSubstr("dew point below -100.0 °C"));
    EXPECT_THAT(refusalOf({.dryBulbK = celsius(120), .relativeHumidity = 0.1}), HasSubstr("makes water boil"));
    EXPECT_EQ(refusalOf({.wetBulbK = celsius(80), .dewPointK = celsius(-20)}),
              "A wet bulb of 80.0 °C beside a dew point of -20.0 °C asks for air hotter than 200.0 °C.");
}

TEST(MoistAir, RefusesReadingsThatCanNotBe)
{
    EXPECT_EQ(refusalOf({.dryBulbK = 300, .relativeHumidity = 1.01}),
              "A relative humidity of 101.0 % can't be: it is above 0 and at most 100 %.");
    for (const double humidity : {0.0, -0.1, 50.0, notANumber, endless, -endless}) {
        EXPECT_THAT(refusalOf({.dryBulbK = 300, .relativeHumidity = humidity}), HasSubstr("relative humidity"))
            << humidity;
    }
    for (const double temperature : {notANumber, endless, -endless, 0.0, -300.0, 173.0, 473.3, 1e300}) {
        EXPECT_THAT(refusalOf({.dryBulbK = temperature, .relativeHumidity = 0.5}), HasSubstr("dry bulb"));
        EXPECT_THAT(refusalOf({.relativeHumidity = 0.5, .wetBulbK = temperature}), HasSubstr("wet bulb"));
        EXPECT_THAT(refusalOf({.relativeHumidity = 0.5, .dewPointK = temperature}), HasSubstr("dew point"));
    }
    for (const double station : {notANumber, endless, -endless, 0.0, -1.0, 19e3, 121e3})
        EXPECT_THAT(refusalOf({.dryBulbK = 300, .relativeHumidity = 0.5}, station), HasSubstr("station pressure"));
    EXPECT_EQ(refusalOf({.dryBulbK = notANumber, .relativeHumidity = 0.5}), "The dry bulb is not a number.");
}

TEST(MoistAir, KeepsItsPromisesForWhateverIsTyped)
{
    std::mt19937 random(11); // NOLINT(bugprone-random-generator-seed): the same states each time
    std::uniform_real_distribution<double> temperature(160, 490);
    std::uniform_real_distribution<double> humidity(-0.1, 1.1);
    std::uniform_real_distribution<double> station(15e3, 125e3);
    int taken = 0;
    for (int i = 0; i < 20000; ++i) {
        const MoistAir any{temperature(random), humidity(random), temperature(random), temperature(random), 0, 0, 0};
        const auto air = moistAir(pairsOf(any).at(static_cast<std::size_t>(i % 6)), station(random));
        if (!air)
            continue;
        ++taken;
        for (const double value :
             {air->dryBulbK, air->wetBulbK, air->dewPointK, air->humidityRatio, air->saturationPressurePa})
            EXPECT_TRUE(std::isfinite(value) && value > 0);
        EXPECT_LE(air->dewPointK, air->wetBulbK);
        EXPECT_LE(air->wetBulbK, air->dryBulbK);
        EXPECT_TRUE(air->relativeHumidity > 0 && air->relativeHumidity <= 1);
    }
    EXPECT_GT(taken, 500);
}

} // namespace padside::test

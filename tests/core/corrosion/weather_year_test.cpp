// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/surface_humidity.h"
#include "core/corrosion/time_of_wetness.h"
#include "core/corrosion/weather_year.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <vector>

namespace padside::test {

namespace {

constexpr double zeroCelsius = 273.15;

double kelvinOfFahrenheit(double fahrenheit)
{
    return (fahrenheit + 459.67) / 1.8;
}

} // namespace

// ISO 9223 counts hours with RH > 80 % and T > 0 °C; counted by hand.
TEST(TimeOfWetness, CountsHoursThatAreDampAndAboveFreezing)
{
    int wet = 0;
    for (const auto& [celsius, percent] :
         std::vector<std::pair<double, double>>{{5, 85}, {0, 95}, {-1, 99}, {10, 80}, {20, 81}, {1, 100}})
        wet += isWetHour(celsius + zeroCelsius, percent / 100) ? 1 : 0;
    EXPECT_EQ(wet, 3);
}

// ISO 9223:1992 in a handbook of corrosion engineering; the limit of 5500 hours from memory.
TEST(TimeOfWetness, HasFiveClasses)
{
    int tau = 1;
    for (const double upper : {10.0, 250.0, 2500.0, 5500.0}) {
        EXPECT_EQ(wetnessClass(upper), tau);
        EXPECT_EQ(wetnessClass(std::nextafter(upper, 1e9)), ++tau);
    }
    EXPECT_EQ(wetnessClass(0), 1);
    EXPECT_EQ(wetnessClass(8766), 5);
}

// 81.284 and 92.079 % were computed outside this project by Magnus' formula; the equations of Hyland and Wexler, which
// are used here, lie up to 0.04 (of 100) from them.
TEST(SurfaceHumidity, IsHigherAtAColdSurface)
{
    EXPECT_NEAR(100 * surfaceHumidity(25 + zeroCelsius, 0.6, 20 + zeroCelsius).value(), 81.284, 0.05);
    EXPECT_NEAR(100 * surfaceHumidity(25 + zeroCelsius, 0.6, 18 + zeroCelsius).value(), 92.079, 0.05);
    EXPECT_EQ(surfaceHumidity(25 + zeroCelsius, 0.6, 16 + zeroCelsius).value(), 1); // below the dew point of 16.7 °C
    EXPECT_NEAR(surfaceHumidity(25 + zeroCelsius, 0.6, 25 + zeroCelsius).value(), 0.6, 1e-12);
}

// Air and surface in °F; margins of 19.2, -2.6 and 3.8 °F to the dew point computed outside this project.
TEST(SurfaceHumidity, BelowTheDewPointASurfaceSweats)
{
    EXPECT_TRUE(sweats(kelvinOfFahrenheit(90), 0.60, kelvinOfFahrenheit(55)).value());
    EXPECT_FALSE(sweats(kelvinOfFahrenheit(90), 0.40, kelvinOfFahrenheit(65)).value());
    EXPECT_TRUE(sweats(kelvinOfFahrenheit(60), 0.80, kelvinOfFahrenheit(50)).value());
    // A margin of a tenth of a degree more or less turns the answer round.
    EXPECT_TRUE(sweats(kelvinOfFahrenheit(60), 0.80, kelvinOfFahrenheit(53.7)).value());
    EXPECT_FALSE(sweats(kelvinOfFahrenheit(60), 0.80, kelvinOfFahrenheit(53.9)).value());
    EXPECT_FALSE(sweats(280, 1, 280).value());
    EXPECT_FALSE(sweats(270, 1, 280).value());
}

TEST(WeatherYear, WeighsEachStepByHowLongItLasts)
{
    // An hour of 20 °C and 50 %, then four quarter-hours of 10 °C and 90 %.
    std::vector<WeatherStep> steps{{20 + zeroCelsius, 0.5, 1}};
    for (int quarter = 0; quarter < 4; ++quarter)
        steps.push_back({10 + zeroCelsius, 0.9, 0.25});
    const WeatherYear year = digestWeather(steps, 8 + zeroCelsius).value();
    EXPECT_NEAR(year.hours, 2, 1e-12);
    EXPECT_NEAR(year.meanTemperatureK, 15 + zeroCelsius, 1e-9);
    EXPECT_NEAR(year.meanHumidity, 0.7, 1e-12);
    EXPECT_NEAR(year.wetHours, 1, 1e-12);
    EXPECT_NEAR(year.wetHoursPerYear, 4383, 1e-9);
    EXPECT_EQ(year.wetnessClass, 4);
    // Dew points 9.3 and 8.4 °C: both above 8 °C; above 9 °C only the first.
    EXPECT_EQ(year.sweatingShare, 1);
    EXPECT_NEAR(digestWeather(steps, 9 + zeroCelsius)->sweatingShare, 0.5, 1e-12);
    EXPECT_FALSE(year.coversWholeYears());
}

TEST(WeatherYear, HoursAndQuarterHoursOfTheSameWeatherAgree)
{
    std::vector<WeatherStep> hourly;
    std::vector<WeatherStep> quarterly;
    for (int hour = 0; hour < 8760; ++hour) {
        const double temperatureK
            = zeroCelsius + 12 + 10 * std::sin(hour / 8760.0 * 6.283) + 4 * std::sin(hour * 0.2618);
        const double humidity = 0.7 - 0.25 * std::sin(hour * 0.2618);
        hourly.push_back({temperatureK, humidity, 1});
        for (int quarter = 0; quarter < 4; ++quarter)
            quarterly.push_back({temperatureK, humidity, 0.25});
    }
    const WeatherYear a = digestWeather(hourly, 281).value();
    const WeatherYear b = digestWeather(quarterly, 281).value();
    EXPECT_TRUE(a.coversWholeYears());
    EXPECT_NEAR(a.meanTemperatureK, b.meanTemperatureK, 1e-9);
    EXPECT_NEAR(a.meanHumidity, b.meanHumidity, 1e-12);
    EXPECT_NEAR(a.wetHours, b.wetHours, 1e-6);
    EXPECT_NEAR(a.sweatingHours, b.sweatingHours, 1e-6);
    EXPECT_GT(a.wetHours, 0);
    EXPECT_GT(a.sweatingHours, 0);
}

TEST(WeatherYear, AColderSurfaceNeverSweatsLess)
{
    std::vector<WeatherStep> steps;
    for (int hour = 0; hour < 500; ++hour)
        steps.push_back({zeroCelsius - 10 + hour % 45, 0.2 + 0.016 * (hour % 50), 1});
    double last = 0;
    for (double surface = 40; surface >= -30; surface -= 1) {
        const WeatherYear year = digestWeather(steps, surface + zeroCelsius).value();
        EXPECT_GE(year.sweatingHours, last);
        double bySweats = 0;
        for (const WeatherStep& step : steps)
            bySweats += sweats(step.temperatureK, step.humidity, surface + zeroCelsius).value() ? step.hours : 0;
        EXPECT_EQ(year.sweatingHours, bySweats);
        last = year.sweatingHours;
    }
    EXPECT_GT(last, 0);
}

TEST(WeatherYear, WhatCanNotBeIsRefused)
{
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    const std::vector<WeatherStep> one{{290, 0.5, 1}};
    EXPECT_TRUE(digestWeather(one, 281));
    EXPECT_FALSE(digestWeather({}, 281));
    EXPECT_FALSE(digestWeather(one, nan));
    EXPECT_FALSE(digestWeather(one, 20));
    EXPECT_FALSE(digestWeather(std::vector<WeatherStep>{{600, 0.5, 1}}, 281));
    EXPECT_FALSE(surfaceHumidity(290, 1.1, 281));
    EXPECT_FALSE(surfaceHumidity(290, nan, 281));
    EXPECT_FALSE(sweats(nan, 0.5, 281));
}

} // namespace padside::test

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/weather_year.h"

#include "core/corrosion/saturation.h"
#include "core/corrosion/time_of_wetness.h"

#include <cmath>

namespace padside {

namespace {

constexpr double hoursInAYear = 8766; // 365.25 days

} // namespace

bool WeatherYear::coversWholeYears() const
{
    constexpr double fewDays = 20 * 24.0;
    const double years = std::round(hours / hoursInAYear);
    return years >= 1 && std::abs(hours - years * hoursInAYear) <= fewDays;
}

std::optional<WeatherYear> digestWeather(std::span<const WeatherStep> steps, double surfaceK)
{
    WeatherYear year;
    double degreeHours = 0;
    double humidityHours = 0;
    const double surfacePa = saturationPressurePa(surfaceK);
    for (const WeatherStep& step : steps) {
        year.hours += step.hours;
        degreeHours += step.temperatureK * step.hours;
        humidityHours += step.humidity * step.hours;
        if (isWetHour(step.temperatureK, step.humidity))
            year.wetHours += step.hours;
        // As sweats(), but with the pressure at the surface worked out once.
        if (step.temperatureK > surfaceK && step.humidity * saturationPressurePa(step.temperatureK) > surfacePa)
            year.sweatingHours += step.hours;
    }
    if (!(year.hours > 0))
        return std::nullopt;
    year.meanTemperatureK = degreeHours / year.hours;
    year.meanHumidity = humidityHours / year.hours;
    year.wetHoursPerYear = year.wetHours * hoursInAYear / year.hours;
    year.wetnessClass = wetnessClass(year.wetHoursPerYear);
    year.sweatingShare = year.sweatingHours / year.hours;
    return year;
}

} // namespace padside

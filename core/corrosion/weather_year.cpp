// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/weather_year.h"

#include "core/air/water_vapour.h"
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

Result<WeatherYear> digestWeather(std::span<const WeatherStep> steps, double surfaceK)
{
    WeatherYear year;
    double degreeHours = 0;
    double humidityHours = 0;
    const auto atSurface = saturationPressureOfWaterPa(surfaceK);
    if (!atSurface)
        return tl::unexpected(atSurface.error());
    for (const WeatherStep& step : steps) {
        year.hours += step.hours;
        degreeHours += step.temperatureK * step.hours;
        humidityHours += step.humidity * step.hours;
        if (isWetHour(step.temperatureK, step.humidity))
            year.wetHours += step.hours;
        // As sweats(), but the pressure at the surface is worked out once, and not at all for air that is no warmer.
        if (step.temperatureK <= surfaceK)
            continue;
        const auto atAir = saturationPressureOfWaterPa(step.temperatureK);
        if (!atAir)
            return tl::unexpected(atAir.error());
        if (step.humidity * *atAir > *atSurface)
            year.sweatingHours += step.hours;
    }
    if (!(year.hours > 0))
        return problem(ProblemKind::badInput, PADSIDE_SAY("There is no weather to take means of."));
    year.meanTemperatureK = degreeHours / year.hours;
    year.meanHumidity = humidityHours / year.hours;
    year.wetHoursPerYear = year.wetHours * hoursInAYear / year.hours;
    year.wetnessClass = wetnessClass(year.wetHoursPerYear);
    year.sweatingShare = year.sweatingHours / year.hours;
    return year;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/problem.h"

#include <span>

namespace padside {

/// The air over one step of time.
struct WeatherStep
{
    double temperatureK = 0;
    double humidity = 0; ///< relative, 0..1
    double hours = 1; ///< how long it stands for, > 0
};

/// What a year (or less, or more) of weather comes to.
struct WeatherYear
{
    double hours = 0; ///< covered by values
    double meanTemperatureK = 0;
    double meanHumidity = 0; ///< 0..1
    double wetHours = 0; ///< as counted, see isWetHour()
    double wetHoursPerYear = 0; ///< the same for 8766 hours
    int wetnessClass = 1; ///< tau 1..5
    double sweatingHours = 0; ///< the surface is below the dew point of the air
    double sweatingShare = 0; ///< of the hours covered, 0..1

    /// Whether the hours come to whole years, give or take a few days: only then are the means those of a year.
    [[nodiscard]] bool coversWholeYears() const;
};

/// Means and hours of `steps`, each weighing as long as it lasts. `surfaceK` is the temperature of the surface that may
/// sweat. Problem: no step, or a temperature of air or surface outside -100..200 °C.
[[nodiscard]] Result<WeatherYear> digestWeather(std::span<const WeatherStep> steps, double surfaceK);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/problem.h"

#include <optional>
#include <span>
#include <string_view>

namespace padside {

enum class TemperatureScale { celsius, fahrenheit, kelvin };

/// A column of temperatures.
struct TemperatureColumn
{
    std::size_t place = 0;
    TemperatureScale scale = TemperatureScale::celsius;

    [[nodiscard]] double celsiusOf(double value) const;
};

/// A column of relative humidities.
struct HumidityColumn
{
    std::size_t place = 0;
    double perUnit = 1; ///< per cent for one of its units: 1, or 100 for fractions
};

/// Where a CSV file of weather holds what, told by the names of its columns.
struct WeatherColumns
{
    TemperatureColumn temperature;
    std::optional<HumidityColumn> humidity;
    std::optional<TemperatureColumn> dewPoint;
    std::optional<std::size_t> date; ///< a date alone
    std::optional<std::size_t> time; ///< a time, with its date unless that stands apart
};

/// The columns of these names: words, in any case, with the unit as one of them ("temperature_C", "Dew point (°F)",
/// "RH [%]"). Temperatures of the ground, of wet bulbs and extremes are passed over. Problem: no temperature, neither
/// humidity nor dew point, or one of these without a unit. `fileName` is for the sentence.
[[nodiscard]] Result<WeatherColumns> weatherColumns(std::span<const std::string_view> names, std::string_view fileName);

} // namespace padside

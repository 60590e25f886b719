// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/corrosion/weather_year.h"
#include "core/quantity/problem.h"

#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// A row of a weather file that could not be used, and why.
struct WeatherFault
{
    std::size_t line = 0; ///< of the file, counted from 1
    Sentence what;
};

/// How many faults are kept with their sentences; further ones are only counted.
constexpr std::size_t mostWeatherFaults = 20;

/// What could be read of a weather file.
struct WeatherFile
{
    std::string place; ///< as the file names it; EPW only
    std::vector<WeatherStep> steps; ///< one for each row used
    std::size_t skipped = 0; ///< rows not used
    std::size_t gaps = 0; ///< of these, rows in which a value is missing (99.9 °C or 999 % in EPW; an empty cell)
    std::vector<WeatherFault> faults; ///< the first of the rows not used, by line
    std::vector<Sentence> notes; ///< what had to be taken for granted
};

/// Reads hourly (or finer, or coarser) weather from text: an EPW file (EnergyPlus weather format: begins with
/// "LOCATION"; dry bulb, dew point and relative humidity are the 7th to 9th values of a row), or CSV whose first line
/// names the columns with their units: a temperature (temperature_C, "Air temperature (°F)"), a relative humidity
/// (rh_percent) or dew point (dew_point_C), and, so that rows weigh by their time, a time (2026-05-04 14:00; date and
/// time may stand apart). A row stands for the time to the next one; before a gap of more than six hours, and at the
/// end, for as long as the row before it did. Bad rows and gaps cost only themselves. Problem: a file without a usable
/// row, or CSV whose columns can't be told.
[[nodiscard]] Result<WeatherFile> readWeatherFile(std::string_view text, std::string_view name);

} // namespace padside

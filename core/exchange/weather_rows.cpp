// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/weather_rows.h"

#include "core/air/water_vapour.h"
#include "core/exchange/blanks.h"
#include "core/exchange/quotable.h"
#include "core/quantity/digit.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace padside {

namespace {

constexpr double zeroCelsiusK = 273.15;
constexpr double coldestC = -90; // colder, and hotter, than any air measured at a weather station
constexpr double hottestC = 70;
constexpr double mostPercent = 110; // the EPW data dictionary allows gauges to read up to 110; 100 is what there is

bool meansNothing(std::string_view text)
{
    constexpr std::array<std::string_view, 12> words{"",    "NA",  "N/A",  "na",   "n/a", "NaN",
                                                     "nan", "NAN", "null", "NULL", "-",   "--"};
    return std::ranges::count(words, text) > 0;
}

constexpr auto isBad = WeatherValue::Is::bad;
constexpr auto isMissing = WeatherValue::Is::missing;
constexpr auto isANumber = WeatherValue::Is::number;

bool isWithin(const WeatherValue& value, double low, double high)
{
    return value.is == isANumber && value.value >= low && value.value <= high;
}

/// Digits with at most one "." ("-12.5"), up to fifteen of them: as exact as std::from_chars, for both numbers of the
/// division are, and a good deal quicker. Anything else: false.
bool readPlainDecimal(std::string_view text, double& value)
{
    constexpr std::size_t mostDigits = 15;
    constexpr std::array<double, mostDigits + 1> powersOfTen{1,   1e1, 1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                                             1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};
    const bool negative = text.starts_with('-');
    std::int64_t digits = 0;
    std::size_t count = 0;
    std::size_t decimals = 0;
    bool behindPoint = false;
    for (const char character : text.substr(negative ? 1 : 0)) {
        if (isDigit(character)) {
            digits = digits * 10 + (character - '0');
            decimals += behindPoint ? 1U : 0U;
            if (++count > mostDigits)
                return false;
        } else if (character == '.' && !behindPoint) {
            behindPoint = true;
        } else {
            return false;
        }
    }
    if (count == 0)
        return false;
    value = static_cast<double>(negative ? -digits : digits) / powersOfTen[decimals];
    return true;
}

} // namespace

WeatherValue weatherValue(std::string_view text)
{
    const std::string_view said = withoutBlanks(text);
    std::string_view number = said;
    WeatherValue value{isBad, 0};
    if (number.starts_with('+'))
        number.remove_prefix(1);
    if (readPlainDecimal(number, value.value)) {
        value.is = isANumber;
        return value;
    }
    const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value.value);
    if (error == std::errc() && end == number.data() + number.size() && std::isfinite(value.value))
        value.is = isANumber;
    else if (meansNothing(said))
        value.is = isMissing;
    return value;
}

WeatherValue unlessCode(WeatherValue value, std::initializer_list<double> codes)
{
    constexpr double leastCode = 99; // nearly all values are below: not worth a look at the codes
    if (value.is == isANumber && std::abs(value.value) >= leastCode && std::ranges::count(codes, value.value) > 0)
        value.is = isMissing;
    return value;
}

WeatherRows::WeatherRows(std::string_view name)
    : m_name(name)
{
}

void WeatherRows::skip(std::size_t line, std::string pattern, const std::vector<std::string>& more)
{
    ++m_file.skipped;
    if (m_file.faults.size() >= mostWeatherFaults)
        return;
    std::vector<Argument> arguments{m_name, static_cast<std::int64_t>(line)};
    arguments.insert(arguments.end(), more.begin(), more.end());
    m_file.faults.push_back({line, Sentence{std::move(pattern), std::move(arguments)}});
}

void WeatherRows::skipGap(std::size_t line, std::string pattern)
{
    ++m_file.gaps;
    skip(line, std::move(pattern));
}

std::optional<double> WeatherRows::humidityOf(const WeatherRow& row)
{
    if (isWithin(row.humidityPercent, 0, mostPercent))
        return std::min(1.0, row.humidityPercent.value / 100);
    if (row.humidityPercent.is != isMissing) {
        skip(row.line, PADSIDE_SAY("{0}, line {1}: “{2}” is no relative humidity from 0 to 110 %. The row is skipped."),
             {quotable(row.humidityText)});
        return std::nullopt;
    }
    if (row.dewPointC.is == isMissing) {
        skipGap(row.line, PADSIDE_SAY("{0}, line {1}: the humidity is missing. The row is skipped."));
        return std::nullopt;
    }
    if (!isWithin(row.dewPointC, coldestC, row.temperatureC.value)) {
        skip(row.line,
             PADSIDE_SAY("{0}, line {1}: “{2}” is no dew point of this air: it lies between -90 °C and the air's "
                         "temperature. The row is skipped."),
             {quotable(row.dewPointText)});
        return std::nullopt;
    }
    return std::min(1.0,
                    *saturationPressureOfWaterPa(row.dewPointC.value + zeroCelsiusK)
                        / *saturationPressureOfWaterPa(row.temperatureC.value + zeroCelsiusK));
}

bool WeatherRows::add(const WeatherRow& row)
{
    if (row.temperatureC.is == isMissing) {
        skipGap(row.line, PADSIDE_SAY("{0}, line {1}: the temperature is missing. The row is skipped."));
        return false;
    }
    if (!isWithin(row.temperatureC, coldestC, hottestC)) {
        skip(row.line,
             PADSIDE_SAY("{0}, line {1}: “{2}” is no temperature of air (from -90 °C to 70 °C). The row is skipped."),
             {quotable(row.temperatureText)});
        return false;
    }
    const auto humidity = humidityOf(row);
    if (!humidity)
        return false;
    m_file.steps.push_back({row.temperatureC.value + zeroCelsiusK, *humidity, row.hours});
    return true;
}

Result<WeatherFile> WeatherRows::finish()
{
    if (!m_file.steps.empty())
        return std::move(m_file);
    if (m_file.faults.empty())
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("{0} holds no row of weather. Check that it is the right file, and whole."),
                       {m_name});
    return problem(
        ProblemKind::badInput,
        PADSIDE_SAY("{0} holds no row of weather that can be used (rows: {1}). The first is line {2}: check "
                    "that it is the right file."),
        {m_name, static_cast<std::int64_t>(m_file.skipped), static_cast<std::int64_t>(m_file.faults.front().line)});
}

} // namespace padside

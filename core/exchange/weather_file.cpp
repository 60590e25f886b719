// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/blanks.h"
#include "core/exchange/line_reader.h"
#include "core/exchange/quotable.h"
#include "core/exchange/weather_rows.h"
#include "core/quantity/digit.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace padside {

namespace {

constexpr std::size_t usualRows = 8784;
constexpr double missingTemperatureC = 99.9; // the EPW data dictionary's codes for a value that is missing
constexpr double missingHumidity = 999;

/// The places of what is read, from the EPW data dictionary.
enum Place : std::size_t { dryBulb = 6, dewPoint = 7, humidity = 8, placesRead = 9 };

/// The first values of a row; how many there are.
std::size_t cutValues(std::string_view line, std::array<std::string_view, placesRead>& values)
{
    std::size_t count = 0;
    while (count < values.size()) {
        const auto comma = line.find(',');
        values[count++] = line.substr(0, comma);
        if (comma == std::string_view::npos)
            break;
        line.remove_prefix(comma + 1);
    }
    return count;
}

/// Reads an EPW file line by line: headings, then rows.
class EpwReader
{
public:
    explicit EpwReader(std::string_view name)
        : m_rows(name)
    {
        m_rows.file().steps.reserve(usualRows);
    }

    Result<WeatherFile> read(std::string_view text)
    {
        LineReader lines(text);
        std::string_view line;
        while (lines.next(line)) {
            if (withoutBlanks(line).empty())
                continue;
            m_inRows = m_inRows || isDigit(line.front());
            if (m_inRows)
                row(line, lines.number());
            else
                heading(line);
        }
        return m_rows.finish();
    }

private:
    void heading(std::string_view line)
    {
        std::array<std::string_view, placesRead> values;
        cutValues(line, values);
        if (values[0] == "LOCATION") {
            m_rows.file().place = quotable(withoutBlanks(values[1]));
        } else if (values[0] == "DATA PERIODS") {
            perHour(withoutBlanks(values[2]));
            m_inRows = true;
        }
    }

    void perHour(std::string_view text)
    {
        constexpr int minutes = 60;
        int count = 0;
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), count);
        if (error == std::errc() && end == text.data() + text.size() && count >= 1 && count <= minutes)
            m_hours = 1.0 / count;
        else
            m_rows.note({PADSIDE_SAY("{0} does not say how many rows make an hour (“{1}”): one is taken."),
                         {m_rows.name(), quotable(text)}});
    }

    void row(std::string_view line, std::size_t number)
    {
        const std::size_t count = cutValues(line, m_values);
        if (count < placesRead) {
            m_rows.skip(number,
                        PADSIDE_SAY("{0}, line {1}: values in this row: {2}, but the humidity is the ninth. The row is "
                                    "skipped."),
                        {std::to_string(count)});
            return;
        }
        WeatherRow& one = m_row;
        one.line = number;
        one.hours = m_hours;
        one.temperatureText = m_values[dryBulb];
        one.humidityText = m_values[humidity];
        one.temperatureC = unlessCode(weatherValue(m_values[dryBulb]), {missingTemperatureC});
        one.humidityPercent = unlessCode(weatherValue(m_values[humidity]), {missingHumidity});
        if (one.humidityPercent.is == WeatherValue::Is::missing) {
            one.dewPointText = m_values[dewPoint];
            one.dewPointC = unlessCode(weatherValue(m_values[dewPoint]), {missingTemperatureC});
        }
        m_rows.add(one);
    }

    std::array<std::string_view, placesRead> m_values; // of the row being read, as m_row: made once, not for each
    WeatherRow m_row;
    WeatherRows m_rows;
    double m_hours = 1;
    bool m_inRows = false;
};

} // namespace

Result<WeatherFile> readEpw(std::string_view text, std::string_view name)
{
    return EpwReader(name).read(text);
}

Result<WeatherFile> readWeatherFile(std::string_view text, std::string_view name)
{
    constexpr std::size_t longName = 200;
    const std::string quoted = quotable(name, longName);
    LineReader lines(text);
    std::string_view first;
    while (lines.next(first) && withoutBlanks(first).empty()) { }
    return withoutBlanks(first).starts_with("LOCATION,") ? readEpw(text, quoted) : readWeatherCsv(text, quoted);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/blanks.h"
#include "core/exchange/line_reader.h"
#include "core/exchange/quotable.h"
#include "core/exchange/weather_columns.h"
#include "core/exchange/weather_rows.h"
#include "core/exchange/weather_time.h"

#include <cmath>
#include <utility>

namespace padside {

namespace {

constexpr std::size_t usualCsvRows = 8784;

/// Cells of one line; those in quotation marks come without them. False: a quotation mark is out of place.
bool cutCells(std::string_view line, std::vector<std::string_view>& cells)
{
    cells.clear();
    while (true) {
        std::size_t end = line.find(',');
        if (line.starts_with('"')) {
            const auto closing = line.find('"', 1);
            if (closing == std::string_view::npos || (closing + 1 < line.size() && line[closing + 1] != ','))
                return false;
            cells.push_back(line.substr(1, closing - 1));
            end = closing + 1 < line.size() ? closing + 1 : std::string_view::npos;
        } else {
            cells.push_back(line.substr(0, end));
        }
        if (end == std::string_view::npos)
            return true;
        line.remove_prefix(end + 1);
    }
}

/// Hours a row stands for where its file says no times: told by how many rows there are.
std::optional<double> hoursByCount(std::size_t rows)
{
    for (const double hours : {1.0, 0.5, 0.25, 1.0 / 6, 1.0 / 12, 1.0 / 60, 3.0, 6.0}) {
        for (const int year : {8760, 8784}) {
            if (std::lround(static_cast<double>(rows) * hours * 1000) == year * 1000L)
                return hours;
        }
    }
    return std::nullopt;
}

/// How long rows stand for: from the times of this and the next row.
class RowHours
{
public:
    /// A row at this time is about to be read. Answers how long the row before it stands for; empty at the first row,
    /// and where the gap is none that one row can fill.
    std::optional<double> next(std::int64_t minutes)
    {
        constexpr double mostHours = 6;
        constexpr double minutesInAnHour = 60;
        const auto before = std::exchange(m_last, minutes);
        if (!before)
            return std::nullopt;
        const double hours = static_cast<double>(minutes - *before) / minutesInAnHour;
        if (hours <= 0 || hours > mostHours)
            return std::nullopt;
        m_usual = hours;
        if (!m_first)
            m_first = hours;
        return hours;
    }
    [[nodiscard]] std::optional<double> usual() const { return m_usual; } ///< of the row before
    [[nodiscard]] std::optional<double> first() const { return m_first; }

private:
    std::optional<std::int64_t> m_last;
    std::optional<double> m_usual;
    std::optional<double> m_first;
};

/// Reads a CSV file of weather row by row.
class WeatherCsvReader
{
public:
    explicit WeatherCsvReader(std::string_view name)
        : m_rows(name)
    {
        m_rows.file().steps.reserve(usualCsvRows);
    }

    Result<WeatherFile> read(std::string_view text)
    {
        LineReader lines(text);
        std::string_view line;
        while (lines.next(line) && withoutBlanks(line).empty()) { }
        if (auto bad = headings(line))
            return tl::unexpected(*std::move(bad));
        while (lines.next(line)) {
            if (!withoutBlanks(line).empty())
                row(line, lines.number());
        }
        weigh();
        return m_rows.finish();
    }

private:
    static constexpr double notYet = 0; // hours of a row before its next one is read

    std::optional<Problem> headings(std::string_view line)
    {
        if (!cutCells(line, m_cells))
            return problem(ProblemKind::badInput,
                           PADSIDE_SAY("{0}: a quotation mark in the first line is out of place. That line must name "
                                       "the columns."),
                           {m_rows.name()})
                .value();
        if (line.find(',') == std::string_view::npos && line.find_first_of(";\t") != std::string_view::npos)
            return problem(ProblemKind::badInput,
                           PADSIDE_SAY("{0} has semicolons or tabs between its values. Save it with commas, and “.” "
                                       "as decimal sign."),
                           {m_rows.name()})
                .value();
        const auto columns = weatherColumns(m_cells, m_rows.name());
        if (!columns)
            return columns.error();
        m_columns = *columns;
        m_count = m_cells.size();
        return std::nullopt;
    }

    /// The time of the row in m_cells. True without one, where there are no times; false where it is bad.
    bool takeTime(std::size_t number)
    {
        if (!m_columns.time && !m_columns.date)
            return true;
        const bool apart = m_columns.time && m_columns.date;
        const std::string_view said = m_cells[m_columns.time ? *m_columns.time : *m_columns.date];
        // A column of times may hold the date too, with a column for the date beside it.
        auto minutes = m_clock.minutes(said);
        if (!minutes && apart)
            minutes = weatherMinutes(m_cells[*m_columns.date], said);
        if (!minutes) {
            m_rows.skip(number,
                        PADSIDE_SAY("{0}, line {1}: “{2}” is no time. Write it like 2026-05-04 14:00. The row is "
                                    "skipped."),
                        {quotable(said)});
            return false;
        }
        const auto hoursBefore = m_hours.next(*minutes);
        if (m_lastUsed)
            m_rows.file().steps.back().hours = hoursBefore ? *hoursBefore : m_hours.usual().value_or(notYet);
        m_lastUsed = false;
        return true;
    }

    WeatherValue inCelsius(const TemperatureColumn& column) const
    {
        WeatherValue value = unlessCode(weatherValue(m_cells[column.place]), {999, -999, 9999, -9999, 999.9, -999.9});
        if (column.scale == TemperatureScale::celsius)
            return unlessCode(value, {99.9});
        if (value.is == WeatherValue::Is::number)
            value.value = column.celsiusOf(value.value);
        return value;
    }

    void row(std::string_view line, std::size_t number)
    {
        if (!cutCells(line, m_cells)) {
            m_rows.skip(number, PADSIDE_SAY("{0}, line {1}: a quotation mark is out of place. The row is skipped."));
            return;
        }
        if (m_cells.size() != m_count) {
            m_rows.skip(number,
                        PADSIDE_SAY("{0}, line {1}: values in this row: {2}, but columns: {3}. The row is skipped."),
                        {std::to_string(m_cells.size()), std::to_string(m_count)});
            return;
        }
        if (!takeTime(number))
            return;
        WeatherRow& one = m_row;
        one.line = number;
        one.hours = notYet;
        one.temperatureText = m_cells[m_columns.temperature.place];
        one.temperatureC = inCelsius(m_columns.temperature);
        if (m_columns.humidity) {
            one.humidityText = m_cells[m_columns.humidity->place];
            one.humidityPercent = unlessCode(weatherValue(one.humidityText), {999, -999, 9999, -9999, 999.9, -999.9});
            one.humidityPercent.value *= m_columns.humidity->perUnit;
        }
        if (m_columns.dewPoint) {
            one.dewPointText = m_cells[m_columns.dewPoint->place];
            one.dewPointC = inCelsius(*m_columns.dewPoint);
        }
        m_lastUsed = m_rows.add(one);
    }

    /// Gives hours to the rows that have none yet: all, where there are no times; else those before the first gap that
    /// could be told, and the last.
    void weigh()
    {
        const WeatherFile& file = m_rows.file();
        std::optional<double> first = m_hours.first();
        if (!first)
            first = hoursByCount(file.steps.size() + file.skipped);
        if (!first && !file.steps.empty())
            m_rows.note(
                {PADSIDE_SAY("{0} does not say how long a row stands for: an hour is taken."), {m_rows.name()}});
        double hours = first.value_or(1);
        for (WeatherStep& step : m_rows.file().steps) {
            if (step.hours == notYet)
                step.hours = hours;
            hours = step.hours;
        }
    }

    WeatherRows m_rows;
    WeatherColumns m_columns;
    std::vector<std::string_view> m_cells; // of the row being read, as m_row: made once, not for each
    WeatherRow m_row;
    std::size_t m_count = 0;
    WeatherClock m_clock;
    RowHours m_hours;
    bool m_lastUsed = false;
};

} // namespace

Result<WeatherFile> readWeatherCsv(std::string_view text, std::string_view name)
{
    return WeatherCsvReader(name).read(text);
}

} // namespace padside

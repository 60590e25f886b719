// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/exchange/weather_file.h"

#include <optional>

namespace padside {

/// A value of a weather row: a number, missing, or neither.
struct WeatherValue
{
    enum class Is { number, missing, bad };
    Is is = Is::missing;
    double value = 0;
};

/// A number with "." as its decimal sign; empty text and words for nothing ("NA", "-") are missing.
[[nodiscard]] WeatherValue weatherValue(std::string_view text);

/// Missing where the value is one of the codes that stand for that (99 or more, or -99 or less); else as it
/// is.
[[nodiscard]] WeatherValue unlessCode(WeatherValue value, std::initializer_list<double> codes);

/// One row, as its file gives it.
struct WeatherRow
{
    std::size_t line = 0;
    double hours = 1;
    WeatherValue temperatureC;
    WeatherValue humidityPercent;
    WeatherValue dewPointC; ///< used where the humidity is missing
    /// What the file says there, for the sentence about a bad row.
    std::string_view temperatureText;
    std::string_view humidityText;
    std::string_view dewPointText;
};

/// Gathers rows: what can be used becomes a step, the rest is counted and named.
class WeatherRows
{
public:
    explicit WeatherRows(std::string_view name);

    /// True if the row was used.
    bool add(const WeatherRow& row);
    /// `pattern` has {0} for the file and {1} for the line; further arguments follow.
    void skip(std::size_t line, std::string pattern, const std::vector<std::string>& more = {});
    void note(Sentence what) { m_file.notes.push_back(std::move(what)); }

    [[nodiscard]] WeatherFile& file() { return m_file; }
    [[nodiscard]] const std::string& name() const { return m_name; }
    /// The file, or a Problem if no row could be used.
    [[nodiscard]] Result<WeatherFile> finish();

private:
    [[nodiscard]] std::optional<double> humidityOf(const WeatherRow& row);
    void skipGap(std::size_t line, std::string pattern);

    std::string m_name;
    WeatherFile m_file;
};

/// Each reads one form; `name` is that of the file, fit to be quoted.
[[nodiscard]] Result<WeatherFile> readEpw(std::string_view text, std::string_view name);
[[nodiscard]] Result<WeatherFile> readWeatherCsv(std::string_view text, std::string_view name);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/weather_columns.h"

#include "core/exchange/quotable.h"
#include "core/quantity/digit.h"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <vector>

namespace padside {

namespace {

using Names = std::initializer_list<std::string_view>;

/// The words of a column's name, in small letters; "%" is one by itself.
std::vector<std::string> wordsOf(std::string_view name)
{
    std::vector<std::string> words;
    bool open = false;
    for (char character : name) {
        if (character >= 'A' && character <= 'Z')
            character = static_cast<char>(character - 'A' + 'a');
        const bool belongs = (character >= 'a' && character <= 'z') || isDigit(character);
        if (character == '%')
            words.emplace_back("%");
        else if (belongs && open)
            words.back() += character;
        else if (belongs)
            words.emplace_back(1, character);
        open = belongs;
    }
    return words;
}

/// A column's name, taken apart.
class ColumnName
{
public:
    explicit ColumnName(std::string_view name)
        : m_words(wordsOf(name))
    {
    }

    [[nodiscard]] bool has(Names any) const
    {
        return std::ranges::any_of(any, [this](auto word) { return std::ranges::count(m_words, word) > 0; });
    }
    [[nodiscard]] bool beginsWith(std::string_view word) const { return !m_words.empty() && m_words[0] == word; }

    [[nodiscard]] bool isDewPoint() const { return has({"dew", "dewpoint", "td"}); }
    [[nodiscard]] bool isHumidity() const
    {
        return has({"rh", "humidity", "relhum"}) && !has({"absolute", "specific"});
    }
    [[nodiscard]] bool isTemperature() const
    {
        const bool other = isDewPoint() || isHumidity()
            || has({"wet", "wetbulb", "soil", "ground", "surface", "water", "sea", "road", "sky", "max", "min",
                    "apparent", "felt", "feels", "index", "chill"});
        return !other && (has({"temperature", "temp", "drybulb", "ta"}) || has({"dry"}) || beginsWith("t"));
    }
    [[nodiscard]] bool isTime() const { return has({"time", "timestamp", "datetime"}) && !has({"zone"}); }
    [[nodiscard]] bool isDate() const { return has({"date", "day"}); }

    [[nodiscard]] std::optional<TemperatureScale> scale() const
    {
        if (has({"c", "degc", "celsius"}))
            return TemperatureScale::celsius;
        if (has({"f", "degf", "fahrenheit"}))
            return TemperatureScale::fahrenheit;
        if (has({"k", "kelvin"}))
            return TemperatureScale::kelvin;
        return std::nullopt;
    }
    [[nodiscard]] std::optional<double> percentPerUnit() const
    {
        if (has({"%", "percent", "pct"}))
            return 1;
        if (has({"fraction", "ratio", "1"}))
            return 100;
        return std::nullopt;
    }

private:
    std::vector<std::string> m_words;
};

tl::unexpected<Problem> noUnit(std::string_view fileName, std::string_view column, std::string_view example)
{
    return problem(ProblemKind::badInput,
                   PADSIDE_SAY("{0}: the name of the column “{1}” has no unit. Write it with one, like {2}."),
                   {std::string(fileName), quotable(column), std::string(example)});
}

tl::unexpected<Problem> noColumn(std::string_view fileName, std::string pattern)
{
    return problem(ProblemKind::badInput, std::move(pattern), {std::string(fileName)});
}

} // namespace

double TemperatureColumn::celsiusOf(double value) const
{
    constexpr double zeroCelsius = 273.15;
    switch (scale) {
    case TemperatureScale::fahrenheit:
        return (value - 32) / 1.8;
    case TemperatureScale::kelvin:
        return value - zeroCelsius;
    case TemperatureScale::celsius:
        break;
    }
    return value;
}

Result<WeatherColumns> weatherColumns(std::span<const std::string_view> names, std::string_view fileName)
{
    WeatherColumns columns;
    bool hasTemperature = false;
    for (std::size_t place = 0; place < names.size(); ++place) {
        const ColumnName name(names[place]);
        if (name.isTime()) {
            columns.time = columns.time.value_or(place);
        } else if (name.isDate()) {
            columns.date = columns.date.value_or(place);
        } else if (name.isDewPoint() || name.isTemperature()) {
            const auto scale = name.scale();
            if (!scale)
                return noUnit(fileName, names[place], name.isDewPoint() ? "dew_point_C" : "temperature_C");
            if (name.isDewPoint() && !columns.dewPoint)
                columns.dewPoint = TemperatureColumn{place, *scale};
            if (name.isTemperature() && !hasTemperature)
                columns.temperature = {place, *scale};
            hasTemperature = hasTemperature || name.isTemperature();
        } else if (name.isHumidity() && !columns.humidity) {
            const auto perUnit = name.percentPerUnit();
            if (!perUnit)
                return noUnit(fileName, names[place], "rh_percent");
            columns.humidity = HumidityColumn{place, *perUnit};
        }
    }
    if (!hasTemperature)
        return noColumn(fileName,
                        PADSIDE_SAY("{0} has no column of temperatures. Its first line must name one with its unit, "
                                    "like temperature_C."));
    if (!columns.humidity && !columns.dewPoint)
        return noColumn(fileName,
                        PADSIDE_SAY("{0} has no column of humidities. Its first line must name one with its unit, like "
                                    "rh_percent or dew_point_C."));
    return columns;
}

} // namespace padside

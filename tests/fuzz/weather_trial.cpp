// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fuzz/weather_trial.h"

#include "core/exchange/utf8.h"
#include "core/exchange/weather_words.h"

#include <cmath>

namespace padside::test {

namespace {

std::string faultOfSentence(const Sentence& sentence)
{
    constexpr std::size_t longest = 600;
    const std::string said = say(sentence);
    if (said.empty() || said.size() > longest)
        return "a sentence of " + std::to_string(said.size()) + " bytes";
    if (utf8Length(said) != said.size())
        return "a sentence that is not UTF-8";
    for (const char character : said) {
        if (character >= 0 && character < ' ')
            return "a sentence with a control character";
    }
    return {};
}

bool isWithin(double value, double low, double high)
{
    return value >= low && value <= high; // not so for NaN
}

std::string faultOfYear(const WeatherFile& file, const WeatherYear& year)
{
    const double most = 1 + 6.0 * static_cast<double>(file.steps.size());
    if (!isWithin(year.hours, 0, most) || !isWithin(year.wetHours, 0, most) || !isWithin(year.sweatingHours, 0, most))
        return "hours that can't be";
    if (!isWithin(year.meanTemperatureK, 183, 344) || !isWithin(year.meanHumidity, 0, 1 + 1e-9)
        || !isWithin(year.sweatingShare, 0, 1 + 1e-9) || !isWithin(year.wetHoursPerYear, 0, 8766.001))
        return "means that can't be";
    for (const Sentence& sentence : weatherSaid(year, 281.15)) {
        const std::string said = say(sentence);
        if (said.find("nan") != std::string::npos || said.find("inf") != std::string::npos)
            return "no number: " + said;
    }
    for (const Sentence& sentence : weatherReservations(file, year, mostWeatherFaults)) {
        if (auto fault = faultOfSentence(sentence); !fault.empty())
            return fault;
    }
    return {};
}

} // namespace

std::string faultOfWeather(std::string_view bytes)
{
    const auto file = readWeatherFile(bytes, "weather");
    if (!file)
        return faultOfSentence(file.error().what);
    if (file->gaps > file->skipped || file->faults.size() > mostWeatherFaults)
        return "counts that can't be";
    const auto year = digestWeather(file->steps, 281.15);
    return year ? faultOfYear(*file, *year) : "rows were read, but no year: " + say(year.error().what);
}

} // namespace padside::test

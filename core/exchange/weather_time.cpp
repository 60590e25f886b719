// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/weather_time.h"

#include "core/exchange/blanks.h"
#include "core/quantity/digit.h"

#include <chrono>

namespace padside {

namespace {

/// Takes `digits` digits from the front; -1 if they are not there.
int takeNumber(std::string_view& text, std::size_t digits)
{
    if (text.size() < digits)
        return -1;
    int number = 0;
    for (std::size_t i = 0; i < digits; ++i) {
        if (!isDigit(text[i]))
            return -1;
        number = number * 10 + (text[i] - '0');
    }
    text.remove_prefix(digits);
    return number;
}

bool takeSign(std::string_view& text, std::string_view any)
{
    if (text.empty() || any.find(text.front()) == std::string_view::npos)
        return false;
    text.remove_prefix(1);
    return true;
}

/// Minutes of the day from "14:00" or "9:30" on.
std::optional<std::int64_t> minutesOfDay(std::string_view text)
{
    const int hour = takeNumber(text, text.size() > 1 && text[1] == ':' ? 1 : 2);
    if (hour < 0 || hour > 24 || !takeSign(text, ":"))
        return std::nullopt;
    const int minute = takeNumber(text, 2);
    if (minute < 0 || minute > 59 || (hour == 24 && minute > 0))
        return std::nullopt;
    return hour * 60 + minute;
}

/// Minutes up to midnight before the day at the front of `text`, which is taken.
std::optional<std::int64_t> minutesToDay(std::string_view& text)
{
    const int year = takeNumber(text, 4);
    const bool first = takeSign(text, "-/");
    const int month = takeNumber(text, 2);
    const bool second = takeSign(text, "-/");
    const int day = takeNumber(text, 2);
    if (year < 0 || month < 0 || day < 0 || !first || !second)
        return std::nullopt;
    const std::chrono::year_month_day date(std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                           std::chrono::day(static_cast<unsigned>(day)));
    if (!date.ok())
        return std::nullopt;
    constexpr std::int64_t minutesInADay = 1440;
    return std::chrono::sys_days(date).time_since_epoch().count() * minutesInADay;
}

} // namespace

std::optional<std::int64_t> weatherMinutes(std::string_view text)
{
    return WeatherClock().minutes(text);
}

std::optional<std::int64_t> WeatherClock::minutes(std::string_view text)
{
    text = withoutBlanks(text);
    std::optional<std::int64_t> day;
    if (m_day && text.starts_with(m_dayText)) {
        day = m_day;
        text.remove_prefix(m_dayText.size());
    } else {
        const std::string_view whole = text;
        day = minutesToDay(text);
        m_day = day;
        m_dayText = whole.substr(0, whole.size() - text.size());
    }
    if (!day || text.empty())
        return day;
    if (!takeSign(text, "T "))
        return std::nullopt;
    const auto minutes = minutesOfDay(withoutBlanks(text));
    return minutes ? std::optional(*day + *minutes) : std::nullopt;
}

std::optional<std::int64_t> weatherMinutes(std::string_view date, std::string_view time)
{
    std::string_view text = withoutBlanks(date);
    const auto day = minutesToDay(text);
    const auto minutes = minutesOfDay(withoutBlanks(time));
    return day && minutes && text.empty() ? std::optional(*day + *minutes) : std::nullopt;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/date.h"

#include <cstdlib>
#include <fmt/format.h>

namespace padside {

namespace {

/// Reads exactly the digits text[from, from+count), which must lie in the text; below 0 if any is not a digit.
int digits(std::string_view text, std::size_t from, std::size_t count)
{
    int value = 0;
    for (std::size_t place = from; place < from + count; ++place) {
        const int digit = text[place] - '0';
        if (digit < 0 || digit > 9)
            return -1;
        value = value * 10 + digit;
    }
    return value;
}

} // namespace

std::optional<Date> parseDate(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return std::nullopt;
    const int year = digits(text, 0, 4);
    const int month = digits(text, 5, 2);
    const int day = digits(text, 8, 2);
    if (year < 0 || month < 0 || day < 0)
        return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                           std::chrono::day(static_cast<unsigned>(day))};
    if (!date.ok())
        return std::nullopt;
    return Date(date);
}

std::string isoText(Date date)
{
    const std::chrono::year_month_day parts(date);
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(parts.year()), static_cast<unsigned>(parts.month()),
                       static_cast<unsigned>(parts.day()));
}

Date addMonths(Date date, int months)
{
    std::chrono::year_month_day parts(date);
    parts += std::chrono::months(months);
    if (!parts.ok())
        parts = parts.year() / parts.month() / std::chrono::last;
    return Date(parts);
}

double yearsBetween(Date from, Date to)
{
    return static_cast<double>((to - from).count()) / daysInAYear;
}

Date mondayOfWeek(int year, int week)
{
    // 4 January always lies in week 1 (ISO 8601).
    const Date fourth = std::chrono::year(year) / std::chrono::January / 4;
    const std::chrono::weekday weekday(fourth);
    return fourth - (weekday - std::chrono::Monday) + std::chrono::weeks(week - 1);
}

int yearOf(Date date)
{
    return static_cast<int>(std::chrono::year_month_day(date).year());
}

std::string instantText(const Instant& instant)
{
    const auto local = instant.utc + instant.offset;
    const Date day = std::chrono::floor<std::chrono::days>(local);
    const std::chrono::hh_mm_ss time(local - day);
    const auto offset = instant.offset.count();
    return fmt::format("{}T{:02}:{:02}:{:02}{}{:02}:{:02}", isoText(day), time.hours().count(), time.minutes().count(),
                       time.seconds().count(), offset < 0 ? '-' : '+', std::abs(offset) / 60, std::abs(offset) % 60);
}

std::optional<Instant> parseInstant(std::string_view text)
{
    if (text.size() != 25 || text[10] != 'T' || text[13] != ':' || text[16] != ':' || text[22] != ':')
        return std::nullopt;
    const auto date = parseDate(text.substr(0, 10));
    const int hour = digits(text, 11, 2);
    const int minute = digits(text, 14, 2);
    const int second = digits(text, 17, 2);
    const int offsetHours = digits(text, 20, 2);
    const int offsetMinutes = digits(text, 23, 2);
    const bool signOk = text[19] == '+' || text[19] == '-';
    if (!date || hour < 0 || minute < 0 || second < 0 || offsetHours < 0 || offsetMinutes < 0 || !signOk)
        return std::nullopt;
    if (hour > 23 || minute > 59 || second > 59 || offsetHours > 18 || offsetMinutes > 59)
        return std::nullopt;
    const std::chrono::minutes offset((text[19] == '-' ? -1 : 1) * (offsetHours * 60 + offsetMinutes));
    const auto local = *date + std::chrono::hours(hour) + std::chrono::minutes(minute) + std::chrono::seconds(second);
    return Instant{std::chrono::sys_seconds(local - offset), offset};
}

Date localDate(const Instant& instant)
{
    return std::chrono::floor<std::chrono::days>(instant.utc + instant.offset);
}

} // namespace padside

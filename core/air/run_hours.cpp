// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/run_hours.h"

#include <array>
#include <optional>
#include <string>

namespace padside {

namespace {

constexpr int minutesInHour = 60;
constexpr int hoursInDay = 24;

std::string_view trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(' ');
    return first == std::string_view::npos ? std::string_view()
                                           : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

/// A whole number of one or two digits.
std::optional<int> shortNumber(std::string_view text)
{
    if (text.empty() || text.size() > 2)
        return std::nullopt;
    int value = 0;
    for (const char digit : text) {
        if (digit < '0' || digit > '9')
            return std::nullopt;
        value = value * 10 + (digit - '0');
    }
    return value;
}

/// "22", "22:30" or "22.30" as minutes since midnight.
std::optional<int> minuteOfDay(std::string_view text)
{
    text = trimmed(text);
    const auto sign = text.find_first_of(":.");
    const auto hour = shortNumber(text.substr(0, sign));
    const auto minute = sign == std::string_view::npos ? std::optional(0) : shortNumber(text.substr(sign + 1));
    if (!hour || !minute || *minute >= minutesInHour || *hour > hoursInDay || (*hour == hoursInDay && *minute > 0))
        return std::nullopt;
    return *hour % hoursInDay * minutesInHour + *minute;
}

} // namespace

Result<RunHours> parseRunHours(std::string_view text)
{
    for (const std::string_view dash : std::array<std::string_view, 3>{"-", "\u2013", "\u2014"}) {
        const auto place = text.find(dash);
        if (place == std::string_view::npos)
            continue;
        const auto from = minuteOfDay(text.substr(0, place));
        const auto to = minuteOfDay(text.substr(place + dash.size()));
        if (from && to)
            return RunHours{*from, *to};
    }
    return problem(ProblemKind::badInput,
                   PADSIDE_SAY("“{0}” is no time from and to. Write the hours the unit runs like 22:00-6:00."),
                   {std::string(text)});
}

} // namespace padside

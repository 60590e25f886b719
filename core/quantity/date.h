// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace padside {

/// A calendar date where the unit stands (no time of day, no zone). Days can be counted and compared.
using Date = std::chrono::sys_days;

/// Reads "2026-05-04" (ISO 8601, extended form); anything else, also a day that does not exist, is empty.
[[nodiscard]] std::optional<Date> parseDate(std::string_view text);

/// "2026-05-04".
[[nodiscard]] std::string isoText(Date date);

/// The same day `months` later (or earlier, if negative); the 31st becomes the last day of a shorter month.
[[nodiscard]] Date addMonths(Date date, int months);

/// A year of exposure, trends and intervals.
constexpr double daysInAYear = 365.25;

/// Years from `from` to `to` (negative if `to` is earlier), a year being 365.25 days.
[[nodiscard]] double yearsBetween(Date from, Date to);

/// The Monday of ISO 8601 week `week` (1..53) of `year`.
[[nodiscard]] Date mondayOfWeek(int year, int week);

/// The calendar year of a date.
[[nodiscard]] int yearOf(Date date);

/// A moment: UTC seconds since 1970 with the local offset that held where it was written down.
struct Instant
{
    std::chrono::sys_seconds utc{};
    std::chrono::minutes offset{0};

    friend bool operator==(const Instant&, const Instant&) = default;
};

/// "2026-05-04T14:03:11+02:00" (RFC 3339).
[[nodiscard]] std::string instantText(const Instant& instant);

/// Reads what instantText writes; anything else is empty.
[[nodiscard]] std::optional<Instant> parseInstant(std::string_view text);

/// The calendar date at the place where the instant was written down.
[[nodiscard]] Date localDate(const Instant& instant);

} // namespace padside

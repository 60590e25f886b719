// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"
#include "core/schedule/check.h"

#include <span>
#include <string>
#include <string_view>

namespace padside {

/// One check with what a calendar shows of it.
struct CalendarEntry
{
    Check check;
    Date tripOn{}; ///< the day it is planned for
    std::string unitTag;
    std::string siteName;
};

/// The checks as iCalendar (RFC 5545): a whole-day event from the first to the last day of each window, which does not
/// block the day; its text holds the reason, the conditions and the planned day. `stamp` is the moment of writing
/// (DTSTAMP). A check keeps its UID from one export to the next, so a calendar that reads both shows it once, with its
/// newer window. Without entries the calendar has no event, which not every program accepts.
[[nodiscard]] std::string calendarText(std::span<const CalendarEntry> entries, const Instant& stamp,
                                       const Speaker& speaker = plainEnglish());

/// A content line as RFC 5545, 3.1 wants it: at most 75 bytes before each CRLF, continued behind a blank, never cut
/// inside a character.
[[nodiscard]] std::string foldedLine(std::string_view line);

/// Text as RFC 5545, 3.3.11 wants it: backslash, semicolon and comma behind a backslash, line breaks as \n, other
/// control characters left out.
[[nodiscard]] std::string escapedText(std::string_view text);

} // namespace padside

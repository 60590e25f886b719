// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/icalendar.h"
#include "core/exchange/utf8.h"
#include "tests/support/record_builder.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <set>
#include <vector>

namespace padside {

namespace {

using test::day;
using testing::HasSubstr;
using testing::Not;

const Instant stamp = parseInstant("2026-05-04T14:03:11+02:00").value();

CalendarEntry lookAgain()
{
    CalendarEntry entry;
    entry.check.unitId = UnitId(UuidBytes{1});
    entry.check.zoneId = ZoneId(UuidBytes{2});
    entry.check.what = {"{0}, {1}: look again", {Word{"Suction accumulator"}, Word{"bottom"}}};
    entry.check.earliest = day("2026-09-14");
    entry.check.latest = day("2026-10-31");
    entry.check.conditions = {Condition::dry, Condition::off};
    entry.check.why = {"Grade {0} since {1}; wet when last seen.", {std::int64_t{3}, day("2025-05-06")}};
    entry.tripOn = day("2026-10-12");
    entry.unitTag = "HB-03";
    entry.siteName = "Quay House, north";
    return entry;
}

std::vector<std::string> linesOf(const std::string& text)
{
    std::vector<std::string> lines;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = text.find("\r\n", begin);
        if (end == std::string::npos) {
            ADD_FAILURE() << "the last line has no CRLF";
            break;
        }
        lines.push_back(text.substr(begin, end - begin));
        begin = end + 2;
    }
    return lines;
}

/// As RFC 5545, 3.1 tells a reader to do it.
std::string unfolded(std::string text)
{
    for (std::size_t place = 0; (place = text.find("\r\n ", place)) != std::string::npos;)
        text.erase(place, 3);
    return text;
}

} // namespace

// The UID's end is FNV-1a (64 bits) of the summary's sentence, worked out apart.
// RFC 5545: 3.4 and 3.6 (calendar and event), 3.6.1 (UID, DTSTAMP; DTEND is not part of the event), 3.3.4 and 3.3.5
// (dates, UTC).
TEST(CalendarText, HasAnEventForTheWindowOfACheck)
{
    const std::vector entries{lookAgain()};
    const std::string text = unfolded(calendarText(entries, stamp));
    EXPECT_EQ(
        text,
        "BEGIN:VCALENDAR\r\n"
        "VERSION:2.0\r\n"
        "PRODID:-//Padside//Checks//EN\r\n"
        "CALSCALE:GREGORIAN\r\n"
        "BEGIN:VEVENT\r\n"
        "UID:01000000-0000-0000-0000-000000000000-02000000-0000-0000-0000-000000000000-b4bdeaee1b1e64d0@padside\r\n"
        "DTSTAMP:20260504T120311Z\r\n"
        "DTSTART;VALUE=DATE:20260914\r\n"
        "DTEND;VALUE=DATE:20261101\r\n"
        "SUMMARY:HB-03: Suction accumulator\\, bottom: look again\r\n"
        "LOCATION:Quay House\\, north\r\n"
        "DESCRIPTION:Grade 3 since 2025-05-06\\; wet when last seen.\\nNeeds: dry\\, unit off.\\nPlanned for "
        "2026-10-12.\r\n"
        "TRANSP:TRANSPARENT\r\n"
        "END:VEVENT\r\n"
        "END:VCALENDAR\r\n");
}

// RFC 5545, 3.8.4.7: a UID is globally unique, and stays with its event.
TEST(CalendarText, EachCheckHasAnIdentityThatStays)
{
    std::vector entries{lookAgain(), lookAgain(), lookAgain(), lookAgain()};
    entries[1].check.zoneId = ZoneId(UuidBytes{3});
    entries[2].check.what.pattern = "{0}, {1}: wipe dry";
    std::multiset<std::string> uids;
    for (const std::string& line : linesOf(unfolded(calendarText(entries, stamp)))) {
        if (line.starts_with("UID:"))
            uids.insert(line);
    }
    EXPECT_EQ(uids.size(), 4U);
    EXPECT_EQ(std::set(uids.begin(), uids.end()).size(), 4U) << "even where two checks are alike";

    entries.resize(1);
    const std::string before = linesOf(unfolded(calendarText(entries, stamp)))[5];
    entries[0].check.latest = day("2026-11-30");
    entries[0].check.why = {"Another reason.", {}};
    EXPECT_EQ(linesOf(unfolded(calendarText(entries, stamp)))[5], before) << "a moved window is still the same check";
}

// RFC 5545, 3.1: lines of at most 75 octets without the line break; no break inside a character is wanted.
TEST(CalendarText, NoLineIsLongerThan75BytesOrBrokenInsideACharacter)
{
    auto entry = lookAgain();
    entry.check.why.pattern
        = "Größe, Wärme, Kälte und die übrigen Übel – täglich größer; überall übermäßig öfter über Öl. “µ” ° °C";
    for (int shift = 0; shift < 5; ++shift) {
        entry.check.why.pattern.insert(0, "x");
        const std::vector entries{entry};
        const std::string text = calendarText(entries, stamp);
        for (const std::string& line : linesOf(text)) {
            EXPECT_LE(line.size(), 75U);
            EXPECT_EQ(utf8Length(line), line.size()) << line;
        }
        EXPECT_THAT(unfolded(text), HasSubstr(escapedText(entry.check.why.pattern)));
    }
}

TEST(CalendarText, ALineOfExactly75BytesIsNotFolded)
{
    EXPECT_EQ(foldedLine(std::string(75, 'a')), std::string(75, 'a') + "\r\n");
    EXPECT_EQ(foldedLine(std::string(76, 'a')), std::string(75, 'a') + "\r\n a\r\n");
    EXPECT_EQ(foldedLine(std::string(150, 'a')), std::string(75, 'a') + "\r\n " + std::string(74, 'a') + "\r\n a\r\n");
    EXPECT_EQ(foldedLine(""), "\r\n");
    EXPECT_EQ(unfolded(foldedLine(std::string(1000, '\xBF'))), std::string(1000, '\xBF') + "\r\n")
        << "malformed text ends too";
}

// RFC 5545, 3.3.11.
TEST(CalendarText, BackslashSemicolonCommaAndLineBreakAreEscaped)
{
    EXPECT_EQ(escapedText("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."),
              "Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
    EXPECT_EQ(escapedText("a\\b;c,d:e\"f"), "a\\\\b\\;c\\,d:e\"f");
    EXPECT_EQ(escapedText("one\r\ntwo\rthree\nfour"), "one\\ntwo\\nthree\\nfour");
    EXPECT_EQ(escapedText(std::string("a\0b\x07\tc\x7f", 7)), "ab\tc");
}

TEST(CalendarText, AnEventCannotBeForgedByATag)
{
    auto entry = lookAgain();
    entry.unitTag = "X\r\nEND:VEVENT\r\nBEGIN:VEVENT";
    const std::vector entries{entry};
    const std::string text = calendarText(entries, stamp);
    EXPECT_THAT(unfolded(text), HasSubstr("SUMMARY:X\\nEND:VEVENT\\nBEGIN:VEVENT: Suction"));
    EXPECT_EQ(std::ranges::count(linesOf(text), "END:VEVENT"), 1);
}

TEST(CalendarText, ACheckOfTheWholeUnitWithoutSiteOrConditionsHasWhatItHas)
{
    auto entry = lookAgain();
    entry.check.zoneId.reset();
    entry.check.conditions.clear();
    entry.siteName.clear();
    const std::vector entries{entry};
    const std::string text = unfolded(calendarText(entries, stamp));
    EXPECT_THAT(text, Not(HasSubstr("LOCATION")));
    EXPECT_THAT(text, Not(HasSubstr("Needs")));
    EXPECT_THAT(text, HasSubstr("UID:01000000-0000-0000-0000-000000000000-b4bdeaee1b1e64d0@padside\r\n"));
}

} // namespace padside

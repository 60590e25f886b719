// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/icalendar.h"

#include <cstdint>
#include <fmt/format.h>
#include <map>

namespace padside {

namespace {

constexpr std::size_t mostBytesInLine = 75;

bool continuesCharacter(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

std::string basicDate(Date date)
{
    const std::chrono::year_month_day parts(date);
    return fmt::format("{:04}{:02}{:02}", static_cast<int>(parts.year()), static_cast<unsigned>(parts.month()),
                       static_cast<unsigned>(parts.day()));
}

std::string utcStamp(const Instant& instant)
{
    const Date day = std::chrono::floor<std::chrono::days>(instant.utc);
    const std::chrono::hh_mm_ss time(instant.utc - day);
    return fmt::format("{}T{:02}{:02}{:02}Z", basicDate(day), time.hours().count(), time.minutes().count(),
                       time.seconds().count());
}

/// FNV-1a, 64 bits: tells checks of one zone apart by what they ask for, the same in every run.
std::uint64_t fingerprint(std::string_view text)
{
    std::uint64_t hash = 14695981039346656037U;
    for (const char byte : text)
        hash = (hash ^ static_cast<unsigned char>(byte)) * 1099511628211U;
    return hash;
}

std::string lastingName(const Check& check)
{
    std::string name = check.unitId.text();
    if (check.followUpId)
        name += "-" + check.followUpId->text();
    else if (check.zoneId)
        name += "-" + check.zoneId->text();
    else if (check.partId)
        name += "-" + check.partId->text();
    return name + fmt::format("-{:016x}", fingerprint(say(check.what)));
}

std::string conditionsText(const Check& check, const Speaker& speaker)
{
    std::string text;
    for (const Condition condition : check.conditions)
        text += (text.empty() ? "" : ", ") + speaker.translate(std::string(wordOf(condition)));
    return text;
}

std::string description(const CalendarEntry& entry, const Speaker& speaker)
{
    std::string text = say(entry.check.why, speaker);
    if (!entry.check.conditions.empty())
        text += "\n" + say({PADSIDE_SAY("Needs: {0}."), {conditionsText(entry.check, speaker)}}, speaker);
    return text + "\n" + say({PADSIDE_SAY("Planned for {0}."), {entry.tripOn}}, speaker);
}

std::string eventText(const CalendarEntry& entry, const std::string& uid, const std::string& stamp,
                      const Speaker& speaker)
{
    std::string text = foldedLine("BEGIN:VEVENT");
    text += foldedLine("UID:" + uid);
    text += foldedLine("DTSTAMP:" + stamp);
    text += foldedLine("DTSTART;VALUE=DATE:" + basicDate(entry.check.earliest));
    text += foldedLine("DTEND;VALUE=DATE:"
                       + basicDate(entry.check.latest + std::chrono::days(1))); // the first day after
    text += foldedLine("SUMMARY:" + escapedText(entry.unitTag + ": " + say(entry.check.what, speaker)));
    if (!entry.siteName.empty())
        text += foldedLine("LOCATION:" + escapedText(entry.siteName));
    text += foldedLine("DESCRIPTION:" + escapedText(description(entry, speaker)));
    text += foldedLine("TRANSP:TRANSPARENT");
    return text + foldedLine("END:VEVENT");
}

} // namespace

std::string calendarText(std::span<const CalendarEntry> entries, const Instant& stamp, const Speaker& speaker)
{
    std::string text = foldedLine("BEGIN:VCALENDAR") + foldedLine("VERSION:2.0")
        + foldedLine("PRODID:-//Padside//Checks//EN") + foldedLine("CALSCALE:GREGORIAN");
    std::map<std::string, int> used;
    for (const CalendarEntry& entry : entries) {
        std::string uid = lastingName(entry.check);
        if (const int times = ++used[uid]; times > 1)
            uid += "-" + std::to_string(times);
        text += eventText(entry, uid + "@padside", utcStamp(stamp), speaker);
    }
    return text + foldedLine("END:VCALENDAR");
}

std::string foldedLine(std::string_view line)
{
    std::string folded;
    std::size_t room = mostBytesInLine;
    while (line.size() > room) {
        std::size_t cut = room;
        while (cut > 1 && continuesCharacter(line[cut]))
            --cut;
        folded += line.substr(0, cut);
        folded += "\r\n ";
        line.remove_prefix(cut);
        room = mostBytesInLine - 1; // the blank counts
    }
    folded += line;
    return folded + "\r\n";
}

std::string escapedText(std::string_view text)
{
    std::string escaped;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char character = text[i];
        const bool control = static_cast<unsigned char>(character) < 0x20 || character == 0x7f;
        if (character == '\\' || character == ';' || character == ',')
            escaped += std::string("\\") + character;
        else if (character == '\n' || (character == '\r' && text.substr(i + 1, 1) != "\n"))
            escaped += "\\n";
        else if (!control || character == '\t')
            escaped += character;
    }
    return escaped;
}

} // namespace padside

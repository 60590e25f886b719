// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/number_text.h"

#include "core/quantity/digit.h"

#include <array>

namespace padside {

namespace {

constexpr std::array<std::string_view, 7> blanks{" ", "\t", "\n", "\r", "\u00a0", "\u202f", "\u2009"};
constexpr std::string_view minusSign = "\u2212";

/// Bytes of the blank that stands at the start; 0 if there is none.
std::size_t blankAtStart(std::string_view text)
{
    for (const std::string_view blank : blanks) {
        if (text.starts_with(blank))
            return blank.size();
    }
    return 0;
}

std::size_t blankAtEnd(std::string_view text)
{
    for (const std::string_view blank : blanks) {
        if (text.ends_with(blank))
            return blank.size();
    }
    return 0;
}

/// "e3", "E-3" behind a digit belongs to the number; the "e" of a unit does not.
bool exponentStandsAt(std::string_view text, std::size_t place)
{
    if ((text[place] != 'e' && text[place] != 'E') || place == 0 || !isDigit(text[place - 1]))
        return false;
    std::size_t next = place + 1;
    if (next < text.size() && (text[next] == '-' || text[next] == '+'))
        ++next;
    return next < text.size() && isDigit(text[next]);
}

} // namespace

std::string_view trimmed(std::string_view text)
{
    while (const std::size_t bytes = blankAtStart(text))
        text.remove_prefix(bytes);
    while (const std::size_t bytes = blankAtEnd(text))
        text.remove_suffix(bytes);
    return text;
}

std::string withPlainSigns(std::string_view text)
{
    std::string plain;
    for (text = trimmed(text); !text.empty();) {
        if (const std::size_t bytes = blankAtStart(text)) {
            plain += ' ';
            text.remove_prefix(bytes);
        } else if (text.starts_with(minusSign)) {
            plain += '-';
            text.remove_prefix(minusSign.size());
        } else {
            plain += text.front();
            text.remove_prefix(1);
        }
    }
    return plain;
}

std::size_t lengthOfNumber(std::string_view text)
{
    constexpr std::string_view between = "-+/ "; // part of a number only if digits follow
    std::size_t end = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (isDigit(text[i]) || text[i] == '.' || text[i] == ',' || exponentStandsAt(text, i))
            end = i + 1;
        else if (between.find(text[i]) == std::string_view::npos)
            break;
    }
    return end;
}

} // namespace padside

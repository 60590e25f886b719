// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/id.h"

#include <utility>

namespace padside {

namespace {

constexpr std::string_view hexDigits = "0123456789abcdef";

int hexValue(char character)
{
    if (character >= '0' && character <= '9')
        return character - '0';
    if (character >= 'a' && character <= 'f')
        return character - 'a' + 10;
    if (character >= 'A' && character <= 'F')
        return character - 'A' + 10;
    return -1;
}

bool dashStandsAt(std::size_t place)
{
    return place == 8 || place == 13 || place == 18 || place == 23;
}

} // namespace

std::string uuidText(const UuidBytes& bytes)
{
    std::string text;
    text.reserve(36);
    for (const std::uint8_t byte : bytes) {
        if (dashStandsAt(text.size()))
            text += '-';
        text += hexDigits[byte >> 4];
        text += hexDigits[byte & 15];
    }
    return text;
}

std::optional<UuidBytes> parseUuid(std::string_view text)
{
    if (text.size() != 36)
        return std::nullopt;
    UuidBytes bytes{};
    std::size_t nibble = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (dashStandsAt(i)) {
            if (text[i] != '-')
                return std::nullopt;
            continue;
        }
        const int value = hexValue(text[i]);
        if (value < 0)
            return std::nullopt;
        bytes[nibble / 2] = static_cast<std::uint8_t>(bytes[nibble / 2] << 4 | value);
        ++nibble;
    }
    return bytes;
}

IdMaker::IdMaker(MillisecondClock now, std::uint64_t seed)
    : m_now(std::move(now))
    , m_random(seed)
{
}

UuidBytes IdMaker::next()
{
    // RFC 9562, 6.2 method 1: a counter in rand_a keeps order within a millisecond; a clock that steps back is held.
    std::int64_t millisecond = m_now();
    if (millisecond <= m_lastMillisecond) {
        millisecond = m_lastMillisecond;
        if (++m_counter > 0x0fff) {
            ++millisecond;
            m_counter = 0;
        }
    } else {
        m_counter = static_cast<std::uint16_t>(m_random() & 0x03ff);
    }
    m_lastMillisecond = millisecond;

    UuidBytes bytes{};
    for (std::size_t i = 0; i < 6; ++i)
        bytes[i] = static_cast<std::uint8_t>(millisecond >> (40 - 8 * i));
    bytes[6] = static_cast<std::uint8_t>(0x70 | m_counter >> 8);
    bytes[7] = static_cast<std::uint8_t>(m_counter);
    const std::uint64_t random = m_random();
    for (std::size_t i = 0; i < 8; ++i)
        bytes[8 + i] = static_cast<std::uint8_t>(random >> (8 * i));
    bytes[8] = static_cast<std::uint8_t>((bytes[8] & 0x3f) | 0x80);
    return bytes;
}

} // namespace padside

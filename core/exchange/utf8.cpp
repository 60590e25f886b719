// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/utf8.h"

namespace padside {

namespace {

unsigned byteAt(std::string_view text, std::size_t place)
{
    return static_cast<unsigned char>(text[place]);
}

bool continues(unsigned byte)
{
    return (byte & 0xC0U) == 0x80U;
}

/// Bytes of the character at the start of `text`, which is not empty; 0 if it is malformed or cut off.
std::size_t characterLength(std::string_view text)
{
    const unsigned first = byteAt(text, 0);
    if (first < 0x80)
        return 1;
    const std::size_t length = first >= 0xC2 && first <= 0xDF ? 2
        : first >= 0xE0 && first <= 0xEF                      ? 3
        : first >= 0xF0 && first <= 0xF4                      ? 4
                                                              : 0;
    if (length == 0 || text.size() < length)
        return 0;
    for (std::size_t i = 1; i < length; ++i) {
        if (!continues(byteAt(text, i)))
            return 0;
    }
    const unsigned second = byteAt(text, 1);
    const bool overlong = (first == 0xE0 && second < 0xA0) || (first == 0xF0 && second < 0x90);
    const bool surrogate = first == 0xED && second > 0x9F;
    const bool tooHigh = first == 0xF4 && second > 0x8F;
    return overlong || surrogate || tooHigh ? 0 : length;
}

} // namespace

std::size_t utf8Length(std::string_view text)
{
    std::size_t place = 0;
    while (place < text.size()) {
        const std::size_t length = characterLength(text.substr(place));
        if (length == 0)
            break;
        place += length;
    }
    return place;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/quotable.h"

#include "core/exchange/utf8.h"

namespace padside {

std::string quotable(std::string_view text, std::size_t mostBytes)
{
    constexpr char firstPrintable = ' ';
    constexpr char deleteCharacter = '\x7f';
    const bool cut = text.size() > mostBytes;
    std::string_view rest = text.substr(0, mostBytes);
    std::string quoted;
    while (!rest.empty()) {
        const std::size_t good = utf8Length(rest);
        for (const char character : rest.substr(0, good)) {
            const bool control = (character >= 0 && character < firstPrintable) || character == deleteCharacter;
            quoted += control ? '?' : character;
        }
        rest.remove_prefix(good);
        if (rest.empty())
            break;
        if (!cut || rest.size() > 3) // else it is a character that was cut in two
            quoted += '?';
        rest.remove_prefix(1);
    }
    return cut ? quoted + "…" : quoted;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fuzz/mutation.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace padside::test {

namespace {

using namespace std::string_view_literals;

constexpr std::array strangeThings{"nan"sv,
                                   "inf"sv,
                                   "-inf"sv,
                                   "1e999"sv,
                                   "-1e999"sv,
                                   "1e-999"sv,
                                   "99.9"sv,
                                   "999"sv,
                                   "-9999"sv,
                                   "\0"sv,
                                   ","sv,
                                   "\""sv,
                                   "\"\""sv,
                                   "\r\n"sv,
                                   "\r"sv,
                                   "\n"sv,
                                   "\xEF\xBB\xBF"sv,
                                   "\xff"sv,
                                   "\xc3"sv,
                                   ";"sv,
                                   "\t"sv,
                                   "--"sv,
                                   "0x1p4"sv,
                                   "1,5"sv,
                                   "18446744073709551616"sv,
                                   "0.000000000000000000001"sv,
                                   "2026-02-30"sv,
                                   "24:00"sv,
                                   "°"sv,
                                   "%"sv,
                                   "C"sv,
                                   "K"sv,
                                   "LOCATION,"sv,
                                   "DATA PERIODS,1,0,"sv,
                                   "psi"sv,
                                   "MPa"sv,
                                   "-"sv,
                                   "="sv,
                                   " "sv,
                                   "+"sv};

} // namespace

std::size_t Mutation::below(std::size_t count)
{
    return count == 0 ? 0 : m_random() % count;
}

void Mutation::change(std::string& text)
{
    constexpr std::size_t longPiece = 40;
    const std::size_t place = below(text.size() + 1);
    const std::size_t length = below(longPiece);
    switch (below(7)) {
    case 0:
        if (place < text.size())
            text[place] = static_cast<char>(m_random());
        break;
    case 1:
        text.erase(place, length);
        break;
    case 2:
        text.insert(place, text.substr(below(text.size() + 1), length));
        break;
    case 3:
    case 4:
        text.insert(place, strangeThings.at(below(strangeThings.size())));
        break;
    case 5:
        text.replace(place, std::min(length, text.size() - place), strangeThings.at(below(strangeThings.size())));
        break;
    default:
        if (below(4) == 0)
            text.resize(place);
        else if (place < text.size())
            std::swap(text[place], text[below(text.size())]);
    }
}

std::string Mutation::of(std::string text, int most)
{
    for (auto left = 1 + below(static_cast<std::size_t>(most)); left > 0; --left)
        change(text);
    return text;
}

std::string Mutation::noise(std::size_t mostBytes)
{
    std::string text(below(mostBytes + 1), '\0');
    for (char& character : text)
        character = static_cast<char>(m_random());
    return text;
}

} // namespace padside::test

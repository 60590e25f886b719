// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/currency.h"

#include "core/quantity/number_text.h"

#include <algorithm>

namespace padside {

namespace {

constexpr int mostSigns = 8;

bool isFirstByteOfSign(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U; // UTF-8
}

/// Would be read as belonging to the number, or breaks the line.
bool misleads(char byte)
{
    return (byte >= '0' && byte <= '9') || std::string_view("+-,%(){}").find(byte) != std::string_view::npos
        || static_cast<unsigned char>(byte) < ' ';
}

} // namespace

Result<std::string> parseCurrency(std::string_view typed)
{
    std::string name(trimmed(typed));
    if (std::ranges::any_of(name, misleads) || std::ranges::count_if(name, isFirstByteOfSign) > mostSigns) {
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("“{0}” can't stand beside amounts of money. Give the currency's name or sign without "
                        "figures, like EUR, $ or kr, in at most {1} letters."),
            {name, std::int64_t{mostSigns}});
    }
    return name;
}

} // namespace padside

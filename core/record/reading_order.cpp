// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/reading_order.h"

#include "core/quantity/digit.h"

#include <algorithm>
#include <compare>

namespace padside {

namespace {

unsigned char folded(char character)
{
    const bool upper = character >= 'A' && character <= 'Z';
    return static_cast<unsigned char>(upper ? character - 'A' + 'a' : character);
}

/// Takes the digits at the start away from the text and returns them without leading zeros.
std::string_view takeNumber(std::string_view& text)
{
    const auto length = static_cast<std::size_t>(std::ranges::find_if_not(text, isDigit) - text.begin());
    std::string_view digits = text.substr(0, length);
    text.remove_prefix(length);
    digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size()));
    return digits;
}

/// Of any length, so that a serial number of thirty digits has its place too.
std::strong_ordering asNumbers(std::string_view one, std::string_view other)
{
    return one.size() != other.size() ? one.size() <=> other.size() : one <=> other;
}

std::strong_ordering compared(std::string_view one, std::string_view other)
{
    std::string_view left = one;
    std::string_view right = other;
    while (!left.empty() && !right.empty()) {
        std::strong_ordering order = std::strong_ordering::equal;
        if (isDigit(left.front()) && isDigit(right.front())) {
            const std::string_view number = takeNumber(left);
            order = asNumbers(number, takeNumber(right));
        } else {
            order = folded(left.front()) <=> folded(right.front());
            left.remove_prefix(1);
            right.remove_prefix(1);
        }
        if (order != std::strong_ordering::equal)
            return order;
    }
    const std::strong_ordering rest = left.size() <=> right.size();
    return rest != std::strong_ordering::equal ? rest : one <=> other;
}

} // namespace

int inReadingOrder(std::string_view one, std::string_view other)
{
    const std::strong_ordering order = compared(one, other);
    return std::is_lt(order) ? -1 : std::is_gt(order) ? 1 : 0;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/digit.h"
#include "core/quantity/measure.h"
#include "core/quantity/number_text.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

namespace padside {

namespace {

bool allDigits(std::string_view text)
{
    return !text.empty() && std::ranges::all_of(text, isDigit);
}

tl::unexpected<Problem> notANumber(std::string_view typed)
{
    if (trimmed(typed).empty())
        return problem(ProblemKind::badInput, PADSIDE_SAY("There is no number here. Type digits, like 12.5 or 1/8."));
    return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” is not a number. Type digits, like 12.5 or 1/8."),
                   {std::string(trimmed(typed))});
}

/// Digits with at most one decimal sign, "." by now, and an optional exponent; finite.
std::optional<double> plainNumber(std::string_view text)
{
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

/// "1/8", "9/8" or "1 3/16": whole numbers only, and beside a whole number only what is less than one ("1 250/8" could
/// be 1250/8 with a thousands separator).
std::optional<double> fraction(std::string_view text)
{
    const auto slash = text.find('/');
    if (slash == std::string_view::npos)
        return std::nullopt;
    const bool negative = text.front() == '-';
    std::string_view above = text.substr(negative ? 1 : 0, slash - (negative ? 1 : 0));
    std::string_view whole = "0";
    const auto space = above.find(' ');
    if (space != std::string_view::npos) {
        whole = above.substr(0, space);
        above = trimmed(above.substr(space));
    }
    const std::string_view below = text.substr(slash + 1);
    if (!allDigits(whole) || !allDigits(above) || !allDigits(below))
        return std::nullopt;
    const auto units = plainNumber(whole);
    const auto top = plainNumber(above);
    const auto bottom = plainNumber(below);
    if (!units || !top || !bottom || *bottom == 0 || (space != std::string_view::npos && *top >= *bottom))
        return std::nullopt;
    const double value = *units + *top / *bottom;
    return negative ? -value : value;
}

/// "1 250", "1'250", "1,250.5", "1.250.000".
bool hasThousandsSeparator(std::string_view text)
{
    std::size_t points = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        points += text[i] == '.' || text[i] == ',' ? 1U : 0U;
        if (i == 0 || !isDigit(text[i - 1]))
            continue;
        const std::string_view rest = text.substr(i);
        for (const std::string_view sign : {std::string_view(" "), std::string_view("'"), std::string_view("’")}) {
            if (rest.starts_with(sign) && rest.size() > sign.size() && isDigit(rest[sign.size()]))
                return true;
        }
    }
    return points > 1;
}

/// Whether the sign at `place`, not the person's own decimal sign, could be meant to set off thousands.
bool couldBeThousands(std::string_view text, std::size_t place)
{
    std::string_view before = text.substr(0, place);
    if (before.starts_with('-'))
        before.remove_prefix(1);
    const std::string_view after = text.substr(place + 1, text.find_first_of("eE", place) - place - 1);
    return after.size() == 3 && allDigits(after) && before.find_first_not_of('0') != std::string_view::npos;
}

} // namespace

Result<double> parseNumber(std::string_view typed, const NumberStyle& style)
{
    std::string text = withPlainSigns(typed);
    if (text.starts_with('+') && !text.starts_with("+-"))
        text.erase(0, 1);
    if (text.empty() || std::ranges::none_of(text, isDigit))
        return notANumber(typed);
    if (const auto value = fraction(text))
        return *value;
    if (text.find('/') == std::string::npos && hasThousandsSeparator(text))
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("“{0}” has a thousands separator or two decimal signs. Type the number without separators."),
            {std::string(trimmed(typed))});

    const auto sign = text.find_first_of(".,");
    if (sign != std::string::npos) {
        if (text[sign] != style.decimalSign && couldBeThousands(text, sign)) {
            const std::string before = text.substr(0, sign);
            const std::string after = text.substr(sign + 1);
            return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” could mean {1} or {2}. Type one of these."),
                           {std::string(trimmed(typed)), before + after, before + style.decimalSign + after});
        }
        text[sign] = '.';
    }
    const auto value = plainNumber(text);
    if (!value)
        return notANumber(typed);
    return *value;
}

} // namespace padside

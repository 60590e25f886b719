// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/measure.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <optional>

namespace padside {

namespace {

std::string_view trimmed(std::string_view text)
{
    const auto isSpace = [](char character) { return character == ' ' || character == '\t' || character == '\n' || character == '\r'; };
    while (!text.empty() && isSpace(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isSpace(text.back()))
        text.remove_suffix(1);
    return text;
}

bool isDigit(char character)
{
    return character >= '0' && character <= '9';
}

tl::unexpected<Problem> notANumber(std::string_view text)
{
    return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” is not a number. Type digits, like 12.5 or 1/8."), {std::string(text)});
}

/// Digits with at most one decimal sign, "." by now, and an optional exponent; finite.
std::optional<double> plainNumber(const std::string& text)
{
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

/// "1/8" or "1 3/16".
std::optional<double> fraction(std::string_view text)
{
    const auto slash = text.find('/');
    if (slash == std::string_view::npos)
        return std::nullopt;
    bool negative = false;
    std::string_view upper = text.substr(0, slash);
    if (!upper.empty() && upper.front() == '-') {
        negative = true;
        upper.remove_prefix(1);
    }
    double whole = 0;
    if (const auto space = upper.find(' '); space != std::string_view::npos) {
        const auto value = plainNumber(std::string(trimmed(upper.substr(0, space))));
        if (!value || *value < 0 || std::floor(*value) != *value)
            return std::nullopt;
        whole = *value;
        upper = trimmed(upper.substr(space));
    }
    const auto top = plainNumber(std::string(upper));
    const auto bottom = plainNumber(std::string(text.substr(slash + 1)));
    if (!top || !bottom || *top < 0 || *bottom <= 0)
        return std::nullopt;
    const double value = whole + *top / *bottom;
    return negative ? -value : value;
}

/// Where the number ends and the unit begins.
std::size_t lengthOfNumber(std::string_view text)
{
    std::size_t end = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char character = text[i];
        const bool exponent = (character == 'e' || character == 'E') && i > 0 && isDigit(text[i - 1]) && i + 1 < text.size()
            && (isDigit(text[i + 1]) || ((text[i + 1] == '-' || text[i + 1] == '+') && i + 2 < text.size() && isDigit(text[i + 2])));
        if (isDigit(character) || exponent)
            end = i + 1;
        else if (character != '.' && character != ',' && character != '-' && character != '+' && character != '/' && character != ' ')
            break;
        else if (character == '.' || character == ',')
            end = i + 1;
    }
    return end;
}

} // namespace

Result<double> parseNumber(std::string_view typed, const NumberStyle& style)
{
    std::string text(trimmed(typed));
    if (text.starts_with("−")) // U+2212, as some keyboards write it
        text.replace(0, 3, "-");
    if (text.starts_with('+'))
        text.erase(0, 1);
    if (text.empty() || text.starts_with("+") || (!isDigit(text.back()) && text.back() != '.' && text.back() != ','))
        return notANumber(typed);
    if (const auto value = fraction(text))
        return *value;

    const auto sign = text.find_first_of(".,");
    if (sign != std::string::npos) {
        if (text.find_first_of(".,", sign + 1) != std::string::npos)
            return problem(ProblemKind::badInput,
                           PADSIDE_SAY("“{0}” has more than one point or comma. Type the number without thousands separators."),
                           {std::string(typed)});
        const std::string_view after = std::string_view(text).substr(sign + 1);
        const bool couldBeThousands = text[sign] != style.decimalSign && after.size() == 3 && isDigit(after[0])
            && isDigit(after[1]) && isDigit(after[2]) && sign > 0 && text.substr(0, sign) != "0" && text.substr(0, sign) != "-0";
        if (couldBeThousands) {
            const std::string whole = text.substr(0, sign);
            return problem(ProblemKind::badInput,
                           PADSIDE_SAY("“{0}” could mean {1} or {2}. Type one of these."),
                           {std::string(typed), whole + std::string(after), whole + style.decimalSign + std::string(after)});
        }
        text[sign] = '.';
    }
    const auto value = plainNumber(text);
    if (!value)
        return notANumber(typed);
    return *value;
}

Result<Measure> parseMeasure(std::string_view typed, QuantityKind kind, const NumberStyle& style,
                             const MeasuringUnit* unitWhenBare)
{
    const std::string_view text = trimmed(typed);
    std::string_view body = text;
    const std::size_t minusLength = body.starts_with("−") ? 3 : 0;
    const std::size_t end = minusLength + lengthOfNumber(body.substr(minusLength));
    const auto number = parseNumber(text.substr(0, end), style);
    if (!number)
        return tl::unexpected(number.error());

    const std::string_view spelling = trimmed(text.substr(end));
    const MeasuringUnit* unit = spelling.empty() ? unitWhenBare : unitBySpelling(spelling, kind);
    if (!unit && spelling.empty())
        return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” has no unit. Type it with one, like {0} {1}."),
                       {std::string(text), std::string(unitsOf(kind).front().symbol)});
    if (!unit) {
        std::string known;
        for (const MeasuringUnit& one : unitsOf(kind))
            known += (known.empty() ? "" : ", ") + std::string(one.symbol);
        return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” is not a unit that fits here. Use one of: {1}."),
                       {std::string(spelling), known});
    }
    const double si = toSi(*number, *unit);
    if (!std::isfinite(si))
        return notANumber(typed);
    if ((kind == QuantityKind::temperature || kind == QuantityKind::absolutePressure) && si < 0)
        return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” is below absolute zero. Check the number and its unit."),
                       {std::string(text)});
    return Measure{si, kind, std::string(unit->code), std::string(text)};
}

std::string showNumber(double value, int decimals, const NumberStyle& style)
{
    std::string text = fmt::format("{:.{}f}", value, decimals);
    if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos)
        text.erase(0, 1);
    if (const auto point = text.find('.'); point != std::string::npos)
        text[point] = style.decimalSign;
    return text;
}

std::string showMeasure(double si, const MeasuringUnit& unit, const NumberStyle& style)
{
    std::string text = showNumber(fromSi(si, unit), unit.decimals, style);
    if (!unit.symbol.empty())
        text += " " + std::string(unit.symbol);
    return text;
}

} // namespace padside

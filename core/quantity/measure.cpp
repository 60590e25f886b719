// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/measure.h"

#include "core/quantity/number_text.h"

#include <cmath>
#include <fmt/format.h>

namespace padside {

namespace {

std::string symbolsOf(QuantityKind kind)
{
    std::string symbols;
    for (const MeasuringUnit& unit : unitsOf(kind))
        symbols += (symbols.empty() ? "" : ", ") + std::string(unit.symbol);
    return symbols;
}

tl::unexpected<Problem> unitProblem(std::string_view text, std::string_view spelling, QuantityKind kind)
{
    if (spelling.empty())
        return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” has no unit. Type it with one, like {0} {1}."),
                       {std::string(text), std::string(unitsOf(kind).front().symbol)});
    if (kind == QuantityKind::count)
        return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” does not belong here. Type the number alone."),
                       {std::string(spelling)});
    return problem(ProblemKind::badInput,
                   PADSIDE_SAY("“{0}” is not a unit that fits here ({1} are). Type one of these."),
                   {std::string(spelling), symbolsOf(kind)});
}

} // namespace

Result<Measure> parseMeasure(std::string_view typed, QuantityKind kind, const NumberStyle& style,
                             const MeasuringUnit* unitWhenBare)
{
    const std::string_view asTyped = trimmed(typed);
    const std::string text = withPlainSigns(typed);
    const std::size_t end = lengthOfNumber(text);
    const auto number = parseNumber(end == 0 ? std::string_view(text) : std::string_view(text).substr(0, end), style);
    if (!number)
        return tl::unexpected(number.error());

    const std::string_view spelling = trimmed(std::string_view(text).substr(end));
    const bool bare = spelling.empty() && unitWhenBare;
    const MeasuringUnit* unit = bare ? unitWhenBare : unitBySpelling(spelling, kind); // a count is spelled ""
    if (!unit)
        return unitProblem(asTyped, spelling, kind);
    const double si = toSi(*number, *unit);
    if (!std::isfinite(si))
        return problem(ProblemKind::badInput, PADSIDE_SAY("“{0}” is too large. Check the number and its unit."),
                       {std::string(asTyped)});
    if ((kind == QuantityKind::temperature || kind == QuantityKind::absolutePressure) && si < 0)
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("“{0}” is below absolute zero. Check the number and its unit."),
                       {std::string(asTyped)});
    return Measure{si, kind, std::string(unit->code), std::string(asTyped)};
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

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"
#include "core/quantity/unit.h"

#include <string>
#include <string_view>

namespace padside {

/// How numbers are written where the person lives.
struct NumberStyle
{
    char decimalSign = '.'; ///< '.' or ','
    std::string groupSign = ","; ///< UTF-8; what separates thousands there

    friend bool operator==(const NumberStyle&, const NumberStyle&) = default;
};

/// A measured value as a person gave it: SI for computing, the unit and the text as typed for the record.
struct Measure
{
    double si = 0;
    QuantityKind kind = QuantityKind::count;
    std::string unitCode;
    std::string typed; ///< exactly what was typed, trimmed

    friend bool operator==(const Measure&, const Measure&) = default;
};

/// Reads a number: "12", "12.5", "12,5", "-3", "1/8", "1 3/16", "2e-3".
/// Both decimal signs are understood, but a sign that isn't the person's own decimal sign, followed by exactly three
/// digits
/// ("1.250" in German, "1,250" in English), could mean a thousand: it is refused with a sentence that offers both
/// readings. Thousands separators are refused too ("1 250", "1'250"), whichever blank they are written with. Fractions
/// are of whole numbers. Never NaN or infinite.
[[nodiscard]] Result<double> parseNumber(std::string_view text, const NumberStyle& style = {});

/// Reads "68 psig", "20 °C", "1/8 in", "45uF". A value without a unit is read in `unitWhenBare` if given, else refused.
[[nodiscard]] Result<Measure> parseMeasure(std::string_view text, QuantityKind kind, const NumberStyle& style = {},
                                           const MeasuringUnit* unitWhenBare = nullptr);

/// "68.0 psig" in the unit given, written in the person's style.
[[nodiscard]] std::string showMeasure(double si, const MeasuringUnit& unit, const NumberStyle& style = {});

/// A number with a fixed count of decimals in the person's style, without thousands separators; "-0.0" is never
/// written.
[[nodiscard]] std::string showNumber(double value, int decimals, const NumberStyle& style = {});

} // namespace padside

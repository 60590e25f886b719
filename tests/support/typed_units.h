// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/unit.h"

#include <limits>
#include <string_view>

namespace padside::test {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr double endless = std::numeric_limits<double>::infinity();

/// SI of what a table gives in its own unit ("degF", "psia").
[[nodiscard]] inline double si(double typed, std::string_view unitCode)
{
    return toSi(typed, *unitByCode(unitCode));
}

[[nodiscard]] inline double in(std::string_view unitCode, double siValue)
{
    return fromSi(siValue, *unitByCode(unitCode));
}

[[nodiscard]] inline double celsius(double typed)
{
    return si(typed, "degC");
}

[[nodiscard]] inline double fahrenheit(double typed)
{
    return si(typed, "degF");
}

} // namespace padside::test

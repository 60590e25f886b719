// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

#include <cmath>

namespace padside {

/// What sentences about air, refrigerants and money are full of.
[[nodiscard]] inline Amount temperatureAmount(double temperatureK)
{
    return {temperatureK, QuantityKind::temperature};
}

[[nodiscard]] inline Amount absolutePressureAmount(double absolutePa)
{
    return {absolutePa, QuantityKind::absolutePressure};
}

/// Without decimals, unless it is a small one ("0.21").
[[nodiscard]] inline Money roundMoney(double amount)
{
    constexpr double small = 10;
    return {amount, amount != 0 && std::abs(amount) < small ? 2 : 0};
}

} // namespace padside

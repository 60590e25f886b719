// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

namespace padside {

/// What sentences about air and refrigerants are full of.
[[nodiscard]] inline Amount temperatureAmount(double temperatureK)
{
    return {temperatureK, QuantityKind::temperature};
}

[[nodiscard]] inline Amount absolutePressureAmount(double absolutePa)
{
    return {absolutePa, QuantityKind::absolutePressure};
}

} // namespace padside

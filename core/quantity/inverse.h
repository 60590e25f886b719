// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <functional>

namespace padside {

/// Where a continuous function that rises from `low` to `high` takes the value `wanted`, to the last few bits
/// (bracketed search: Alefeld, Potra and Shi, ACM TOMS 21 (1995), algorithm 748). A value at or beyond one end gives
/// that end. The function must be finite between the ends.
[[nodiscard]] double inverseOfRising(const std::function<double(double)>& rising, double wanted, double low,
                                     double high);

} // namespace padside

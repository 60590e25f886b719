// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <algorithm>
#include <cmath>
#include <numeric>
#include <vector>

namespace padside {

/// Whether a mass, kg, can be meant: finite and not below 0.
[[nodiscard]] inline bool isMassMoved(double kilograms)
{
    return std::isfinite(kilograms) && kilograms >= 0;
}

/// The sum, the same to the last bit in whatever order the masses come.
[[nodiscard]] inline double sumOfMasses(std::vector<double> kilograms)
{
    std::ranges::sort(kilograms);
    return std::accumulate(kilograms.begin(), kilograms.end(), 0.0);
}

} // namespace padside

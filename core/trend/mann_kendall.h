// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/trend/trend_point.h"

#include <cstddef>
#include <cstdint>
#include <span>

namespace padside {

/// Mann-Kendall test for a monotone trend.
struct MannKendall
{
    std::size_t n = 0;
    std::int64_t s = 0; ///< sum of sign(dt) sign(dy) over all pairs
    double varianceS = 0; ///< corrected for ties in value, in time, and in both at once
    double z = 0; ///< (S - sgn S) / sqrt(var S); 0 if S is 0
    double p = 1; ///< two-sided, normal approximation

    friend bool operator==(const MannKendall&, const MannKendall&) = default;
};

/// Tests the series for a trend; the order of the points does not matter, times and values may repeat.
/// Variance of S: Kendall's full formula (Gilbert 1987, Statistical Methods for Environmental Pollution
/// Monitoring, 16.4.2). Fewer than two points, or all values or all times equal: s 0, z 0, p 1. The normal
/// approximation is rough below ten points; below four nobody should read it (see summariseSeries). O(n²), no
/// allocation up to 64 points.
[[nodiscard]] MannKendall mannKendall(std::span<const TrendPoint> points);

} // namespace padside

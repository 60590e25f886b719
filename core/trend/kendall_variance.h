// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/trend/trend_point.h"

#include <span>

namespace padside {

/// Variance of Kendall's S when there is no trend.
struct KendallVariance
{
    double separateTies = 0; ///< corrected for ties in time and ties in value, each for itself (Sen 1968, eq. 2.6)
    double allTies = 0; ///< with both joint terms as well (Gilbert 1987, 16.4.2)
};

/// Fewer than two points: 0. Never negative. No allocation up to 64 points.
[[nodiscard]] KendallVariance kendallVariance(std::span<const TrendPoint> points);

} // namespace padside

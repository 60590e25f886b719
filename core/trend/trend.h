// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"

#include <optional>
#include <span>

namespace padside {

/// One value of a measured series.
struct TrendPoint
{
    double time = 0; ///< any unit; slopes are per this unit (days in the record)
    double value = 0;
};

/// Mann-Kendall test for a monotone trend, with ties in value, in time, and jointly corrected (Gilbert 1987, 16.4.2).
struct MannKendall
{
    std::size_t n = 0;
    long long s = 0; ///< sum of sign(dt) sign(dy)
    double varianceS = 0;
    double z = 0; ///< (S - sgn S) / sqrt(var S); 0 if S is 0
    double p = 1; ///< two-sided, normal approximation

    friend bool operator==(const MannKendall&, const MannKendall&) = default;
};

/// Theil-Sen slope: the median of all pairwise slopes, with the 95 and 90 % limits by ranks.
struct TheilSen
{
    double slope = 0;
    double intercept = 0; ///< median(y) - slope * median(t)
    double low95 = 0;
    double high95 = 0;
    double low90 = 0;
    double high90 = 0;
};

} // namespace padside

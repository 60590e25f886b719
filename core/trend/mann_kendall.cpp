// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/mann_kendall.h"

#include "core/trend/kendall_variance.h"

#include <cmath>

namespace padside {

namespace {

std::int64_t signOf(double difference)
{
    return static_cast<std::int64_t>(difference > 0) - static_cast<std::int64_t>(difference < 0);
}

std::int64_t sumOfSigns(std::span<const TrendPoint> points)
{
    std::int64_t sum = 0;
    for (std::size_t later = 1; later < points.size(); ++later) {
        for (std::size_t earlier = 0; earlier < later; ++earlier) {
            sum += signOf(points[later].time - points[earlier].time)
                * signOf(points[later].value - points[earlier].value);
        }
    }
    return sum;
}

} // namespace

MannKendall mannKendall(std::span<const TrendPoint> points)
{
    MannKendall test;
    test.n = points.size();
    test.s = sumOfSigns(points);
    test.varianceS = kendallVariance(points).allTies;
    if (test.s == 0 || test.varianceS <= 0)
        return test;
    const auto s = static_cast<double>(test.s);
    test.z = (s - (s > 0 ? 1 : -1)) / std::sqrt(test.varianceS);
    test.p = std::erfc(std::abs(test.z) / std::sqrt(2.0));
    return test;
}

} // namespace padside

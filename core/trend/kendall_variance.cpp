// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/kendall_variance.h"

#include <algorithm>
#include <array>
#include <vector>

namespace padside {

namespace {

/// Sums over the groups of equal numbers; t is the size of a group.
struct TieSums
{
    double pairs = 0; ///< sum of t(t-1)
    double triples = 0; ///< sum of t(t-1)(t-2)
    double weighted = 0; ///< sum of t(t-1)(2t+5)
};

/// Sorts `numbers`.
TieSums tieSums(std::span<double> numbers)
{
    std::ranges::sort(numbers);
    TieSums sums;
    for (std::size_t begin = 0; begin < numbers.size();) {
        std::size_t end = begin + 1;
        while (end < numbers.size() && numbers[end] == numbers[begin])
            ++end;
        const auto size = static_cast<double>(end - begin);
        sums.pairs += size * (size - 1);
        sums.triples += size * (size - 1) * (size - 2);
        sums.weighted += size * (size - 1) * (2 * size + 5);
        begin = end;
    }
    return sums;
}

} // namespace

KendallVariance kendallVariance(std::span<const TrendPoint> points)
{
    if (points.size() < 2)
        return {};
    std::array<double, 64> few{};
    std::vector<double> many(points.size() > few.size() ? points.size() : 0);
    const std::span<double> numbers = many.empty() ? std::span(few).first(points.size()) : std::span(many);
    std::ranges::transform(points, numbers.begin(), &TrendPoint::time);
    const TieSums times = tieSums(numbers);
    std::ranges::transform(points, numbers.begin(), &TrendPoint::value);
    const TieSums values = tieSums(numbers);

    const auto n = static_cast<double>(points.size());
    const double separate = (n * (n - 1) * (2 * n + 5) - times.weighted - values.weighted) / 18;
    double all = separate + times.pairs * values.pairs / (2 * n * (n - 1));
    if (n > 2)
        all += times.triples * values.triples / (9 * n * (n - 1) * (n - 2));
    // With all values equal, `separate` alone is below 0 as soon as times are tied too.
    return {std::max(separate, 0.0), std::max(all, 0.0)};
}

} // namespace padside

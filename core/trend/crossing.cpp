// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/trend/crossing.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

/// `room` is how far the middle of the series is from the limit, `pace` how fast it closes in on it.
std::optional<double> timeFrom(double start, double room, double pace)
{
    if (pace <= 0)
        return std::nullopt;
    const double time = start + room / pace;
    return std::isfinite(time) ? std::optional<double>(time) : std::nullopt;
}

} // namespace

Crossing crossingOf(const TheilSen& trend, double limit, LimitSide side)
{
    const double towards = side == LimitSide::highest ? 1 : -1;
    const double room = towards * (limit - trend.medianValue);
    const auto meets = [&](double slope) { return timeFrom(trend.medianTime, room, towards * slope); };
    Crossing crossing{meets(side == LimitSide::highest ? trend.high95 : trend.low95), meets(trend.slope),
                      meets(side == LimitSide::highest ? trend.low95 : trend.high95)};
    // With the middle of the series past the limit, the steeper line met it later: keep early before late.
    if (room < 0 && crossing.early && crossing.late)
        std::swap(crossing.early, crossing.late);
    return crossing;
}

} // namespace padside

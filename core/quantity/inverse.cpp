// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/quantity/inverse.h"

#include <boost/math/tools/toms748_solve.hpp>
#include <cstdint>

namespace padside {

double inverseOfRising(const std::function<double(double)>& rising, double wanted, double low, double high)
{
    const auto missing = [&](double at) { return rising(at) - wanted; };
    const double atLow = missing(low);
    const double atHigh = missing(high);
    if (atLow >= 0)
        return low;
    if (atHigh <= 0)
        return high;
    std::uintmax_t mostSteps = 200; // about ten are usual
    const boost::math::tools::eps_tolerance<double> tight(50); // bits
    const auto [from, to] = boost::math::tools::toms748_solve(missing, low, high, atLow, atHigh, tight, mostSteps);
    return from + (to - from) / 2;
}

} // namespace padside

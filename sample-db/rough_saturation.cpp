// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/rough_saturation.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace padside {

namespace {

struct Point
{
    double fahrenheit;
    double psig;
};

using Curve = std::array<Point, 8>;

// Computed from the saturation correlations of CoolProp's fluid files (dev/fluids).
constexpr Curve r22{
    {{0, 24.0}, {20, 43.1}, {40, 68.5}, {50, 84.1}, {70, 121.4}, {90, 168.4}, {110, 226.4}, {120, 260.0}}};
constexpr Curve r32{
    {{0, 49.3}, {20, 80.0}, {40, 121.0}, {50, 145.8}, {70, 205.8}, {90, 281.3}, {110, 374.9}, {120, 429.3}}};
constexpr Curve r410a{
    {{0, 48.2}, {20, 78.4}, {40, 118.4}, {50, 142.6}, {70, 201.1}, {90, 274.5}, {110, 365.4}, {120, 418.3}}};

double onCurve(const Curve& curve, double fahrenheit)
{
    std::size_t upper = 1;
    while (upper + 1 < curve.size() && curve[upper].fahrenheit < fahrenheit)
        ++upper;
    const Point& a = curve[upper - 1];
    const Point& b = curve[upper];
    return std::max(1.0, a.psig + (b.psig - a.psig) * (fahrenheit - a.fahrenheit) / (b.fahrenheit - a.fahrenheit));
}

} // namespace

double roughSaturationPsig(std::string_view refrigerant, double fahrenheit)
{
    if (refrigerant == "R-22")
        return onCurve(r22, fahrenheit);
    if (refrigerant == "R-32")
        return onCurve(r32, fahrenheit);
    const double scale = refrigerant == "R-454B" ? 0.96 : 1.0;
    return scale * onCurve(r410a, fahrenheit);
}

} // namespace padside

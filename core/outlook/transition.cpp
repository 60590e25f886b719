// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/transition.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace padside {

namespace {

constexpr double mostJumpsAtOnce = 2;

/// The rate out of each grade; none out of the last.
std::array<double, gradeCount> ratesOut(const Rates& rates)
{
    return {rates[0], rates[1], rates[2], rates[3], 0};
}

/// How often the time must be halved until at most mostJumpsAtOnce are expected in it.
int halvingsFor(double jumps)
{
    return jumps <= mostJumpsAtOnce ? 0 : static_cast<int>(std::ceil(std::log2(jumps / mostJumpsAtOnce)));
}

/// How many jumps must be counted so that more of them matter less than 1e-17 of any chance. Every entry is made by at
/// most four real jumps, so its own terms begin at the fourth at the latest.
int termsFor(double jumps)
{
    return 8 + static_cast<int>(std::ceil(jumps * 7 + 6 * std::sqrt(jumps)));
}

/// Jumps come as a Poisson process of the largest rate (uniformization); a jump out of a grade with a smaller rate may
/// leave it where it is.
struct Jumps
{
    double expected = 0;
    std::array<double, gradeCount> stay{};
    std::array<double, gradeCount> go{};

    Jumps(const Rates& rates, double largest, double years)
        : expected(largest * years)
    {
        const auto out = ratesOut(rates);
        for (std::size_t grade = 0; grade < gradeCount; ++grade) {
            go[grade] = out[grade] * years;
            stay[grade] = (largest - out[grade]) * years;
        }
    }
};

Transition identity()
{
    Transition one{};
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        one[grade][grade] = 1;
    return one;
}

/// The chances after a time with few jumps, but for the factor exp(-expected jumps).
Transition sumOfJumps(const Jumps& jumps)
{
    Transition term = identity();
    Transition sum = term;
    const int terms = termsFor(jumps.expected);
    for (int n = 1; n <= terms; ++n) {
        const double share = 1.0 / n;
        for (std::size_t from = 0; from < gradeCount; ++from) {
            for (std::size_t to = gradeCount - 1; to > from; --to) {
                term[from][to] = (term[from][to] * jumps.stay[to] + term[from][to - 1] * jumps.go[to - 1]) * share;
                sum[from][to] += term[from][to];
            }
            term[from][from] *= jumps.stay[from] * share;
        }
    }
    return sum;
}

void scale(Transition& chance, double factor)
{
    for (GradeChances& row : chance) {
        for (double& value : row)
            value *= factor;
    }
}

/// Only entries from <= k < = to of the derivative by rate k are not zero.
Transition slopeOfSquare(const Transition& half, const Transition& slope, std::size_t k)
{
    Transition whole{};
    for (std::size_t from = 0; from <= k; ++from) {
        for (std::size_t to = k; to < gradeCount; ++to) {
            for (std::size_t by = from; by <= to; ++by)
                whole[from][to] += slope[from][by] * half[by][to] + half[from][by] * slope[by][to];
        }
    }
    return whole;
}

/// sumOfJumps with derivatives; the jump rate itself is held fast.
TransitionSlopes slopesOfJumps(const Jumps& jumps, double years)
{
    TransitionSlopes term{identity(), {}};
    TransitionSlopes sum = term;
    const int terms = termsFor(jumps.expected);
    for (int n = 1; n <= terms; ++n) {
        const double share = 1.0 / n;
        for (std::size_t k = 0; k < 4; ++k) {
            Transition& slope = term.slope[k];
            for (std::size_t from = 0; from <= k; ++from) {
                const double leaves = term.chance[from][k] * years;
                for (std::size_t to = gradeCount - 1; to >= k; --to) {
                    double value = slope[from][to] * jumps.stay[to];
                    if (to > k)
                        value += slope[from][to - 1] * jumps.go[to - 1];
                    if (to == k)
                        value -= leaves;
                    else if (to == k + 1)
                        value += leaves;
                    slope[from][to] = value * share;
                    sum.slope[k][from][to] += slope[from][to];
                    if (to == 0)
                        break;
                }
            }
        }
        for (std::size_t from = 0; from < gradeCount; ++from) {
            for (std::size_t to = gradeCount - 1; to > from; --to) {
                term.chance[from][to]
                    = (term.chance[from][to] * jumps.stay[to] + term.chance[from][to - 1] * jumps.go[to - 1]) * share;
                sum.chance[from][to] += term.chance[from][to];
            }
            term.chance[from][from] *= jumps.stay[from] * share;
        }
    }
    return sum;
}

} // namespace

void setStaying(Transition& chance, const Rates& rates, double years)
{
    const auto out = ratesOut(rates);
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        chance[grade][grade] = std::exp(-out[grade] * years);
}

Transition squared(const Transition& half)
{
    Transition whole{};
    for (std::size_t from = 0; from < gradeCount; ++from) {
        for (std::size_t to = from; to < gradeCount; ++to) {
            for (std::size_t by = from; by <= to; ++by)
                whole[from][to] += half[from][by] * half[by][to];
        }
    }
    return whole;
}

Transition transitionAfter(const Rates& rates, double years)
{
    assert(std::isfinite(years) && years >= 0);
    const double largest = *std::ranges::max_element(rates);
    const int halvings = halvingsFor(largest * years);
    double time = std::ldexp(years, -halvings);
    const Jumps jumps(rates, largest, time);
    Transition chance = sumOfJumps(jumps);
    scale(chance, std::exp(-jumps.expected));
    setStaying(chance, rates, time);
    for (int again = 0; again < halvings; ++again) {
        chance = squared(chance);
        time *= 2;
        setStaying(chance, rates, time);
    }
    return chance;
}

TransitionSlopes transitionSlopesAfter(const Rates& rates, double years)
{
    assert(std::isfinite(years) && years >= 0);
    const double largest = *std::ranges::max_element(rates);
    const int halvings = halvingsFor(largest * years);
    double time = std::ldexp(years, -halvings);
    const Jumps jumps(rates, largest, time);
    TransitionSlopes result = slopesOfJumps(jumps, time);
    const double none = std::exp(-jumps.expected);
    scale(result.chance, none);
    for (Transition& slope : result.slope)
        scale(slope, none);
    setStaying(result.chance, rates, time);
    for (int again = 0; again < halvings; ++again) {
        for (std::size_t k = 0; k < 4; ++k)
            result.slope[k] = slopeOfSquare(result.chance, result.slope[k], k);
        result.chance = squared(result.chance);
        time *= 2;
        setStaying(result.chance, rates, time);
    }
    return result;
}

} // namespace padside

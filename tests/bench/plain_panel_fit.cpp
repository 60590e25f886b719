// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/plain_panel_fit.h"

#include "core/outlook/small_matrix.h"

#include <algorithm>
#include <cmath>

namespace padside::bench {

namespace {

Transition product(const Transition& one, const Transition& other)
{
    Transition result{};
    for (std::size_t i = 0; i < 5; ++i) {
        for (std::size_t k = 0; k < 5; ++k) {
            for (std::size_t j = 0; j < 5; ++j)
                result[i][j] += one[i][k] * other[k][j];
        }
    }
    return result;
}

Transition exponential(const Rates& rates, double years)
{
    constexpr int halvings = 6;
    constexpr int terms = 10;
    Transition generator{};
    for (std::size_t k = 0; k < 4; ++k) {
        generator[k][k] = std::ldexp(-rates[k] * years, -halvings);
        generator[k][k + 1] = -generator[k][k];
    }
    Transition term{};
    for (std::size_t k = 0; k < 5; ++k)
        term[k][k] = 1;
    Transition sum = term;
    for (int n = 1; n <= terms; ++n) {
        term = product(term, generator);
        for (std::size_t i = 0; i < 5; ++i) {
            for (std::size_t j = 0; j < 5; ++j) {
                term[i][j] /= n;
                sum[i][j] += term[i][j];
            }
        }
    }
    for (int again = 0; again < halvings; ++again)
        sum = product(sum, sum);
    return sum;
}

double logChance(const PanelStep& step, const Vector4& logRates)
{
    Rates rates{};
    for (std::size_t k = 0; k < 4; ++k)
        rates[k] = std::exp(logRates[k]);
    const Transition chance = exponential(rates, step.years);
    return std::log(
        chance[static_cast<std::size_t>(numeral(step.from) - 1)][static_cast<std::size_t>(numeral(step.to) - 1)]);
}

double logLikelihood(std::span<const PanelStep> steps, const Vector4& logRates)
{
    double sum = 0;
    for (const PanelStep& step : steps)
        sum += logChance(step, logRates);
    return sum;
}

} // namespace

PlainFit fitPlainly(std::span<const PanelStep> steps)
{
    constexpr double delta = 1e-5;
    Vector4 at{-1, -1, -1, -1};
    PlainFit fit;
    double value = logLikelihood(steps, at);
    for (; fit.rounds < 100; ++fit.rounds) {
        Vector4 slope{};
        Matrix4 curvature{};
        for (const PanelStep& step : steps) {
            Vector4 one{};
            for (std::size_t k = 0; k < 4; ++k) {
                Vector4 up = at;
                Vector4 down = at;
                up[k] += delta;
                down[k] -= delta;
                one[k] = (logChance(step, up) - logChance(step, down)) / (2 * delta);
            }
            for (std::size_t k = 0; k < 4; ++k) {
                slope[k] += one[k];
                for (std::size_t l = 0; l < 4; ++l)
                    curvature[k][l] += one[k] * one[l];
            }
        }
        const auto lower = choleskyOf(curvature);
        if (!lower)
            break;
        const Vector4 way = solveBy(*lower, slope);
        Vector4 next{};
        double there = value;
        double share = 1;
        for (; share > 1e-6; share /= 2) {
            for (std::size_t k = 0; k < 4; ++k)
                next[k] = at[k] + share * way[k];
            there = logLikelihood(steps, next);
            if (there > value)
                break;
        }
        if (there - value < 1e-9)
            break;
        at = next;
        value = there;
    }
    for (std::size_t k = 0; k < 4; ++k)
        fit.rates[k] = std::exp(at[k]);
    fit.minusTwoLogLikelihood = -2 * value;
    return fit;
}

} // namespace padside::bench

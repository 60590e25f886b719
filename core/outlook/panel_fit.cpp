// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/panel_fit.h"

#include "core/outlook/panel_counts.h"
#include "core/outlook/small_matrix.h"
#include "core/outlook/transition.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace padside {

namespace {

constexpr int mostRounds = 200;
constexpr double hiddenGain = 1e-7; ///< of the log likelihood, about where its rounding hides what a step gains
constexpr double settledGain = 1e-20;
constexpr double fastestRate = 1e6; ///< per year; beyond it a grade is passed through unseen

using Free = std::array<bool, 4>;

/// The log likelihood with its slopes and the expected information, by the logarithms of the rates.
struct Score
{
    double logLikelihood = 0;
    Vector4 slope{};
    Matrix4 information{};
};

void addGroup(Score& score, const PanelCounts& group, const Rates& rates)
{
    const TransitionSlopes step = transitionSlopesAfter(rates, group.years);
    for (std::size_t from = 0; from < gradeCount; ++from) {
        double many = 0;
        for (const double count : group.steps[from])
            many += count;
        if (many == 0)
            continue;
        for (std::size_t to = from; to < gradeCount; ++to) {
            const double chance = step.chance[from][to];
            if (!(chance > 0))
                continue;
            Vector4 slope{};
            for (std::size_t k = from; k <= std::min<std::size_t>(to, 3); ++k)
                slope[k] = step.slope[k][from][to] * rates[k];
            const double count = group.steps[from][to];
            if (count > 0)
                score.logLikelihood += count * std::log(chance);
            for (std::size_t k = from; k <= std::min<std::size_t>(to, 3); ++k) {
                score.slope[k] += count * slope[k] / chance;
                for (std::size_t l = from; l <= k; ++l)
                    score.information[k][l] += many * slope[k] * slope[l] / chance;
            }
        }
    }
}

/// -infinity where something that was seen has no chance at these rates.
double logLikelihoodAt(std::span<const PanelCounts> counts, const Rates& rates)
{
    double sum = 0;
    for (const PanelCounts& group : counts) {
        const Transition step = transitionAfter(rates, group.years);
        for (std::size_t from = 0; from < gradeCount; ++from) {
            for (std::size_t to = from; to < gradeCount; ++to) {
                if (group.steps[from][to] == 0)
                    continue;
                if (!(step[from][to] > 0))
                    return -std::numeric_limits<double>::infinity();
                sum += group.steps[from][to] * std::log(step[from][to]);
            }
        }
    }
    return sum;
}

/// Rates that are not fitted neither move nor mix with the others.
void holdFast(Score& score, const Free& free)
{
    for (std::size_t k = 0; k < 4; ++k) {
        if (free[k])
            continue;
        score.slope[k] = 0;
        for (std::size_t l = 0; l < 4; ++l)
            score.information[std::max(k, l)][std::min(k, l)] = k == l ? 1 : 0;
    }
    for (std::size_t k = 0; k < 4; ++k) {
        for (std::size_t l = 0; l < k; ++l)
            score.information[l][k] = score.information[k][l];
    }
}

Score scoreAt(std::span<const PanelCounts> counts, const Rates& rates, const Free& free)
{
    Score score;
    for (const PanelCounts& group : counts)
        addGroup(score, group, rates);
    holdFast(score, free);
    return score;
}

/// Where the information is not positive definite the diagonal is strengthened until it is.
Vector4 scoringStep(const Score& score)
{
    double ridge = 0;
    for (;;) {
        Matrix4 matrix = score.information;
        for (std::size_t k = 0; k < 4; ++k)
            matrix[k][k] += ridge * (1 + matrix[k][k]);
        if (const auto lower = choleskyOf(matrix))
            return solveBy(*lower, score.slope);
        ridge = ridge == 0 ? 1e-8 : ridge * 10;
        if (ridge > 1e8)
            return {};
    }
}

Rates moved(const Rates& rates, const Vector4& step, double share)
{
    Rates next{};
    for (std::size_t k = 0; k < 4; ++k)
        next[k] = std::min(rates[k] * std::exp(std::clamp(step[k] * share, -3.0, 3.0)), fastestRate);
    return next;
}

/// The observed information by the logarithms of the rates: central differences of the exact slopes.
Matrix4 observedInformation(std::span<const PanelCounts> counts, const Rates& rates, const Free& free)
{
    constexpr double step = 1e-4;
    Matrix4 information{};
    for (std::size_t k = 0; k < 4; ++k) {
        if (!free[k]) {
            information[k][k] = 1;
            continue;
        }
        Rates more = rates;
        Rates less = rates;
        more[k] *= std::exp(step);
        less[k] *= std::exp(-step);
        const Vector4 up = scoreAt(counts, more, free).slope;
        const Vector4 down = scoreAt(counts, less, free).slope;
        for (std::size_t l = 0; l < 4; ++l)
            information[k][l] = (down[l] - up[l]) / (2 * step);
    }
    for (std::size_t k = 0; k < 4; ++k) {
        for (std::size_t l = 0; l < k; ++l)
            information[k][l] = information[l][k] = (information[k][l] + information[l][k]) / 2;
    }
    return information;
}

struct Ascent
{
    Rates rates{};
    double logLikelihood = 0;
    int rounds = 0;
    bool settled = false;
};

Ascent climb(std::span<const PanelCounts> counts, const Rates& start, const Free& free)
{
    Ascent at{start, logLikelihoodAt(counts, start), 0, false};
    int lastRounds = 0;
    while (!at.settled && at.rounds < mostRounds) {
        ++at.rounds;
        const Score score = scoreAt(counts, at.rates, free);
        const Vector4 step = scoringStep(score);
        double promised = 0;
        for (std::size_t k = 0; k < 4; ++k)
            promised += step[k] * score.slope[k];
        if (promised < hiddenGain) {
            // So near the top the steps are good by themselves; trying whether they gain would only find rounding.
            at.rates = moved(at.rates, step, 1);
            at.settled = promised < settledGain || ++lastRounds > 20;
            continue;
        }
        double share = 1;
        for (; share > 1e-10; share /= 2) {
            const Rates next = moved(at.rates, step, share);
            const double there = logLikelihoodAt(counts, next);
            if (there > at.logLikelihood) {
                at.rates = next;
                at.logLikelihood = there;
                break;
            }
        }
        at.settled = share <= 1e-10; // no way up from here
    }
    at.logLikelihood = logLikelihoodAt(counts, at.rates);
    return at;
}

} // namespace

Result<PanelFit> fitPanel(std::span<const PanelStep> steps)
{
    if (steps.empty()) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("No unit was seen twice, so there is no step to learn rates from."));
    }
    const auto counts = countPanel(steps);
    if (!counts)
        return tl::unexpected(counts.error());
    const auto knowledge = knowableRates(*counts);
    Free free{};
    Rates start = roughRates(*counts);
    for (std::size_t k = 0; k < 4; ++k) {
        free[k] = knowledge[k] == RateKnowledge::fitted;
        if (knowledge[k] == RateKnowledge::unbounded)
            start[k] = fastestRate;
    }
    const Ascent top = climb(*counts, start, free);
    if (!top.settled || !std::isfinite(top.logLikelihood)) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("The rates did not settle after {0} rounds; the steps say too "
                                   "little, or contradict each other."),
                       {std::int64_t{mostRounds}});
    }
    PanelFit fit;
    fit.minusTwoLogLikelihood = -2 * top.logLikelihood;
    fit.steps = steps.size();
    fit.rounds = top.rounds;
    const auto lower = choleskyOf(observedInformation(*counts, top.rates, free));
    for (std::size_t k = 0; k < 4; ++k) {
        fit.rates[k] = {knowledge[k], top.rates[k], 0};
        const bool passedThrough = free[k] && top.rates[k] >= fastestRate / 10;
        if (passedThrough)
            fit.rates[k].knowledge = RateKnowledge::unbounded;
        else if (free[k] && lower)
            fit.rates[k].standardError = top.rates[k] * std::sqrt(inverseDiagonalBy(*lower)[k]);
    }
    return fit;
}

} // namespace padside

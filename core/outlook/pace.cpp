// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/pace.h"

#include <cmath>
#include <numbers>

namespace padside {

namespace {

constexpr double mostSigma = 3;

struct HermiteNode
{
    double x = 0;
    double weight = 0; ///< of exp(-x²), divided by sqrt(pi)
};

/// Value and slope at x of the orthonormal Hermite function of this degree, and its weight there.
struct HermiteValue
{
    double value = 0;
    double before = 0; ///< of the degree below
};

HermiteValue hermite(int degree, double x)
{
    double before = 0;
    double value = 1; // normalized so that the weights below add up to 1
    for (int n = 1; n <= degree; ++n) {
        const double next = x * std::sqrt(2.0 / n) * value - std::sqrt((n - 1.0) / n) * before;
        before = value;
        value = next;
    }
    return {value, before};
}

/// The roots lie apart and between those of the degree below, so each is found by halving where the sign changes.
std::vector<double> hermiteRoots(int degree)
{
    std::vector<double> roots;
    for (int n = 1; n <= degree; ++n) {
        const double outermost = std::sqrt(2.0 * n + 1);
        std::vector<double> next;
        for (std::size_t place = 0; place <= roots.size(); ++place) {
            double low = place == 0 ? -outermost : roots[place - 1];
            double high = place == roots.size() ? outermost : roots[place];
            const bool rises = hermite(n, low).value < 0;
            for (int halving = 0; halving < 80; ++halving) {
                const double middle = (low + high) / 2;
                ((hermite(n, middle).value < 0) == rises ? low : high) = middle;
            }
            next.push_back((low + high) / 2);
        }
        roots = std::move(next);
    }
    return roots;
}

std::vector<HermiteNode> hermiteNodes(int count)
{
    std::vector<HermiteNode> nodes;
    for (const double x : hermiteRoots(count)) {
        const double before = hermite(count, x).before;
        nodes.push_back({x, 1 / (count * before * before)});
    }
    return nodes;
}

} // namespace

Result<Pace> logNormalPace(double sigma, int nodes)
{
    if (!(sigma >= 0 && sigma <= mostSigma)) {
        return problem(ProblemKind::badInput, PADSIDE_SAY("The spread of the pace must lie between 0 and {0}."),
                       {Number{mostSigma, 0}});
    }
    if (nodes < 1 || nodes > mostPaceNodes) {
        return problem(ProblemKind::badInput, PADSIDE_SAY("The pace is carried on 1 to {0} nodes."),
                       {std::int64_t{mostPaceNodes}});
    }
    if (sigma == 0)
        return Pace{{1.0}, {1.0}};
    Pace pace;
    for (const HermiteNode& node : hermiteNodes(nodes)) {
        pace.pace.push_back(std::exp(-sigma * sigma / 2 + std::numbers::sqrt2 * sigma * node.x));
        pace.weight.push_back(node.weight);
    }
    return pace;
}

} // namespace padside

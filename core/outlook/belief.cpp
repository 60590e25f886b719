// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/belief.h"

#include "core/outlook/misgrading.h"
#include "core/outlook/transition.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace padside {

namespace {

/// Below this a likelihood has lost its digits: what it stands for can't be.
constexpr double leastLikelihood = 1e-250;
/// Up to this many expected jumps, summing them over a block of nodes at once is the quicker way.
constexpr double mostJumpsSummed = 30;
/// Nodes of about one pace need about as many terms.
constexpr std::size_t blockNodes = 4;

constexpr GradeChances allGradesBut(Grade excluded)
{
    GradeChances chances{1, 1, 1, 1, 1};
    chances[indexOf(excluded)] = 0;
    return chances;
}

} // namespace

Belief::Belief(std::shared_ptr<const Pace> pace, Grade grade)
    : Belief(std::move(pace), [grade] {
        GradeChances chances{};
        chances[indexOf(grade)] = 1;
        return chances;
    }())
{
}

Belief::Belief(std::shared_ptr<const Pace> pace, const GradeChances& grades)
    : m_pace(std::move(pace))
    , m_nodes(m_pace->pace.size())
{
    for (std::size_t grade = 0; grade < gradeCount; ++grade) {
        for (const double weight : m_pace->weight)
            m_chance[grade].push_back(weight * grades[grade]);
    }
}

void Belief::carryForward(const Rates& rates, double exposureYears)
{
    assert(std::isfinite(exposureYears) && exposureYears >= 0);
    const double largest = *std::ranges::max_element(rates);
    if (largest * exposureYears == 0)
        return;
    for (std::size_t first = 0; first < m_nodes; first += blockNodes) {
        const std::size_t last = std::min(first + blockNodes, m_nodes) - 1;
        const double mostJumps = largest * exposureYears * m_pace->pace[last];
        if (mostJumps <= mostJumpsSummed) {
            sumJumps(rates, exposureYears, first);
            continue;
        }
        for (std::size_t node = first; node <= last; ++node)
            multiply(transitionAfter(rates, exposureYears * m_pace->pace[node]), node);
    }
}

void Belief::multiply(const Transition& chance, std::size_t node)
{
    for (std::size_t to = gradeCount; to-- > 0;) {
        double sum = 0;
        for (std::size_t from = 0; from <= to; ++from)
            sum += m_chance[from][node] * chance[from][to];
        m_chance[to][node] = sum;
    }
}

/// As in transition.cpp, for the chances alone and the nodes of a block side by side.
void Belief::sumJumps(const Rates& rates, double exposureYears, std::size_t first)
{
    using Block = std::array<double, blockNodes>;
    const std::size_t count = std::min(blockNodes, m_nodes - first);
    const double largest = *std::ranges::max_element(rates);
    std::array<Block, gradeCount> term{};
    Block time{};
    for (std::size_t node = 0; node < count; ++node) {
        time[node] = exposureYears * m_pace->pace[first + node];
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            term[grade][node] = m_chance[grade][first + node];
    }
    std::array<Block, gradeCount> sum = term;
    const double mostJumps = largest * time[count - 1];
    const int terms = 8 + static_cast<int>(std::ceil(1.3 * mostJumps + 9 * std::sqrt(mostJumps)));
    for (int n = 1; n <= terms; ++n) {
        const double share = 1.0 / n;
        for (std::size_t grade = gradeCount; grade-- > 0;) {
            const double stay = (largest - (grade < 4 ? rates[grade] : 0)) * share;
            const double come = grade > 0 ? rates[grade - 1] * share : 0;
            const Block& below = term[grade > 0 ? grade - 1 : 0];
            for (std::size_t node = 0; node < blockNodes; ++node) {
                term[grade][node] = (term[grade][node] * stay + below[node] * come) * time[node];
                sum[grade][node] += term[grade][node];
            }
        }
    }
    for (std::size_t node = 0; node < count; ++node) {
        const double none = std::exp(-largest * time[node]);
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            m_chance[grade][first + node] = sum[grade][node] * none;
    }
}

bool Belief::weigh(const GradeChances& likelihood)
{
    double total = 0;
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        total += likelihood[grade] * gradeTotal(grade);
    if (!(total > leastLikelihood))
        return false;
    for (std::size_t grade = 0; grade < gradeCount; ++grade) {
        for (double& chance : m_chance[grade])
            chance *= likelihood[grade] / total;
    }
    m_logLikelihood += std::log(total);
    return true;
}

bool Belief::see(Grade seen)
{
    return weigh(chanceToSee(seen));
}

bool Belief::seeNotSpent()
{
    return weigh(allGradesBut(Grade::spent));
}

void Belief::regrade(const GradeChances& grades)
{
    for (std::size_t node = 0; node < m_nodes; ++node) {
        double ofNode = 0;
        for (const auto& chances : m_chance)
            ofNode += chances[node];
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            m_chance[grade][node] = ofNode * grades[grade];
    }
}

void Belief::repair()
{
    for (std::size_t node = 0; node < m_nodes; ++node) {
        std::array<double, gradeCount> after{};
        for (std::size_t was = 0; was < gradeCount; ++was) {
            const std::size_t worst = std::min(was, indexOf(Grade::poor));
            for (std::size_t grade = 0; grade <= worst; ++grade)
                after[grade] += m_chance[was][node] / static_cast<double>(worst + 1);
        }
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            m_chance[grade][node] = after[grade];
    }
}

void Belief::renew()
{
    const double logLikelihood = m_logLikelihood;
    *this = Belief(m_pace, Grade::sound);
    m_logLikelihood = logLikelihood;
}

double Belief::gradeTotal(std::size_t grade) const
{
    return std::accumulate(m_chance[grade].begin(), m_chance[grade].end(), 0.0);
}

GradeChances Belief::grades() const
{
    GradeChances chances{};
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        chances[grade] = std::clamp(gradeTotal(grade), 0.0, 1.0);
    return chances;
}

double Belief::chanceSpent() const
{
    return std::clamp(gradeTotal(gradeCount - 1), 0.0, 1.0);
}

double Belief::meanPace() const
{
    double mean = 0;
    for (const auto& chances : m_chance) {
        for (std::size_t node = 0; node < m_nodes; ++node)
            mean += chances[node] * m_pace->pace[node];
    }
    return mean;
}

double Belief::spentPerYear(const Rates& rates) const
{
    double rate = 0;
    for (std::size_t node = 0; node < m_nodes; ++node)
        rate += m_chance[3][node] * m_pace->pace[node] * rates[3];
    return rate;
}

double Belief::chanceEverSpent(const Rates& rates) const
{
    double chance = chanceSpent();
    for (std::size_t grade = 4; grade-- > 0 && rates[grade] > 0;)
        chance += gradeTotal(grade);
    return std::min(chance, 1.0);
}

} // namespace padside

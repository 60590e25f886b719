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
/// Up to this many expected jumps, summing them over all nodes at once is the quicker way.
constexpr double mostJumpsSummed = 40;

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
    const double mostJumps = largest * exposureYears * fastestPace();
    if (mostJumps == 0)
        return;
    if (mostJumps > mostJumpsSummed) {
        for (std::size_t node = 0; node < m_nodes; ++node) {
            const Transition chance = transitionAfter(rates, exposureYears * m_pace->pace[node]);
            for (std::size_t to = gradeCount; to-- > 0;) {
                double sum = 0;
                for (std::size_t from = 0; from <= to; ++from)
                    sum += m_chance[from][node] * chance[from][to];
                m_chance[to][node] = sum;
            }
        }
        return;
    }
    // As in transition.cpp, for the chances alone and all nodes side by side.
    std::array<std::array<double, mostPaceNodes>, gradeCount> term{};
    std::array<double, mostPaceNodes> time{};
    for (std::size_t node = 0; node < m_nodes; ++node) {
        time[node] = exposureYears * m_pace->pace[node];
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            term[grade][node] = m_chance[grade][node];
    }
    const int terms = 8 + static_cast<int>(std::ceil(1.3 * mostJumps + 9 * std::sqrt(mostJumps)));
    for (int n = 1; n <= terms; ++n) {
        const double share = 1.0 / n;
        for (std::size_t grade = gradeCount; grade-- > 0;) {
            const double stay = (largest - (grade < 4 ? rates[grade] : 0)) * share;
            const double come = grade > 0 ? rates[grade - 1] * share : 0;
            const auto& below = term[grade > 0 ? grade - 1 : 0];
            auto& here = term[grade];
            auto& sum = m_chance[grade];
            for (std::size_t node = 0; node < m_nodes; ++node) {
                here[node] = (here[node] * stay + below[node] * come) * time[node];
                sum[node] += here[node];
            }
        }
    }
    for (std::size_t node = 0; node < m_nodes; ++node) {
        const double none = std::exp(-largest * time[node]);
        for (auto& sum : m_chance)
            sum[node] *= none;
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

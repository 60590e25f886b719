// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/belief.h"

#include "core/outlook/misgrading.h"
#include "core/outlook/transition.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace padside {

namespace {

/// Below this a likelihood has lost its digits: what it stands for can't be.
constexpr double leastLikelihood = 1e-250;

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
    , m_stride(paceStride(m_nodes))
    , m_chance(gradeCount * m_stride)
{
    for (std::size_t grade = 0; grade < gradeCount; ++grade) {
        for (std::size_t node = 0; node < m_nodes; ++node)
            at(grade, node) = m_pace->weight[node] * grades[grade];
    }
}

void Belief::carryForward(const PacedChain& chain, double exposureYears, double clockSpeed)
{
    assert(chain.pace()->pace == m_pace->pace);
    chain.carry(m_chance, exposureYears, clockSpeed);
}

void Belief::carryForward(const Rates& rates, double exposureYears)
{
    assert(std::isfinite(exposureYears) && exposureYears >= 0);
    for (std::size_t node = 0; node < m_nodes; ++node) {
        const Transition chance = transitionAfter(rates, exposureYears * m_pace->pace[node]);
        for (std::size_t to = gradeCount; to-- > 0;) {
            double sum = 0;
            for (std::size_t from = 0; from <= to; ++from)
                sum += at(from, node) * chance[from][to];
            at(to, node) = sum;
        }
    }
}

bool Belief::weigh(const GradeChances& likelihood)
{
    double total = 0;
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        total += likelihood[grade] > 0 ? likelihood[grade] * gradeTotal(grade) : 0;
    if (!(total > leastLikelihood))
        return false;
    for (std::size_t grade = 0; grade < gradeCount; ++grade) {
        const double factor = likelihood[grade] / total;
        for (std::size_t node = 0; node < m_stride; ++node)
            at(grade, node) *= factor;
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
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            ofNode += at(grade, node);
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            at(grade, node) = ofNode * grades[grade];
    }
}

void Belief::repair()
{
    for (std::size_t node = 0; node < m_nodes; ++node) {
        std::array<double, gradeCount> after{};
        for (std::size_t was = 0; was < gradeCount; ++was) {
            const std::size_t worst = std::min(was, indexOf(Grade::poor));
            for (std::size_t grade = 0; grade <= worst; ++grade)
                after[grade] += at(was, node) / static_cast<double>(worst + 1);
        }
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            at(grade, node) = after[grade];
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
    std::array<double, 4> sums{}; // side by side
    for (std::size_t node = 0; node < m_stride; node += sums.size()) {
        for (std::size_t lane = 0; lane < sums.size(); ++lane)
            sums[lane] += at(grade, node + lane);
    }
    return (sums[0] + sums[1]) + (sums[2] + sums[3]);
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
    for (std::size_t grade = 0; grade < gradeCount; ++grade) {
        for (std::size_t node = 0; node < m_nodes; ++node)
            mean += at(grade, node) * m_pace->pace[node];
    }
    return mean;
}

double Belief::spentPerYear(const Rates& rates) const
{
    double rate = 0;
    for (std::size_t node = 0; node < m_nodes; ++node)
        rate += at(3, node) * m_pace->pace[node] * rates[3];
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

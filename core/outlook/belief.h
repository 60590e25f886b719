// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/pace.h"
#include "core/outlook/paced_chain.h"
#include "core/outlook/rates.h"
#include "core/record/grade.h"

#include <memory>

namespace padside {

/// What a record supports about one zone: the chances of its five grades together with its pace, its own multiplier on
/// the rates of its kind. Chances always add up to 1; evidence that can't be is refused and changes nothing.
class Belief
{
public:
    /// Certainly of this grade; the pace as of any zone.
    Belief(std::shared_ptr<const Pace> pace, Grade grade);
    /// With these chances of the grades (>= 0, adding up to 1).
    Belief(std::shared_ptr<const Pace> pace, const GradeChances& grades);

    /// So many years of exposure pass (finite, >= 0) at the chain's rates times the pace. The chain has the paces of
    /// this belief (assert). Where they are whole days at one speed of the clock, that speed makes it quicker, see
    /// PacedChain::carry.
    void carryForward(const PacedChain& chain, double exposureYears, double clockSpeed = 0);
    /// The same for rates that are asked only once.
    void carryForward(const Rates& rates, double exposureYears);

    /// What the likelihood of something seen, by true grade, makes of it. False: it can't be, and nothing changes.
    [[nodiscard]] bool weigh(const GradeChances& likelihood);
    [[nodiscard]] bool see(Grade seen); ///< graded so, by the misgrading matrix
    [[nodiscard]] bool seeNotSpent(); ///< not seen, but the part works

    /// The grades begin again with these chances; what is known of the pace stays.
    void regrade(const GradeChances& grades);
    /// Made better by an unknown amount: any grade from 1 up to what it was, at most poor, equally likely.
    void repair();
    /// A new thing in its place: sound, its pace as of any zone.
    void renew();

    [[nodiscard]] GradeChances grades() const;
    [[nodiscard]] double chanceSpent() const;
    [[nodiscard]] double meanPace() const;
    /// Chance density of becoming spent now, per year of exposure.
    [[nodiscard]] double spentPerYear(const Rates& rates) const;
    /// Of everything weighed so far.
    [[nodiscard]] double logLikelihood() const { return m_logLikelihood; }
    void addLogLikelihood(double more) { m_logLikelihood += more; }
    /// The chance that it will ever be spent: below 1 only where a rate is 0.
    [[nodiscard]] double chanceEverSpent(const Rates& rates) const;
    [[nodiscard]] const std::shared_ptr<const Pace>& pace() const { return m_pace; }
    [[nodiscard]] const PacedChances& pacedChances() const { return m_chance; }

private:
    [[nodiscard]] double gradeTotal(std::size_t grade) const;
    [[nodiscard]] double& at(std::size_t grade, std::size_t node) { return m_chance[grade * m_stride + node]; }
    [[nodiscard]] double at(std::size_t grade, std::size_t node) const { return m_chance[grade * m_stride + node]; }

    std::shared_ptr<const Pace> m_pace;
    std::size_t m_nodes = 0;
    std::size_t m_stride = 0;
    PacedChances m_chance; ///< adding up to 1
    double m_logLikelihood = 0;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/first_passage.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace padside {

namespace {

constexpr double longestYears = 1e15;
/// Newton's steps get shorter by their square: after one of this share of the time the next would be about 1e-13 of it.
constexpr double lastStep = 3e-7;
constexpr double narrowest = 1e-15; ///< bracket, of the time
constexpr int mostSteps = 200;

/// A time and the chance of being spent by then.
struct Rung
{
    double years = 0;
    SpentAt spent;
};

/// Where a cubic through both ends, with their slopes, reaches the chance; outside or no number where that is no guess.
double guessBetween(const Rung& low, const Rung& high, double chance)
{
    const double rise = high.spent.chance - low.spent.chance;
    const double share = (chance - low.spent.chance) / rise;
    const double width = high.years - low.years;
    const double left = 1 - share;
    const double slopeLow = rise / low.spent.perYear;
    const double slopeHigh = rise / high.spent.perYear;
    return low.years + share * (width * share * (3 - 2 * share) + left * (slopeLow * left - slopeHigh * share));
}

/// Looks for the times at which chances are reached, which must rise from call to call.
class Search
{
public:
    Search(const Belief& belief, const PacedChain& chain)
        : m_belief(belief)
        , m_chances(belief.pacedChances())
        , m_chain(chain)
        , m_today(belief.chanceSpent())
        , m_ever(belief.chanceEverSpent(chain.rates()))
    {
    }

    [[nodiscard]] std::optional<double> yearsTo(double chance)
    {
        assert(chance > 0 && chance < 1);
        if (m_today >= chance)
            return 0;
        if (m_ever <= chance)
            return std::nullopt;
        const auto step = m_chain.stepReaching(m_chances, chance, m_step);
        if (!step)
            return beyondTheLadder(chance);
        m_step = *step;
        const double years = between(*step > 0 ? rung(*step - 1) : begin(), rung(*step), chance);
        return years < longestYears ? std::optional(years) : std::nullopt;
    }

private:
    [[nodiscard]] Rung begin() const { return {0, {m_today, m_belief.spentPerYear(m_chain.rates())}}; }
    [[nodiscard]] Rung rung(std::size_t step) const
    {
        return {m_chain.yearsOfStep(step), m_chain.spentAtStep(m_chances, step)};
    }

    /// The chance is reached between two times: Newton's steps, kept between them.
    [[nodiscard]] double between(const Rung& from, const Rung& to, double chance) const
    {
        double low = from.years;
        double high = to.years;
        double years = guessBetween(from, to, chance);
        for (int step = 0; step < mostSteps; ++step) {
            if (!(years > low && years < high))
                years = (low + high) / 2;
            const SpentAt here = m_chain.spentAt(m_chances, years);
            (here.chance < chance ? low : high) = years;
            const double next = years + (chance - here.chance) / here.perYear;
            const bool newton = next >= low && next <= high; // false for what is no number
            if (newton && std::abs(next - years) <= lastStep * years)
                return next;
            if (high - low <= narrowest * high)
                break;
            years = newton ? next : low; // halved at the next turn
        }
        return (low + high) / 2;
    }

    /// Rates that differ by many orders.
    [[nodiscard]] std::optional<double> beyondTheLadder(double chance) const
    {
        const double largest = *std::ranges::max_element(m_chain.rates());
        Rung low = begin();
        for (double years = 1 / largest; low.years < longestYears; years *= 2) {
            const Rung high{years, m_chain.spentAt(m_chances, years)};
            if (high.spent.chance >= chance) {
                const double found = between(low, high, chance);
                return found < longestYears ? std::optional(found) : std::nullopt;
            }
            low = high;
        }
        return std::nullopt;
    }

    const Belief& m_belief;
    const PacedChances& m_chances;
    const PacedChain& m_chain;
    double m_today;
    double m_ever;
    std::size_t m_step = 0;
};

} // namespace

double chanceSpentAfter(const Belief& belief, const PacedChain& chain, double exposureYears)
{
    return chain.chanceSpentAfter(belief.pacedChances(), exposureYears);
}

double chanceSpentAfter(const Belief& belief, const Rates& rates, double exposureYears)
{
    Belief later = belief;
    later.carryForward(rates, exposureYears);
    return later.chanceSpent();
}

std::optional<double> exposureToSpent(const Belief& belief, const PacedChain& chain, double chance)
{
    return Search(belief, chain).yearsTo(chance);
}

std::optional<double> exposureToSpent(const Belief& belief, const Rates& rates, double chance)
{
    return exposureToSpent(belief, PacedChain(rates, belief.pace()), chance);
}

PassageRange exposureRangeToSpent(const Belief& belief, const PacedChain& chain)
{
    Search search(belief, chain);
    PassageRange range;
    range.early = search.yearsTo(0.1);
    range.middle = search.yearsTo(0.5);
    range.late = search.yearsTo(0.9);
    return range;
}

PassageRange exposureRangeToSpent(const Belief& belief, const Rates& rates)
{
    return exposureRangeToSpent(belief, PacedChain(rates, belief.pace()));
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/first_passage.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace padside {

namespace {

constexpr double longestYears = 1e15;
constexpr double nearEnough = 1e-13; ///< of the time looked for

/// A belief, and how far it has been carried from where it began.
struct Carried
{
    Belief belief;
    double years = 0;

    [[nodiscard]] Carried after(const Rates& rates, double more) const
    {
        Carried later = *this;
        later.belief.carryForward(rates, more);
        later.years += more;
        return later;
    }
};

/// From `low`, where the chance is not reached yet, by Newton's steps kept inside a bracket. `low` moves up to the last
/// place found below.
double refine(Carried& low, double highYears, const Rates& rates, double chance)
{
    double years = (low.years + highYears) / 2;
    for (int step = 0; step < 200; ++step) {
        Carried here = low.after(rates, years - low.years);
        const double missing = chance - here.belief.chanceSpent();
        const double density = here.belief.spentPerYear(rates);
        const double lowest = low.years;
        if (missing > 0)
            low = std::move(here);
        else
            highYears = years;
        double next = density > 0 ? years + missing / density : -1;
        if (!(next > low.years && next < highYears))
            next = (low.years + highYears) / 2;
        const bool done = std::abs(next - years) <= nearEnough * years || !(highYears > lowest);
        years = next;
        if (done)
            break;
    }
    return years;
}

/// The chances looked for must rise from call to call.
std::optional<double> findRising(Carried& low, const Rates& rates, double chance)
{
    assert(chance > 0 && chance < 1);
    if (low.belief.chanceSpent() >= chance)
        return low.years;
    if (low.belief.chanceEverSpent(rates) <= chance)
        return std::nullopt;
    double step = low.years > 0 ? low.years / 2 : 0.5 / (*std::ranges::max_element(rates) * low.belief.fastestPace());
    while (low.years + step < longestYears) {
        Carried high = low.after(rates, step);
        if (high.belief.chanceSpent() >= chance)
            return refine(low, high.years, rates, chance);
        low = std::move(high);
        step *= 2;
    }
    return std::nullopt;
}

} // namespace

double chanceSpentAfter(const Belief& belief, const Rates& rates, double exposureYears)
{
    Belief later = belief;
    later.carryForward(rates, exposureYears);
    return later.chanceSpent();
}

std::optional<double> exposureToSpent(const Belief& belief, const Rates& rates, double chance)
{
    Carried low{belief, 0};
    return findRising(low, rates, chance);
}

PassageRange exposureRangeToSpent(const Belief& belief, const Rates& rates)
{
    Carried low{belief, 0};
    PassageRange range;
    range.early = findRising(low, rates, 0.1);
    range.middle = findRising(low, rates, 0.5);
    range.late = findRising(low, rates, 0.9);
    return range;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/rates.h"

#include <array>
#include <cstddef>
#include <memory>
#include <vector>

namespace padside {

/// The chances of transitionAfter() that are not 0 or 1 for all times, in the order in which they are worked with: the
/// ways to poor, then those to spent, then the rest.
constexpr std::size_t wayCount = 14;
/// [place] is from, to.
constexpr std::array<std::array<std::size_t, 2>, wayCount> ways{
    {{0, 3}, {1, 3}, {2, 3}, {3, 3}, {0, 4}, {1, 4}, {2, 4}, {3, 4}, {0, 0}, {0, 1}, {0, 2}, {1, 1}, {1, 2}, {2, 2}}};
constexpr std::size_t waysToPoorOrSpent = 8;

using WayChances = std::array<double, wayCount>;

/// transitionAfter() for one set of rates at very many times: power series around times that are a sixteenth of
/// their octave apart, each made when it is first needed. As accurate as transitionAfter() to some 1e-14 of each
/// chance. Not to be used by two threads at once.
class TransitionSeries
{
public:
    explicit TransitionSeries(const Rates& rates);

    [[nodiscard]] const Rates& rates() const { return m_rates; }

    /// All chances after `years` of exposure (finite, >= 0).
    [[nodiscard]] WayChances after(double years);
    /// The first waysToPoorOrSpent of them, which is all that becoming spent needs; the others may be anything. Where
    /// more than 16 jumps are expected at the largest rate they are accurate to 1e-14 of 1, not of themselves.
    [[nodiscard]] WayChances towardsSpent(double years);

private:
    static constexpr std::size_t mostTerms = 14;

    /// Around one time: powers of the time over it, less 1.
    struct Series
    {
        double centre = 0; ///< years
        double perCentre = 0; ///< 1 / centre
        std::size_t terms = mostTerms; ///< even; the rest is too small to matter
        std::array<WayChances, mostTerms> power{};
    };

    [[nodiscard]] const Series& seriesAt(std::size_t place);
    template <std::size_t Count> [[nodiscard]] WayChances sum(double years);

    Rates m_rates;
    double m_largest = 0;
    double m_smallest = 0;
    std::vector<std::unique_ptr<const Series>> m_series;
};

} // namespace padside

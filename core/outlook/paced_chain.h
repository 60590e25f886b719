// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/pace.h"
#include "core/outlook/rates.h"

#include <cstddef>
#include <memory>
#include <mutex>
#include <optional>
#include <vector>

namespace padside {

/// Chances of grade and pace together, as a Belief carries them: those of sound at every pace, then those of worn, …
/// Each grade takes paceStride() places, those behind the last pace being 0.
using PacedChances = std::vector<double>;

/// Places for so many paces: a few more, so that they can be worked on several at a time.
[[nodiscard]] constexpr std::size_t paceStride(std::size_t paces)
{
    return (paces + 3) / 4 * 4;
}

/// The chance of being spent at some time, and how fast it grows then.
struct SpentAt
{
    double chance = 0;
    double perYear = 0; ///< of exposure
};

/// Whether the rates of one chain are a multiple of those of another, but for rounding.
[[nodiscard]] bool areProportional(const Rates& one, const Rates& other);

/// One part kind's chain at every pace a zone may have: its rates times the pace. It remembers the transitions it was
/// asked for last, which many zones have in common. The answers do not depend on what it remembers; any thread may ask.
class PacedChain
{
public:
    /// Where the rates of `like` are a multiple of these, both work from the same series.
    PacedChain(const Rates& rates, std::shared_ptr<const Pace> pace, const PacedChain* like = nullptr);
    ~PacedChain();
    PacedChain(const PacedChain&) = delete;
    PacedChain& operator=(const PacedChain&) = delete;

    [[nodiscard]] const Rates& rates() const { return m_rates; }
    [[nodiscard]] const std::shared_ptr<const Pace>& pace() const { return m_pace; }

    /// So many years of exposure pass (finite, >= 0). If they are whole days at a known speed of the clock (> 0), they
    /// pass in two or three parts, days by sixteens, which come up again and again where the whole does not.
    void carry(PacedChances& chances, double exposureYears, double clockSpeed = 0) const;

    /// The chance of being spent after so many more (finite, >= 0): the last grade of what carry() makes of it.
    [[nodiscard]] double chanceSpentAfter(const PacedChances& chances, double exposureYears) const;
    /// The same for a time that nobody else will ask for, with its slope.
    [[nodiscard]] SpentAt spentAt(const PacedChances& chances, double exposureYears) const;

    // A ladder of times, each sqrt(2) times the one before: where to look for the time at which a chance is reached.
    /// The first step from `from` on with at least this chance of being spent; empty where the ladder ends before.
    [[nodiscard]] std::optional<std::size_t> stepReaching(const PacedChances& chances, double chance,
                                                          std::size_t from) const;
    [[nodiscard]] SpentAt spentAtStep(const PacedChances& chances, std::size_t step) const;
    [[nodiscard]] double yearsOfStep(std::size_t step) const; ///< infinite where all rates are 0

private:
    struct Series;
    struct Memory;

    Rates m_rates;
    double m_firstStep; ///< years
    std::shared_ptr<const Pace> m_pace;
    std::size_t m_stride;
    std::shared_ptr<Series> m_series;
    double m_scale = 1; ///< of years to those of the series
    mutable std::mutex m_mutex;
    std::unique_ptr<Memory> m_memory;
};

} // namespace padside

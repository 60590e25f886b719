// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/paced_chain.h"

#include "core/outlook/transition_series.h"
#include "core/quantity/date.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cassert>
#include <cmath>
#include <cstdint>

namespace padside {

namespace {

constexpr int rememberedBits = 9;
constexpr std::size_t remembered = std::size_t{1} << rememberedBits; ///< transitions
constexpr std::size_t ladderSteps = 64;
constexpr double firstStepJumps = 0x1p-6; ///< expected at the largest rate; the last step has 2^25.5
constexpr double longestStep = 1e16; ///< years
constexpr long long mostDays = 100'000;
constexpr double sameYears = 1e-13; ///< relative
constexpr double roundedAlike = 1e-15;

/// The transition after one time at every pace: [way] at every pace, one way after the other.
struct PacedTransition
{
    double years = -1; ///< none yet
    std::vector<double> chance;
};

/// Where a number of years is remembered: the highest bits of its own, multiplied by 2^64 over the golden ratio; they
/// depend on all of its bits, so that times that are doubles of each other keep apart.
std::size_t slotOf(double years)
{
    return static_cast<std::size_t>((std::bit_cast<std::uint64_t>(years) * 0x9E3779B97F4A7C15U)
                                    >> (64 - rememberedBits));
}

constexpr std::size_t wayOf(std::size_t from, std::size_t to)
{
    for (std::size_t way = 0; way < wayCount; ++way) {
        if (ways[way][0] == from && ways[way][1] == to)
            return way;
    }
    return wayCount;
}

/// A pace that is so unlikely adds nothing to a chance that can be told.
constexpr double tooUnlikely = 1e-18;

/// Four paces at a time.
constexpr std::size_t width = 4;
using Lanes = std::array<double, width>;

double sumOf(const Lanes& lanes)
{
    return (lanes[0] + lanes[1]) + (lanes[2] + lanes[3]);
}

} // namespace

/// Series that several chains may share.
struct PacedChain::Series
{
    explicit Series(const Rates& rates)
        : transition(rates)
    {
    }

    std::mutex mutex;
    TransitionSeries transition;
};

struct PacedChain::Memory
{
    Memory(Series& ofChain, double scaleOfChain)
        : series(ofChain)
        , scale(scaleOfChain)
    {
    }

    Series& series;
    double scale;
    std::vector<PacedTransition> recent; ///< all ways
    std::vector<PacedTransition> recentTowardsSpent; ///< only the first waysToPoorOrSpent, as in the ladder
    std::vector<PacedTransition> ladder;

    const PacedTransition& after(double years, const Pace& pace, std::size_t stride)
    {
        recent.resize(remembered);
        PacedTransition& place = recent[slotOf(years)];
        if (place.years != years)
            fill(place, years, pace, stride, wayCount);
        return place;
    }

    const PacedTransition& towardsSpent(double years, const Pace& pace, std::size_t stride)
    {
        recentTowardsSpent.resize(remembered);
        PacedTransition& place = recentTowardsSpent[slotOf(years)];
        if (place.years != years)
            fill(place, years, pace, stride, waysToPoorOrSpent);
        return place;
    }

    const PacedTransition& step(std::size_t number, double years, const Pace& pace, std::size_t stride)
    {
        ladder.resize(ladderSteps);
        if (ladder[number].years < 0)
            fill(ladder[number], years, pace, stride, waysToPoorOrSpent);
        return ladder[number];
    }

private:
    void fill(PacedTransition& place, double years, const Pace& pace, std::size_t stride, std::size_t count)
    {
        place.chance.resize(count * stride);
        const std::lock_guard lock(series.mutex);
        for (std::size_t node = 0; node < pace.pace.size(); ++node) {
            const double paced = years * scale * pace.pace[node];
            const WayChances at
                = count == wayCount ? series.transition.after(paced) : series.transition.towardsSpent(paced);
            for (std::size_t way = 0; way < count; ++way)
                place.chance[way * stride + node] = at[way];
        }
        place.years = years;
    }
};

bool areProportional(const Rates& one, const Rates& other)
{
    const double oneLargest = *std::ranges::max_element(one);
    const double otherLargest = *std::ranges::max_element(other);
    return oneLargest > 0 && otherLargest > 0 && std::ranges::equal(one, other, [&](double mine, double theirs) {
               return std::abs(mine / oneLargest - theirs / otherLargest) <= roundedAlike * mine / oneLargest;
           });
}

PacedChain::PacedChain(const Rates& rates, std::shared_ptr<const Pace> pace, const PacedChain* like)
    : m_rates(rates)
    , m_firstStep(firstStepJumps / *std::ranges::max_element(rates))
    , m_pace(std::move(pace))
    , m_stride(paceStride(m_pace->pace.size()))
{
    if (like != nullptr && areProportional(rates, like->rates())) {
        m_series = like->m_series;
        m_scale = like->m_scale * (*std::ranges::max_element(rates) / *std::ranges::max_element(like->rates()));
    } else {
        m_series = std::make_shared<Series>(rates);
    }
    m_memory = std::make_unique<Memory>(*m_series, m_scale);
}

PacedChain::~PacedChain() = default;

namespace {

template <std::size_t To> void carryInto(double* chances, const double* transition, std::size_t stride)
{
    for (std::size_t node = 0; node < stride; node += width) {
        Lanes sum{};
        for (std::size_t from = 0; from <= To; ++from) {
            if constexpr (To == 4) {
                if (from == 4)
                    break;
            }
            for (std::size_t lane = 0; lane < width; ++lane)
                sum[lane] += chances[from * stride + node + lane] * transition[wayOf(from, To) * stride + node + lane];
        }
        for (std::size_t lane = 0; lane < width; ++lane) {
            double& chance = chances[To * stride + node + lane];
            chance = To == 4 ? chance + sum[lane] : sum[lane];
        }
    }
}

/// From the worst down: better grades are still as they were.
void carryBy(double* chances, const double* transition, std::size_t stride)
{
    carryInto<4>(chances, transition, stride);
    carryInto<3>(chances, transition, stride);
    carryInto<2>(chances, transition, stride);
    carryInto<1>(chances, transition, stride);
    carryInto<0>(chances, transition, stride);
}

double spentAfter(const double* chances, const double* transition, std::size_t stride)
{
    Lanes sum{};
    for (std::size_t node = 0; node < stride; node += width) {
        for (std::size_t lane = 0; lane < width; ++lane)
            sum[lane] += chances[4 * stride + node + lane];
        for (std::size_t from = 0; from < 4; ++from) {
            for (std::size_t lane = 0; lane < width; ++lane)
                sum[lane] += chances[from * stride + node + lane] * transition[wayOf(from, 4) * stride + node + lane];
        }
    }
    return std::clamp(sumOf(sum), 0.0, 1.0);
}

} // namespace

void PacedChain::carry(PacedChances& chances, double exposureYears, double clockSpeed) const
{
    assert(std::isfinite(exposureYears) && exposureYears >= 0);
    if (exposureYears == 0)
        return;
    const std::lock_guard lock(m_mutex);
    const auto pass = [&](double years) {
        carryBy(chances.data(), m_memory->after(years, *m_pace, m_stride).chance.data(), m_stride);
    };
    const auto days = clockSpeed > 0 ? std::llround(exposureYears * daysInAYear / clockSpeed) : 0;
    const double yearsPerDay = clockSpeed / daysInAYear;
    const bool whole = days > 0 && days < mostDays
        && std::abs(static_cast<double>(days) * yearsPerDay - exposureYears) <= sameYears * exposureYears;
    if (!whole) {
        pass(exposureYears);
        return;
    }
    for (const auto part : {days % 16, days / 16 % 16 * 16, days / 256 * 256}) {
        if (part > 0)
            pass(static_cast<double>(part) * yearsPerDay);
    }
}

double PacedChain::chanceSpentAfter(const PacedChances& chances, double exposureYears) const
{
    assert(std::isfinite(exposureYears) && exposureYears >= 0);
    const std::lock_guard lock(m_mutex);
    return spentAfter(chances.data(), m_memory->towardsSpent(exposureYears, *m_pace, m_stride).chance.data(), m_stride);
}

SpentAt PacedChain::spentAt(const PacedChances& chances, double exposureYears) const
{
    const std::lock_guard lock(m_series->mutex);
    SpentAt spent;
    for (std::size_t node = 0; node < m_pace->pace.size(); ++node) {
        double unspent = 0;
        for (std::size_t from = 0; from < 4; ++from)
            unspent += chances[from * m_stride + node];
        spent.chance += chances[4 * m_stride + node];
        if (unspent < tooUnlikely)
            continue;
        const double pace = m_pace->pace[node];
        const WayChances at = m_series->transition.towardsSpent(exposureYears * m_scale * pace);
        double poor = 0;
        for (std::size_t from = 0; from < 4; ++from) {
            const double chance = chances[from * m_stride + node];
            spent.chance += chance * at[wayOf(from, 4)];
            poor += chance * at[wayOf(from, 3)];
        }
        spent.perYear += poor * pace;
    }
    spent.perYear *= m_rates[3];
    return spent;
}

std::optional<std::size_t> PacedChain::stepReaching(const PacedChances& chances, double chance, std::size_t from) const
{
    const std::lock_guard lock(m_mutex);
    std::size_t steps = ladderSteps;
    while (steps > 0 && !(yearsOfStep(steps - 1) < longestStep))
        --steps;
    const auto reaches = [&](std::size_t step) {
        const double* transition = m_memory->step(step, yearsOfStep(step), *m_pace, m_stride).chance.data();
        return spentAfter(chances.data(), transition, m_stride) >= chance;
    };
    std::size_t low = from;
    std::size_t high = from;
    for (std::size_t leap = 1; high < steps && !reaches(high); leap *= 2) {
        low = high + 1;
        high += leap;
    }
    high = std::min(high, steps);
    while (low < high) {
        const std::size_t middle = (low + high) / 2;
        if (reaches(middle))
            high = middle;
        else
            low = middle + 1;
    }
    return low < steps ? std::optional(low) : std::nullopt;
}

SpentAt PacedChain::spentAtStep(const PacedChances& chances, std::size_t step) const
{
    const std::lock_guard lock(m_mutex);
    const double* transition = m_memory->step(step, yearsOfStep(step), *m_pace, m_stride).chance.data();
    SpentAt spent{spentAfter(chances.data(), transition, m_stride), 0};
    for (std::size_t node = 0; node < m_pace->pace.size(); ++node) {
        double poor = 0;
        for (std::size_t from = 0; from < 4; ++from)
            poor += chances[from * m_stride + node] * transition[wayOf(from, 3) * m_stride + node];
        spent.perYear += poor * m_pace->pace[node];
    }
    spent.perYear *= m_rates[3];
    return spent;
}

double PacedChain::yearsOfStep(std::size_t step) const
{
    return m_firstStep * std::exp2(static_cast<double>(step) / 2);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/transition_series.h"

#include "core/outlook/transition.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cmath>
#include <cstdint>

namespace padside {

namespace {

// Times are told in jumps expected at the largest rate. A series is used within a part in 33 of its centre; for at most
// 16 jumps the terms left out matter less than 1e-15 of any chance. Longer times are halved until they fit, and
// squared.
constexpr int partsOfOctave = 16;
constexpr int partBits = 4;
constexpr double farthestOff = 1.0 / 33;
constexpr int lowestOctave = -20;
constexpr int octaves = 27;
constexpr double fewestJumps = 0x1p-20;
constexpr double mostJumps = 16;
constexpr double mostJumpsToSpent = 128; ///< up to here the series hold to 1e-14 of 1
constexpr double mostJumpsSquared = 1024;
constexpr int fewSquarings = 2; ///< which leave rounding errors small by themselves
/// So many jumps at the smallest rate leave a chance below 1e-15 of not being spent.
constexpr double surelySpent = 45;
constexpr double tooSmall = 1e-17; ///< for a term, of its chance

/// Which part of which octave, from the bits of a double: exponent and the first bits behind the point.
std::size_t placeOf(double jumps)
{
    const auto bits = static_cast<std::int64_t>(std::bit_cast<std::uint64_t>(jumps) >> (52 - partBits));
    return static_cast<std::size_t>(bits - (std::int64_t{1023 + lowestOctave} << partBits));
}

double centreOf(std::size_t place)
{
    const auto octave = static_cast<int>(place) / partsOfOctave;
    const auto part = static_cast<int>(place) % partsOfOctave;
    return std::ldexp(1 + (part + 0.5) / partsOfOctave, octave + lowestOctave);
}

WayChances packed(const Transition& chance)
{
    WayChances all{};
    for (std::size_t way = 0; way < wayCount; ++way)
        all[way] = chance[ways[way][0]][ways[way][1]];
    return all;
}

Transition unpacked(const WayChances& all)
{
    Transition chance{};
    for (std::size_t way = 0; way < wayCount; ++way)
        chance[ways[way][0]][ways[way][1]] = all[way];
    chance[4][4] = 1;
    return chance;
}

} // namespace

TransitionSeries::TransitionSeries(const Rates& rates)
    : m_rates(rates)
    , m_largest(*std::ranges::max_element(rates))
    , m_smallest(*std::ranges::min_element(rates))
    , m_series(static_cast<std::size_t>(octaves) * partsOfOctave)
{
}

const TransitionSeries::Series& TransitionSeries::seriesAt(std::size_t place)
{
    if (m_series[place])
        return *m_series[place];
    auto series = std::make_unique<Series>();
    const double years = centreOf(place) / m_largest;
    series->centre = years;
    series->perCentre = 1 / years;
    Transition power = transitionAfter(m_rates, years);
    series->power[0] = packed(power);
    double off = 1;
    std::size_t needed = 1;
    for (std::size_t n = 1; n < mostTerms; ++n) {
        // The derivative by time is the generator times the transition: from a grade on to the next one.
        for (std::size_t from = 0; from + 1 < gradeCount; ++from) {
            const double jumps = m_rates[from] * years / static_cast<double>(n);
            for (std::size_t to = from; to < gradeCount; ++to)
                power[from][to] = jumps * (power[from + 1][to] - power[from][to]);
        }
        power[4][4] = 0;
        series->power[n] = packed(power);
        off *= farthestOff;
        for (std::size_t way = 0; way < wayCount; ++way) {
            if (std::abs(series->power[n][way]) * off > tooSmall * series->power[0][way])
                needed = n + 1;
        }
    }
    series->terms = (needed + 1) / 2 * 2;
    m_series[place] = std::move(series);
    return *m_series[place];
}

/// Even and odd powers side by side.
template <std::size_t Count> WayChances TransitionSeries::sum(double years)
{
    const Series& series = seriesAt(placeOf(m_largest * years));
    const double off = (years - series.centre) * series.perCentre;
    const double square = off * off;
    WayChances even = series.power[series.terms - 2];
    WayChances odd = series.power[series.terms - 1];
    for (std::size_t n = series.terms - 2; n >= 2; n -= 2) {
        for (std::size_t way = 0; way < Count; ++way)
            even[way] = even[way] * square + series.power[n - 2][way];
        for (std::size_t way = 0; way < Count; ++way)
            odd[way] = odd[way] * square + series.power[n - 1][way];
    }
    for (std::size_t way = 0; way < Count; ++way)
        even[way] += odd[way] * off;
    return even;
}

WayChances TransitionSeries::after(double years)
{
    assert(std::isfinite(years) && years >= 0);
    const double jumps = m_largest * years;
    if (jumps >= fewestJumps && jumps < mostJumps)
        return sum<wayCount>(years);
    if (!(jumps >= fewestJumps && jumps < mostJumpsSquared))
        return packed(transitionAfter(m_rates, years));
    int halvings = 0;
    double part = 1;
    for (; jumps * part >= mostJumps; part /= 2)
        ++halvings;
    Transition chance = unpacked(sum<wayCount>(years * part));
    for (int squaring = 0; squaring < halvings; ++squaring) {
        chance = squared(chance);
        part *= 2;
        if (halvings > fewSquarings)
            setStaying(chance, m_rates, years * part);
    }
    return packed(chance);
}

WayChances TransitionSeries::towardsSpent(double years)
{
    const double jumps = m_largest * years;
    if (jumps >= fewestJumps && jumps < mostJumpsToSpent)
        return sum<waysToPoorOrSpent>(years);
    if (m_smallest * years >= surelySpent)
        return {0, 0, 0, 0, 1, 1, 1, 1};
    return after(years);
}

} // namespace padside

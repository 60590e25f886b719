// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/track_figures.h"

#include "core/track/track_words.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace padside {

namespace {

constexpr std::array<double, 3> rangeChances{0.1, 0.5, 0.9};
constexpr double wrongWay = 0.5; ///< misses are larger than this

void enter(ScoreSheet& sheet, double chance, Outcome outcome)
{
    switch (outcome) {
    case Outcome::waiting:
        return sheet.wait();
    case Outcome::untold:
        return sheet.leaveUntold();
    case Outcome::spent:
    case Outcome::notSpent:
        return sheet.settle(chance, outcome == Outcome::spent);
    }
}

/// The worst a forecast was wrong. What was found early need not wait for its day here.
std::optional<Miss> missOf(const HeldForecast& held)
{
    std::optional<Miss> worst;
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) {
        const Date day = held.dayOf(horizon);
        const bool spent = held.spentOn && *held.spentOn <= day;
        if (!spent && !(held.notSpentOn && *held.notSpentOn >= day))
            continue;
        Miss miss;
        miss.unitId = held.forecast.unitId;
        miss.partId = held.partId;
        miss.zoneId = held.forecast.zoneId;
        miss.on = held.forecast.on;
        miss.horizon = horizon;
        miss.chance = held.forecast.chances[horizon];
        miss.spent = spent;
        miss.toldOn = spent ? *held.spentOn : *held.notSpentOn;
        if (!worst || miss.size() > worst->size())
            worst = miss;
    }
    return worst;
}

bool isLarger(const Miss& one, const Miss& other)
{
    return std::tuple(-one.size(), one.on, one.tag, one.zoneId)
        < std::tuple(-other.size(), other.on, other.tag, other.zoneId);
}

void keepEarliest(std::optional<Date>& kept, Date day)
{
    kept = kept ? std::min(*kept, day) : day;
}

} // namespace

TrackTally::TrackTally(std::size_t mostMisses)
    : m_mostMisses(mostMisses)
{
}

void TrackTally::addZone(std::span<const HeldForecast> zone, const UnitRecord& record, const Catalogue& catalogue)
{
    for (const HeldForecast& held : zone) {
        ++m_forecasts;
        keepEarliest(m_keptSince, held.forecast.on);
        for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) {
            enter(m_horizons[horizon], held.forecast.chances[horizon], held.at(horizon));
            if (held.dayOf(horizon) > held.today)
                keepEarliest(m_nextDue, held.dayOf(horizon));
        }
        addRange(held);
    }
    for (ScoreSheet& sheet : m_horizons)
        sheet.nextZone();
    for (ScoreSheet& sheet : m_ends)
        sheet.nextZone();
    noteMiss(zone, record, catalogue);
}

void TrackTally::addRange(const HeldForecast& held)
{
    const KeptForecast& forecast = held.forecast;
    const std::array ends{forecast.dates.early, forecast.dates.middle, forecast.dates.late};
    for (std::size_t end = 0; end < ends.size(); ++end)
        enter(m_ends[end], rangeChances[end], ends[end] ? held.by(*ends[end]) : Outcome::waiting);

    switch (forecast.dates.late ? held.by(*forecast.dates.late) : Outcome::waiting) {
    case Outcome::waiting:
        ++m_range.waiting;
        return;
    case Outcome::untold:
        ++m_range.untold;
        return;
    case Outcome::notSpent:
        ++m_range.after;
        return;
    case Outcome::spent:
        if (*held.spentOn <= *forecast.dates.early)
            ++m_range.before;
        else if (held.notSpentOn.value_or(forecast.on) >= *forecast.dates.early)
            ++m_range.inside;
        else
            ++m_range.untold;
        return;
    }
}

void TrackTally::noteMiss(std::span<const HeldForecast> zone, const UnitRecord& record, const Catalogue& catalogue)
{
    std::optional<Miss> worst;
    const HeldForecast* of = nullptr;
    for (const HeldForecast& held : zone) {
        auto miss = missOf(held);
        if (miss && (!worst || miss->size() > worst->size())) {
            worst = std::move(miss);
            of = &held;
        }
    }
    if (!worst || worst->size() <= wrongWay)
        return;
    worst->tag = record.unit.tag;
    const auto place = std::ranges::upper_bound(m_misses, *worst, isLarger);
    if (place == m_misses.end() && m_misses.size() >= m_mostMisses)
        return;
    worst->sentence = missSentence(*worst, *of, record, catalogue);
    m_misses.insert(place, *std::move(worst));
    if (m_misses.size() > m_mostMisses)
        m_misses.pop_back();
}

TrackFigures TrackTally::figures() const
{
    TrackFigures figures;
    figures.forecasts = m_forecasts;
    figures.keptSince = m_keptSince;
    figures.nextDue = m_nextDue;
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon)
        figures.horizons[horizon] = m_horizons[horizon].scores();
    for (std::size_t end = 0; end < rangeChances.size(); ++end)
        figures.ends[end] = {rangeChances[end], m_ends[end].scores()};
    figures.range = m_range;
    figures.misses = m_misses;
    return figures;
}

} // namespace padside

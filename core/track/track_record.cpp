// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/track_record.h"

#include "core/outlook/kind_lesson.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace padside {

namespace {

using ZoneForecasts = std::span<const HeldForecast>; ///< in the order of their days

/// When the life in use was learned, if that was by `today`.
std::optional<Date> learntBy(Date today, const HeldForecast& held, const Catalogue& catalogue)
{
    const auto on = lifeLearntOn(catalogue, held.partKind, held.soils);
    return on && *on <= today ? on : std::nullopt;
}

std::size_t countBefore(std::optional<Date> learntOn, ZoneForecasts zone)
{
    if (!learntOn)
        return 0;
    return static_cast<std::size_t>(
        std::ranges::count_if(zone, [&](const HeldForecast& held) { return held.forecast.on < *learntOn; }));
}

} // namespace

const TrackFigures& TrackSummary::of(ForecastSet set) const
{
    static const TrackFigures none;
    switch (set) {
    case ForecastSet::all:
        break;
    case ForecastSet::inUse:
        return learning ? learning->inUse : all;
    case ForecastSet::before:
        return learning ? learning->before : none;
    }
    return all;
}

TrackRecord::TrackRecord(std::size_t mostMisses)
    : m_all(mostMisses)
    , m_inUse(mostMisses)
    , m_before(mostMisses)
{
}

void TrackRecord::add(const UnitRecord& record, std::span<const KeptForecast> forecasts, const Catalogue& catalogue,
                      Date today)
{
    std::vector<HeldForecast> held = holdForecasts(record, forecasts, catalogue, today);
    std::ranges::sort(held, {}, [](const HeldForecast& one) {
        return std::tuple(one.forecast.zoneId, one.forecast.on, one.forecast.visitId);
    });
    for (std::size_t begin = 0; begin < held.size();) {
        std::size_t end = begin;
        while (end < held.size() && held[end].forecast.zoneId == held[begin].forecast.zoneId)
            ++end;
        const auto zone = ZoneForecasts(held).subspan(begin, end - begin);
        const auto learntOn = learntBy(today, zone.front(), catalogue);
        const std::size_t before = countBefore(learntOn, zone);
        m_all.addZone(zone, record, catalogue);
        m_before.addZone(zone.first(before), record, catalogue);
        m_inUse.addZone(zone.subspan(before), record, catalogue);
        if (!learntOn)
            m_someNeverLearnt = true;
        else if (before > 0)
            noteLearning(*learntOn);
        begin = end;
    }
}

void TrackRecord::noteLearning(Date on)
{
    m_firstLearntOn = std::min(m_firstLearntOn.value_or(on), on);
    m_lastLearntOn = std::max(m_lastLearntOn.value_or(on), on);
}

TrackSummary TrackRecord::summary(const TrackLimits& limits) const
{
    TrackSummary summary;
    summary.all = m_all.figures();
    if (!m_firstLearntOn) {
        summary.verdict = trackVerdict(summary.all, limits);
        return summary;
    }
    SinceLearning learning{*m_firstLearntOn,  *m_lastLearntOn,    m_someNeverLearnt,
                           m_inUse.figures(), m_before.figures(), {}};
    learning.verdictBefore = verdictBefore(learning.before, limits);
    summary.verdict = verdictOfLivesInUse(learning.inUse, limits);
    summary.beside = learning.told(summary.verdict);
    summary.learning = std::move(learning);
    return summary;
}

} // namespace padside

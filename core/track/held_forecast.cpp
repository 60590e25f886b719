// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/held_forecast.h"

#include "core/outlook/ever_fitted.h"

#include <algorithm>
#include <unordered_map>

namespace padside {

namespace {

std::optional<Date> earlier(const std::optional<Date>& one, const std::optional<Date>& other)
{
    if (!one || !other)
        return one ? one : other;
    return std::min(*one, *other);
}

bool isSight(const TrailStep& step)
{
    return step.event == TrailEvent::seen || step.event == TrailEvent::seenOnPaint;
}

bool endsLife(const TrailStep& step)
{
    return step.event == TrailEvent::cleaned || step.event == TrailEvent::repaired || step.event == TrailEvent::madeGood
        || step.event == TrailEvent::renewed;
}

/// Whether it was found spent by then and nothing was done about it.
bool spentAlready(const ZoneTrail& trail, Date on)
{
    bool spent = false;
    for (const TrailStep& step : trail.steps) {
        if (step.on > on)
            break;
        if (isSight(step))
            spent = step.grade == Grade::spent;
        else if (endsLife(step))
            spent = step.event == TrailEvent::madeGood && step.grade == Grade::spent;
    }
    return spent;
}

/// Goes through what came after the forecast until its zone's life was over.
void followOn(HeldForecast& held, const ZoneTrail& trail)
{
    for (const TrailStep& step : trail.steps) {
        if (step.on <= held.forecast.on || (held.endedOn && step.on > *held.endedOn))
            continue;
        if (endsLife(step)) {
            held.endedOn = step.on;
            return;
        }
        if (!isSight(step))
            continue;
        held.lastGrade = step.grade;
        if (step.grade == Grade::spent) {
            held.spentOn = step.on;
            return;
        }
        held.notSpentOn = step.on;
    }
}

} // namespace

Date HeldForecast::dayOf(std::size_t horizon) const
{
    return addMonths(forecast.on, horizonMonths[horizon]);
}

Outcome HeldForecast::at(std::size_t horizon) const
{
    return by(dayOf(horizon));
}

Outcome HeldForecast::by(Date day) const
{
    if (day > today)
        return Outcome::waiting;
    if (spentOn && *spentOn <= day)
        return Outcome::spent;
    if (notSpentOn && *notSpentOn >= day)
        return Outcome::notSpent;
    return spentOn || endedOn ? Outcome::untold : Outcome::waiting;
}

std::vector<HeldForecast> holdForecasts(const UnitRecord& record, std::span<const KeptForecast> forecasts,
                                        const Catalogue& catalogue, Date today)
{
    std::vector<HeldForecast> all;
    if (forecasts.empty())
        return all;
    const std::vector<ZoneTrail> trails = trailsOfEverFitted(record, catalogue, today);
    std::unordered_map<ZoneId, const ZoneTrail*> trailOf;
    for (const ZoneTrail& trail : trails)
        trailOf.emplace(trail.zoneId, &trail);
    std::unordered_map<PartId, Date> removed;
    for (const Part& part : record.parts) {
        if (part.removedOn && *part.removedOn <= today)
            removed.emplace(part.id, *part.removedOn);
    }
    const bool retired = record.unit.retiredOn && *record.unit.retiredOn <= today;
    for (const KeptForecast& forecast : forecasts) {
        const auto trail = trailOf.find(forecast.zoneId);
        const bool certain = forecast.chances.front() >= 1; // a wall or a rusted share at its limit
        if (forecast.on > today || trail == trailOf.end() || certain || spentAlready(*trail->second, forecast.on))
            continue;
        HeldForecast& held = all.emplace_back();
        held.forecast = forecast;
        held.partId = trail->second->partId;
        held.partKind = trail->second->partKind;
        held.soils = trail->second->soils;
        held.today = today;
        const auto out = removed.find(held.partId);
        held.endedOn = earlier(out != removed.end() ? std::optional(out->second) : std::nullopt,
                               retired ? record.unit.retiredOn : std::nullopt);
        followOn(held, *trail->second);
    }
    return all;
}

} // namespace padside

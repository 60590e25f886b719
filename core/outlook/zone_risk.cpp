// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/zone_risk.h"

#include "core/outlook/first_passage.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace padside {

namespace {

/// Up to this chance at the end of the time looked into, the way there is of no interest.
constexpr double worthALook = 0.001;
/// Months at which the course of a zone worth a look is told, before `riskMonths`.
constexpr std::array courseMonths{1, 2, 3, 4, 6, 8, 10, 12, 15};
constexpr std::chrono::days aDay(1);

/// A belief on a day, and how it goes on from there.
struct Standpoint
{
    const Belief& belief;
    const PacedChain& chain;
    const ExposureClock& clock;
    Date on{};

    [[nodiscard]] double chanceOn(Date day) const
    {
        return chanceSpentAfter(belief, chain, clock.yearsBetween(on, day));
    }
    /// The same for a day that hardly another zone will be asked about.
    [[nodiscard]] double chanceOnOnce(Date day) const
    {
        return chain.spentAt(belief.pacedChances(), clock.yearsBetween(on, day)).chance;
    }
};

/// The first day after `from` on which the chance is over `tolerance`, which it is on `last`; on `from` it is not.
Date firstDayOver(const Standpoint& from, double tolerance, Date last)
{
    const auto years = exposureToSpent(from.belief, from.chain, tolerance);
    const auto near = years ? from.clock.dayAfter(from.on, *years, last) : std::nullopt;
    // The time is as exact as numbers are; on which side of it its day lies is asked, not trusted.
    Date over = std::max(near.value_or(last), from.on + aDay);
    while (over < last && from.chanceOnOnce(over) <= tolerance)
        over += aDay;
    while (over - aDay > from.on && from.chanceOnOnce(over - aDay) > tolerance)
        over -= aDay;
    return over;
}

std::vector<ChanceBy> courseFrom(const Standpoint& today, double chanceToday, ChanceBy last)
{
    std::vector<ChanceBy> course{{today.on, chanceToday}};
    if (last.chance > worthALook) {
        for (const int months : courseMonths) {
            const Date day = addMonths(today.on, months);
            course.push_back({day, std::max(today.chanceOn(day), course.back().chance)});
        }
    }
    course.push_back({last.by, std::max(last.chance, course.back().chance)});
    return course;
}

/// The steps without looks in vain after the last sighting or work.
std::span<const TrailStep> withoutLooksInVain(const std::vector<TrailStep>& steps)
{
    std::span<const TrailStep> kept(steps);
    while (!kept.empty() && kept.back().event == TrailEvent::notSpent)
        kept = kept.first(kept.size() - 1);
    return kept;
}

/// Where looks in vain were left out, or the day is over already: reckoned anew from the last sighting.
std::optional<Date> withinSinceSeen(const ZoneBelief& zone, std::span<const TrailStep> steps, double tolerance)
{
    const std::optional<Date> start = steps.empty() ? zone.trail.fittedOn : steps.back().on;
    if (!start)
        return std::nullopt;
    const Belief then = follow(steps, zone.trail.fittedOn.has_value(), *zone.chain).belief;
    const Standpoint from{then, *zone.chain, zone.trail.clock, *start};
    if (then.chanceSpent() > tolerance)
        return *start - aDay;
    const Date last = addMonths(std::max(zone.trail.today, *start), riskMonths);
    if (from.chanceOn(last) <= tolerance)
        return std::nullopt;
    return firstDayOver(from, tolerance, last) - aDay;
}

/// Chance per time that has come together by then.
double hazardOf(double chance)
{
    return -std::log1p(-std::min(chance, 1 - 1e-15));
}

} // namespace

double ZoneRisk::chanceOn(Date day) const
{
    const auto after = std::ranges::upper_bound(course, day, {}, &ChanceBy::by);
    if (after == course.begin())
        return course.front().chance;
    const ChanceBy& before = *std::prev(after);
    if (after == course.end())
        return before.chance;
    const double share
        = static_cast<double>((day - before.by).count()) / static_cast<double>((after->by - before.by).count());
    const double hazard = hazardOf(before.chance) + share * (hazardOf(after->chance) - hazardOf(before.chance));
    return -std::expm1(-hazard);
}

Number ZoneRisk::tolerancePercent() const
{
    const double percent = 100 * tolerance;
    int decimals = 0;
    for (double scaled = percent; decimals < 2 && std::abs(scaled - std::round(scaled)) > 1e-9; scaled *= 10)
        ++decimals;
    return {percent, decimals};
}

ZoneRisk zoneRisk(const ZoneBelief& zone, const Catalogue& catalogue)
{
    const ZoneTrail& trail = zone.trail;
    ZoneRisk risk;
    risk.partId = trail.partId;
    risk.zoneId = trail.zoneId;
    risk.soils = trail.soils;
    risk.toleratedAs = catalogue.toleratedAs(trail.partKind, trail.zoneKind);
    risk.tolerance = catalogue.spentTolerance(risk.toleratedAs);
    const Standpoint today{zone.belief, *zone.chain, trail.clock, trail.today};
    const Date last = addMonths(trail.today, riskMonths);
    const double chanceToday = zone.belief.chanceSpent();
    risk.course = courseFrom(today, chanceToday, {last, today.chanceOn(last)});
    if (chanceToday > risk.tolerance)
        risk.overOn = trail.today;
    else if (risk.course.back().chance > risk.tolerance)
        risk.overOn = firstDayOver(today, risk.tolerance, last);
    const auto steps = withoutLooksInVain(trail.steps);
    const bool asToday = steps.size() == trail.steps.size() && chanceToday <= risk.tolerance;
    const bool beginningKnown = !steps.empty() || trail.fittedOn;
    if (!asToday)
        risk.withinUntil = withinSinceSeen(zone, steps, risk.tolerance);
    else if (risk.overOn && beginningKnown)
        risk.withinUntil = *risk.overOn - aDay;
    return risk;
}

std::vector<ZoneRisk> zoneRisks(std::span<const ZoneBelief> zones, const Catalogue& catalogue)
{
    std::vector<ZoneRisk> risks;
    risks.reserve(zones.size());
    for (const ZoneBelief& zone : zones)
        risks.push_back(zoneRisk(zone, catalogue));
    return risks;
}

const ZoneRisk* riskOf(std::span<const ZoneRisk> risks, ZoneId zone)
{
    const auto found = std::ranges::find(risks, zone, &ZoneRisk::zoneId);
    return found == risks.end() ? nullptr : &*found;
}

} // namespace padside

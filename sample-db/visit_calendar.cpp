// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "sample-db/visit_calendar.h"

#include "core/quantity/date.h"
#include "sample-db/dice.h"

#include <algorithm>

namespace padside {

namespace {

using std::chrono::days;

constexpr double retiredBefore = 3.15; ///< years before the last day
constexpr SeasonWeeks spring{14, 20};
constexpr SeasonWeeks fall{39, 45};

Date before(Date lastDay, double years)
{
    return lastDay - days(static_cast<int>(years * daysInAYear));
}

/// All units of a site are visited on one trip; a working day within the season's weeks.
Date tripDay(std::size_t site, std::size_t block, int year, VisitReason reason, std::uint64_t seed)
{
    const bool inSpring = reason == VisitReason::spring;
    const SeasonWeeks weeks = inSpring ? spring : fall;
    Dice dice(mixed(seed + site * 101 + block * 7919 + static_cast<std::uint64_t>(year) * 2 + (inSpring ? 0 : 1)));
    const int week = weeks.first
        + static_cast<int>(
                         dice.below(static_cast<std::size_t>(weeks.last) - static_cast<std::size_t>(weeks.first) + 1));
    return mondayOfWeek(year, week) + days(static_cast<int>(dice.below(5)));
}

std::vector<PlannedVisit> callOuts(const ScenarioUnit& unit, Date lastDay)
{
    const auto at = [&](double years) { return PlannedVisit{before(lastDay, years), VisitReason::callOut, false}; };
    switch (unit.story) {
    case Story::slowLeak:
        return {at(5.33), at(3.34), at(2.29), at(0.37)};
    case Story::motorFailure:
        return {at(2.36)};
    case Story::capacitorFailure:
        return {at(1.34)};
    case Story::newAccumulator:
        return {at(2.42)};
    case Story::retires:
        return {at(5.37), at(retiredBefore + 0.01)};
    case Story::corrected:
        return {at(4.88)};
    case Story::ordinary:
        return {at(6.31)};
    case Story::seafrontVessel:
    case Story::wellKept:
    case Story::successor:
    case Story::openToday:
    case Story::stillDue:
        return {};
    }
    return {};
}

/// A season that fell out: nobody at home, storm, a full book.
bool missed(const ScenarioUnit& unit, Date on, Date lastDay, Dice& dice)
{
    const bool thisSeason = lastDay - on < days(120);
    if ((unit.story == Story::stillDue || unit.story == Story::openToday) && thisSeason)
        return true;
    const bool seldom
        = unit.story == Story::ordinary || unit.story == Story::stillDue || unit.story == Story::corrected;
    return dice.chance(seldom ? 0.06 : 0.0);
}

} // namespace

Date installedOn(const ScenarioUnit& unit, Date lastDay)
{
    if (unit.story == Story::successor)
        return before(lastDay, retiredBefore) + days(1);
    return before(lastDay, unit.yearsOld);
}

std::optional<Date> retiredOn(const ScenarioUnit& unit, Date lastDay)
{
    if (unit.story != Story::retires)
        return std::nullopt;
    return before(lastDay, retiredBefore);
}

std::vector<PlannedVisit> plannedVisits(const ScenarioUnit& unit, std::size_t block, int years, Date lastDay,
                                        std::uint64_t seed)
{
    std::vector<PlannedVisit> visits = callOuts(unit, lastDay);
    Dice dice(mixed(seed + unit.site * 31 + block * 997 + static_cast<std::uint64_t>(unit.number.back())));
    const int lastYear = yearOf(lastDay);
    for (int year = lastYear - years + 1; year <= lastYear; ++year) {
        for (const VisitReason reason : {VisitReason::spring, VisitReason::fall}) {
            const Date on = tripDay(unit.site, block, year, reason, seed);
            if (on < lastDay && !missed(unit, on, lastDay, dice))
                visits.push_back({on, reason, false});
        }
    }
    if (unit.story == Story::openToday)
        visits.push_back({lastDay,
                          lastDay < addMonths(mondayOfWeek(lastYear, 1), 6) ? VisitReason::spring : VisitReason::fall,
                          true});

    const Date installed = installedOn(unit, lastDay);
    const auto retired = retiredOn(unit, lastDay);
    const Date first = mondayOfWeek(lastYear - years + 1, 2);
    std::erase_if(visits, [&](const PlannedVisit& visit) {
        return visit.on <= installed || visit.on < first || (retired && visit.on > *retired);
    });
    std::ranges::stable_sort(visits, {}, &PlannedVisit::on);
    return visits;
}

} // namespace padside

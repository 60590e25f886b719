// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/season.h"

#include <algorithm>
#include <array>

namespace padside {

namespace {

/// Weeks run over the turn of a calendar year, so the year before is asked too.
constexpr std::array yearsLookedAt{-1, 0, 1, 2};

Season firstBeginningAfter(const Site& site, VisitReason reason, Date day)
{
    for (const int offset : yearsLookedAt) {
        const Season season = seasonOf(site, reason, yearOf(day) + offset);
        if (season.window.earliest > day)
            return season;
    }
    return seasonOf(site, reason, yearOf(day) + 2);
}

} // namespace

Season seasonOf(const Site& site, VisitReason reason, int year)
{
    const SeasonWeeks& weeks = reason == VisitReason::fall ? site.fall : site.spring;
    const Date first = mondayOfWeek(year, weeks.first);
    const Date last = mondayOfWeek(year, std::max(weeks.first, weeks.last)) + std::chrono::days(6);
    return Season{reason, Window{first, last}};
}

Season seasonNotOver(const Site& site, VisitReason reason, Date day)
{
    for (const int offset : yearsLookedAt) {
        const Season season = seasonOf(site, reason, yearOf(day) + offset);
        if (season.window.latest >= day)
            return season;
    }
    return seasonOf(site, reason, yearOf(day) + 2);
}

Season seasonAfter(const Site& site, Date day)
{
    const Season spring = firstBeginningAfter(site, VisitReason::spring, day);
    const Season fall = firstBeginningAfter(site, VisitReason::fall, day);
    return spring.window.earliest <= fall.window.earliest ? spring : fall;
}

bool inSeason(const Site& site, Date day)
{
    return std::ranges::any_of(std::array{VisitReason::spring, VisitReason::fall}, [&](VisitReason reason) {
        return seasonNotOver(site, reason, day).window.earliest <= day;
    });
}

bool isWeekend(Date day)
{
    const std::chrono::weekday weekday(day);
    return weekday == std::chrono::Saturday || weekday == std::chrono::Sunday;
}

bool isWorkingDayInSeason(const Site& site, Date day)
{
    return !isWeekend(day) && inSeason(site, day);
}

} // namespace padside

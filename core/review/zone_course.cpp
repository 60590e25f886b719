// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/zone_course.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr int monthsBetween = 2; ///< chances change slowly; what lies between is drawn straight
constexpr int leastYears = 2;
constexpr int mostYears = 5; ///< the furthest horizon

} // namespace

int yearsAhead(Date first, Date today)
{
    return std::clamp(static_cast<int>(std::lround(yearsBetween(first, today) / 2)), leastYears, mostYears);
}

std::vector<ZoneCourse> zoneCourses(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                                    Date today, int years)
{
    return zoneCourses(knownUnit(record, catalogue, model, today), years);
}

std::vector<ZoneCourse> zoneCourses(const KnownUnit& known, int years)
{
    if (known.isRetired())
        return {};
    std::vector<Date> days;
    for (int month = 0; month <= 12 * years; month += monthsBetween)
        days.push_back(addMonths(known.today, month));
    std::vector<ZoneCourse> courses;
    for (const ZoneBelief& zone : known.beliefs)
        courses.push_back({zone.trail.zoneId, gradeCourse(zone, days)});
    return courses;
}

} // namespace padside

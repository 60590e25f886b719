// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/grade_course.h"

namespace padside {

std::vector<GradesBy> gradeCourse(const ZoneBelief& zone, std::span<const Date> days)
{
    std::vector<GradesBy> course;
    course.reserve(days.size());
    for (const Date day : days) {
        Belief then = zone.belief;
        then.carryForward(zone.rates, zone.trail.clock.yearsBetween(zone.trail.today, day));
        course.push_back({day, then.grades()});
    }
    return course;
}

} // namespace padside

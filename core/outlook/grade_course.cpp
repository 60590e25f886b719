// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/grade_course.h"

namespace padside {

std::vector<GradesBy> gradeCourse(const ZoneBelief& zone, std::span<const Date> days)
{
    std::vector<GradesBy> course;
    course.reserve(days.size());
    // From day to day: short stretches are carried forward with the least work.
    Belief then = zone.belief;
    Date at = zone.trail.today;
    for (const Date day : days) {
        if (day > at) {
            then.carryForward(*zone.chain, zone.trail.clock.yearsBetween(at, day));
            at = day;
        }
        course.push_back({day, then.grades()});
    }
    return course;
}

} // namespace padside

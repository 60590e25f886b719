// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_outlook.h"

#include <algorithm>

namespace padside {

namespace {

/// Of the worst of several zones: it is at most at a grade if all of them are.
GradeChances worstOfBoth(const GradeChances& one, const GradeChances& other)
{
    GradeChances worst{};
    double atMostOne = 0;
    double atMostOther = 0;
    double before = 0;
    for (std::size_t grade = 0; grade < gradeCount; ++grade) {
        atMostOne += one[grade];
        atMostOther += other[grade];
        const double both = atMostOne * atMostOther;
        worst[grade] = std::max(0.0, both - before);
        before = both;
    }
    return worst;
}

std::optional<TimelineOutlook> worstOutlook(const TimelineGroup& group)
{
    std::optional<TimelineOutlook> worst;
    for (const TimelineLane& lane : group.lanes) {
        if (!lane.outlook)
            continue;
        if (!worst) {
            worst = lane.outlook;
            worst->zone = lane.name;
            continue;
        }
        std::vector<GradesBy> course = std::move(worst->course);
        for (std::size_t at = 0; at < std::min(course.size(), lane.outlook->course.size()); ++at)
            course[at].chances = worstOfBoth(course[at].chances, lane.outlook->course[at].chances);
        if (isSooner(lane.outlook->spent, worst->spent)) {
            worst = lane.outlook;
            worst->zone = lane.name;
        }
        worst->course = std::move(course);
    }
    return worst;
}

} // namespace

void addOutlook(Timeline& timeline, const UnitForecast& forecast, std::span<const ZoneCourse> courses)
{
    for (TimelineGroup& group : timeline.groups) {
        for (TimelineLane& lane : group.lanes) {
            if (lane.zones.empty() || !group.fitted)
                continue;
            const LeadingOutlook* leading = forecast.leadingOf(lane.zones.back());
            const auto course = std::ranges::find(courses, lane.zones.back(), &ZoneCourse::zoneId);
            if (leading == nullptr || course == courses.end() || course->grades.empty())
                continue;
            lane.outlook = TimelineOutlook{course->grades, leading->dates, leading->when, leading->because, {}};
            timeline.until = std::max(timeline.until.value_or(timeline.today), course->grades.back().by);
        }
        if (group.foldable())
            group.worst.outlook = worstOutlook(group);
    }
}

Timeline timelineWithOutlook(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                             Date today)
{
    Timeline timeline = timelineOf(record, catalogue, today);
    const KnownUnit known = knownUnit(record, catalogue, model, today);
    addOutlook(timeline, unitForecast(known, catalogue), zoneCourses(known, yearsAhead(timeline.first, today)));
    return timeline;
}

} // namespace padside

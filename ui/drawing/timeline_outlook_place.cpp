// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_outlook_place.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double stretchWidth = 6; ///< pixels: narrower steps can't be told apart

/// The chances on a day between two of the course, straight from one to the other.
GradeChances chancesAt(const std::vector<GradesBy>& course, double day)
{
    const auto after = std::ranges::find_if(course, [day](const GradesBy& one) { return dayNumber(one.by) >= day; });
    if (after == course.begin() || after == course.end())
        return after == course.end() ? course.back().chances : after->chances;
    const GradesBy& before = after[-1];
    const double share = (day - dayNumber(before.by)) / (dayNumber(after->by) - dayNumber(before.by));
    GradeChances chances{};
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        chances[grade] = before.chances[grade] * (1 - share) + after->chances[grade] * share;
    return chances;
}

void placeSpent(PlacedOutlook& placed, const SpentDates& spent, const TimeAxis& axis, double side)
{
    if (!spent.early)
        return;
    const double left = placed.area.left();
    const double right = placed.area.right();
    const double early = axis.x(*spent.early);
    const double late = spent.late ? axis.x(*spent.late) : right + 1;
    placed.spentFrom = std::clamp(early, left, right);
    placed.spentTo = std::clamp(late, left, right);
    placed.earlySeen = early >= left && early <= right;
    placed.lateSeen = late >= left && late <= right;
    const double middle = spent.middle ? axis.x(*spent.middle) : right + 1;
    if (middle >= left && middle <= right) {
        // Whole at the edge, too.
        const double x = std::clamp(std::round(middle - side / 2), left, std::max(left, right - side - 1));
        placed.spent = QRectF(x, std::round(placed.area.center().y() - side / 2), side, side);
    }
}

} // namespace

void placeOutlook(TimelineGeometry& geometry, const TimelineLane& lane, const PlacedLane& placedLane)
{
    if (!lane.outlook || lane.outlook->course.empty())
        return;
    const TimeAxis& axis = geometry.axis;
    const std::vector<GradesBy>& course = lane.outlook->course;
    const double left = std::max(axis.left, axis.x(course.front().by));
    const double right = std::min(axis.right, axis.x(course.back().by));
    if (right - left < 1)
        return;
    PlacedOutlook placed;
    placed.group = placedLane.group;
    placed.lane = placedLane.lane;
    placed.area = QRectF(left, placedLane.area.top(), right - left, placedLane.area.height());
    const int count = std::max(1, static_cast<int>(std::floor((right - left) / stretchWidth)));
    for (int at = 0; at < count; ++at) {
        const double from = left + (right - left) * at / count;
        const double to = left + (right - left) * (at + 1) / count;
        placed.stretches.push_back({from, to, chancesAt(course, axis.dayAt((from + to) / 2))});
    }
    placeSpent(placed, lane.outlook->spent, axis, geometry.sizes.leftMark);
    geometry.outlooks.push_back(std::move(placed));
}

} // namespace padside

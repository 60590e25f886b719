// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_geometry.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace padside {

namespace {

constexpr double todayMargin = 0.05; ///< of the days shown: room after today
constexpr double leastMarginDays = 45;

/// The middle of a zone mark at its date; what stands beside it follows to the right.
PlacedMark placedMark(const TimelineMark& mark, const MarkPlace& place, double x, double middle,
                      const TimelineSizes& sizes)
{
    PlacedMark placed;
    placed.place = place;
    const auto square = [middle](double left, double side) { return QRectF(left, middle - side / 2, side, side); };
    const double left = std::round(x - sizes.mark / 2);
    placed.area = square(left, sizes.mark);
    if (mark.found || mark.notSeen)
        placed.found = placed.area;
    if (mark.left) {
        placed.left = square(placed.found.isEmpty() ? left : placed.found.right() + 1, sizes.leftMark);
        placed.area = placed.area.united(placed.left);
    }
    return placed;
}

/// A worse grade is a thicker band: its weight does not rest on colour alone.
QRectF bandArea(double from, double to, double middle, Grade grade, const TimelineSizes& sizes)
{
    const double height = 2 * std::round(sizes.band * (0.2 + 0.12 * numeral(grade)));
    return {from, middle - height / 2, to - from, height};
}

void placeLane(TimelineGeometry& geometry, const TimelineLane& lane, const PlacedLane& placedLane)
{
    const TimeAxis& axis = geometry.axis;
    const double middle = std::round(placedLane.middle());
    for (const TimelineBand& band : lane.bands) {
        const double from = std::max(axis.left, axis.x(band.from));
        const double to = std::min(axis.right, axis.x(band.to));
        if (to > from)
            geometry.bands.push_back(
                PlacedBand{bandArea(from, to, middle, band.grade, geometry.sizes), band.grade, band.sure});
    }
    for (std::size_t i = 0; i < lane.marks.size(); ++i) {
        const MarkPlace place{placedLane.group, placedLane.lane, i};
        geometry.marks.push_back(placedMark(lane.marks[i], place, axis.x(lane.marks[i].on), middle, geometry.sizes));
    }
}

} // namespace

TimelineSizes TimelineSizes::forText(double pixels, double partColumn, double zoneColumn)
{
    const double text = std::max(8.0, pixels);
    TimelineSizes sizes;
    sizes.text = text;
    sizes.header = std::round(text * 2.9);
    sizes.lane = std::round(text * 1.75);
    sizes.groupGap = std::round(text * 0.6);
    sizes.mark = std::round(text * 1.3);
    sizes.leftMark = std::round(text * 1.05);
    sizes.band = std::round(text * 0.45);
    sizes.partColumn = partColumn;
    sizes.zoneColumn = zoneColumn;
    return sizes;
}

std::optional<MarkPlace> TimelineGeometry::markAt(double x, double y) const
{
    // Later marks are painted over earlier ones.
    const auto topmost = std::find_if(marks.rbegin(), marks.rend(), [x, y](const PlacedMark& mark) {
        return mark.area.adjusted(-2, -2, 2, 2).contains(x, y);
    });
    return topmost == marks.rend() ? std::nullopt : std::optional(topmost->place);
}

const PlacedMark* TimelineGeometry::placed(const MarkPlace& place) const
{
    const auto mark = std::ranges::lower_bound(marks, place, {}, &PlacedMark::place);
    return mark != marks.end() && mark->place == place ? &*mark : nullptr;
}

DaySpan wholeSpan(const Timeline& timeline)
{
    const double days = dayNumber(timeline.today) - dayNumber(timeline.first);
    return DaySpan{dayNumber(timeline.first),
                   dayNumber(timeline.today) + std::max(leastMarginDays, std::ceil(days * todayMargin))};
}

TimelineGeometry layOut(const Timeline& timeline, const TimelineSizes& sizes, double width, const DaySpan& span)
{
    assert(span.to > span.from);
    assert(width > sizes.names());
    TimelineGeometry geometry;
    geometry.sizes = sizes;
    geometry.width = width;
    geometry.axis = TimeAxis{span.from, span.to, sizes.names(), width};
    geometry.todayX = geometry.axis.x(timeline.today);
    geometry.ticks = ticksOf(geometry.axis, timeline.spring, timeline.fall);
    double y = sizes.header;
    for (std::size_t g = 0; g < timeline.groups.size(); ++g) {
        const TimelineGroup& group = timeline.groups[g];
        const double top = y;
        y += sizes.groupGap / 2;
        for (std::size_t l = 0; l < group.lanes.size(); ++l) {
            const PlacedLane lane{g, l, QRectF(sizes.names(), y, width - sizes.names(), sizes.lane)};
            geometry.lanes.push_back(lane);
            placeLane(geometry, group.lanes[l], lane);
            y += sizes.lane;
        }
        y += sizes.groupGap / 2;
        geometry.groups.push_back(PlacedGroup{g, QRectF(0, top, width, y - top)});
    }
    geometry.height = y;
    return geometry;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_geometry.h"

#include "ui/drawing/timeline_outlook_place.h"
#include "ui/drawing/timeline_thinning.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace padside {

namespace {

constexpr double todayMargin = 0.05; ///< of the days shown: room after today
constexpr double leastMarginDays = 45;

/// A worse grade is a thicker band: its weight does not rest on colour alone.
QRectF bandArea(double from, double to, double middle, Grade grade, const TimelineSizes& sizes)
{
    const double height = 2 * std::round(sizes.band * (0.2 + 0.12 * numeral(grade)));
    return {from, middle - height / 2, to - from, height};
}

/// A run that begins out of sight at the left still has its numeral.
void placeRun(TimelineGeometry& geometry, const TimelineLane& lane, const PlacedLane& placedLane, std::size_t firstMark)
{
    const TimeAxis& axis = geometry.axis;
    const double side = geometry.sizes.leftMark;
    const QRectF area(axis.left + 2, std::round(placedLane.middle() - side / 2), side, side);
    const auto band = std::ranges::find_if(lane.bands, [&](const TimelineBand& one) {
        return dayNumber(one.from) < axis.fromDay && axis.x(one.to) > area.right();
    });
    if (band == lane.bands.end())
        return;
    const bool taken = std::any_of(
        geometry.marks.begin() + static_cast<std::ptrdiff_t>(firstMark), geometry.marks.end(),
        [&](const PlacedMark& mark) { return mark.area.left() < area.right() + 2 && mark.area.right() > axis.left; });
    if (!taken)
        geometry.runs.push_back(PlacedRun{placedLane.group, placedLane.lane, area, band->grade});
}

void placeLane(TimelineGeometry& geometry, const TimelineLane& lane, const PlacedLane& placedLane, bool crowded)
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
    const std::size_t first = geometry.marks.size();
    placeMarks(geometry.marks, lane, MarkLane{placedLane.group, placedLane.lane, middle, crowded}, axis,
               geometry.sizes);
    placeRun(geometry, lane, placedLane, first);
}

/// Visits so close that equal grades are told as one run: as the middle one of the distances between them has it.
bool crowdedVisits(const Timeline& timeline, const TimeAxis& axis, const TimelineSizes& sizes)
{
    const auto& visits = timeline.groups.front().lanes.front().marks;
    std::vector<double> distances;
    for (std::size_t i = 1; i < visits.size(); ++i)
        distances.push_back(axis.x(visits[i].on) - axis.x(visits[i - 1].on));
    if (distances.empty())
        return false;
    const auto middle = distances.begin() + static_cast<std::ptrdiff_t>(distances.size() / 2);
    std::ranges::nth_element(distances, middle);
    return *middle < sizes.mark + 4;
}

} // namespace

TimelineSizes TimelineSizes::forText(double pixels, double partColumn, double zoneColumn, double amount)
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
    sizes.amount = amount;
    return sizes;
}

double TimelineSizes::sign() const
{
    return std::round(text * 0.72);
}

std::optional<MarkPlace> TimelineGeometry::markAt(double x, double y) const
{
    // Later marks are painted over earlier ones.
    const auto topmost = std::find_if(marks.rbegin(), marks.rend(), [x, y](const PlacedMark& mark) {
        return mark.painted() && mark.area.adjusted(-2, -2, 2, 2).contains(x, y);
    });
    if (topmost != marks.rend())
        return topmost->place;
    const auto outlook
        = std::ranges::find_if(outlooks, [x, y](const PlacedOutlook& one) { return one.area.contains(x, y); });
    return outlook == outlooks.end() ? std::nullopt
                                     : std::optional(MarkPlace{outlook->group, outlook->lane, outlookMark});
}

const PlacedMark* TimelineGeometry::placed(const MarkPlace& place) const
{
    const auto mark = std::ranges::lower_bound(marks, place, {}, &PlacedMark::place);
    return mark != marks.end() && mark->place == place ? &*mark : nullptr;
}

const PlacedLane* TimelineGeometry::laneAt(double y) const
{
    const auto lane = std::ranges::find_if(
        lanes, [y](const PlacedLane& one) { return y >= one.area.top() && y < one.area.bottom(); });
    return lane == lanes.end() ? nullptr : &*lane;
}

const PlacedLane* TimelineGeometry::placedLane(std::size_t group, std::size_t lane) const
{
    const auto placed
        = std::ranges::find_if(lanes, [&](const PlacedLane& one) { return one.group == group && one.lane == lane; });
    return placed == lanes.end() ? nullptr : &*placed;
}

const PlacedGroup* TimelineGeometry::placedGroup(std::size_t group) const
{
    const auto placed = std::ranges::find(groups, group, &PlacedGroup::group);
    return placed == groups.end() ? nullptr : &*placed;
}

const PlacedOutlook* TimelineGeometry::placedOutlook(std::size_t group, std::size_t lane) const
{
    const auto placed = std::ranges::find_if(
        outlooks, [&](const PlacedOutlook& one) { return one.group == group && one.lane == lane; });
    return placed == outlooks.end() ? nullptr : &*placed;
}

DaySpan wholeSpan(const Timeline& timeline)
{
    const double days = dayNumber(timeline.today) - dayNumber(timeline.first);
    if (timeline.until)
        return DaySpan{dayNumber(timeline.first), dayNumber(*timeline.until)};
    return DaySpan{dayNumber(timeline.first),
                   dayNumber(timeline.today) + std::max(leastMarginDays, std::ceil(days * todayMargin))};
}

TimelineGeometry layOut(const Timeline& timeline, const TimelineSizes& sizes, double width, const DaySpan& span,
                        const FoldedGroups& folded)
{
    assert(span.to > span.from);
    assert(width > sizes.names());
    TimelineGeometry geometry;
    geometry.sizes = sizes;
    geometry.width = width;
    geometry.axis = TimeAxis{span.from, span.to, sizes.names(), width};
    geometry.todayX = geometry.axis.x(timeline.today);
    geometry.ticks = ticksOf(geometry.axis, timeline.spring, timeline.fall);
    geometry.seasons = seasonsOf(geometry.axis, timeline.spring, timeline.fall);
    const bool crowded = crowdedVisits(timeline, geometry.axis, sizes);
    double y = sizes.header;
    for (std::size_t g = 0; g < timeline.groups.size(); ++g) {
        const TimelineGroup& group = timeline.groups[g];
        const bool isFolded = group.foldable() && folded.contains(g);
        const double top = y;
        y += sizes.groupGap / 2;
        for (std::size_t l = 0; l < (isFolded ? 1 : group.lanes.size()); ++l) {
            const PlacedLane lane{g, isFolded ? worstLane : l,
                                  QRectF(sizes.names(), y, width - sizes.names(), sizes.lane)};
            geometry.lanes.push_back(lane);
            placeLane(geometry, isFolded ? group.worst : group.lanes[l], lane, crowded);
            placeOutlook(geometry, isFolded ? group.worst : group.lanes[l], lane);
            y += sizes.lane;
        }
        y += sizes.groupGap / 2;
        geometry.groups.push_back(
            PlacedGroup{g, QRectF(0, top, width, y - top), isFolded, QRectF(0, top, sizes.partColumn, y - top)});
    }
    geometry.height = y;
    return geometry;
}

PlacedMark inFull(const Timeline& timeline, const TimelineGeometry& geometry, const PlacedMark& placed)
{
    const PlacedLane* lane = geometry.placedLane(placed.place.group, placed.place.lane);
    const TimelineMark& mark = laneOf(timeline, placed.place.group, placed.place.lane).marks[placed.place.mark];
    return placedInFull(mark, placed, lane ? std::round(lane->middle()) : 0, geometry.sizes);
}

} // namespace padside

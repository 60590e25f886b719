// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/time_axis.h"
#include "ui/drawing/timeline.h"

#include <QRectF>

#include <optional>
#include <vector>

namespace padside {

/// Sizes in pixels; all follow from the height of the text.
struct TimelineSizes
{
    double text = 12;
    double header = 34; ///< years and seasons
    double lane = 22;
    double groupGap = 7;
    double mark = 16; ///< side of a grade mark
    double leftMark = 12; ///< side of the smaller as-left mark
    double band = 6;
    double partColumn = 150;
    double zoneColumn = 110;

    /// Sizes for a text height of 8 px or more; columns as wide as their text, which the caller measured.
    [[nodiscard]] static TimelineSizes forText(double pixels, double partColumn, double zoneColumn);

    [[nodiscard]] double names() const { return partColumn + zoneColumn; }
    friend bool operator==(const TimelineSizes&, const TimelineSizes&) = default;
};

/// Which mark of a timeline.
struct MarkPlace
{
    std::size_t group = 0;
    std::size_t lane = 0;
    std::size_t mark = 0;

    // NOLINTNEXTLINE(modernize-use-nullptr): a false alarm of clang-tidy 14
    friend auto operator<=>(const MarkPlace&, const MarkPlace&) = default;
};

/// Where a lane lies.
struct PlacedLane
{
    std::size_t group = 0;
    std::size_t lane = 0;
    QRectF area; ///< from the end of the names to the right edge

    [[nodiscard]] double middle() const { return area.center().y(); }
};

/// Where a group's lanes lie, names included.
struct PlacedGroup
{
    std::size_t group = 0;
    QRectF area;
};

/// Where a mark lies. The as-found mark's middle is at its date; the as-left mark stands at its right.
struct PlacedMark
{
    MarkPlace place;
    QRectF area; ///< all of it, for hitting with the pointer
    QRectF found; ///< the grade as found, or "not seen"; empty if neither
    QRectF left; ///< the grade as left; empty if none
};

/// Where a band lies; cut off at the ends of the axis.
struct PlacedBand
{
    QRectF area;
    Grade grade = Grade::sound;
    bool sure = true;
};

/// Days shown, with fractions.
struct DaySpan
{
    double from = 0;
    double to = 1;

    friend bool operator==(const DaySpan&, const DaySpan&) = default;
};

/// A timeline laid out: numbers only. Its origin is the top left of the header.
struct TimelineGeometry
{
    TimelineSizes sizes;
    TimeAxis axis;
    double width = 0;
    double height = 0; ///< of everything, header included
    double todayX = 0;
    std::vector<TimeTick> ticks;
    std::vector<PlacedGroup> groups;
    std::vector<PlacedLane> lanes;
    std::vector<PlacedBand> bands;
    std::vector<PlacedMark> marks; ///< in order of group, lane and date

    /// The topmost mark at a point, if any.
    [[nodiscard]] std::optional<MarkPlace> markAt(double x, double y) const;
    [[nodiscard]] const PlacedMark* placed(const MarkPlace& place) const;
};

/// All the days of a timeline, with a margin after today where a forecast will stand.
[[nodiscard]] DaySpan wholeSpan(const Timeline& timeline);

/// Lays out a timeline over `width` pixels. The span must not be empty; width must exceed the names' columns.
[[nodiscard]] TimelineGeometry layOut(const Timeline& timeline, const TimelineSizes& sizes, double width,
                                      const DaySpan& span);

} // namespace padside

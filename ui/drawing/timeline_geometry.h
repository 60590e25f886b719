// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/time_axis.h"
#include "ui/drawing/timeline.h"

#include <QRectF>

#include <optional>
#include <set>
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
    double amount = 52; ///< width of an amount of refrigerant

    /// Sizes for a text height of 8 px or more; columns as wide as their text, which the caller measured.
    [[nodiscard]] static TimelineSizes forText(double pixels, double partColumn, double zoneColumn, double amount = 52);

    [[nodiscard]] double sign() const; ///< side of a treatment's sign

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

/// In the place of a mark: the lane's name. In the place of a lane, together with it: the part's heading.
constexpr std::size_t laneName = static_cast<std::size_t>(-1);
constexpr std::size_t partHeading = static_cast<std::size_t>(-2);

/// In the place of a mark: what the lane is expected to become.
constexpr std::size_t outlookMark = static_cast<std::size_t>(-3);

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
    bool folded = false;
    QRectF heading; ///< the part's name; a press here folds or unfolds it
};

/// Where a mark lies. The as-found mark's middle is at its date; the as-left mark stands at its right, then what was
/// done, how much, and a picture. Where there is little room a mark shows less, down to nothing.
struct PlacedMark
{
    enum class Detail {
        full, ///< a numeral or sign
        tick, ///< looked at, and still the same: a short upright line on the run
        hidden, ///< no room: a mark nearby stands for it
    };

    MarkPlace place;
    Detail detail = Detail::full;
    QRectF area; ///< all that is painted; empty if hidden
    QRectF found; ///< the grade as found, or "not seen"; the sign of a visit or of refrigerant; empty if none
    QRectF left; ///< the grade as left; empty if none
    QRectF signs; ///< signs of what was done, from its left edge on; empty if none or no room
    QRectF amount; ///< refrigerant in figures; empty if none or no room
    QRectF picture; ///< a photograph; empty if none or no room
    int standsFor = 0; ///< marks with news that gave way to this one
    double x = 0; ///< of its date

    [[nodiscard]] bool painted() const { return detail != Detail::hidden; }
};

/// The numeral of a run whose beginning lies further left than what is shown.
struct PlacedRun
{
    std::size_t group = 0;
    std::size_t lane = 0;
    QRectF area;
    Grade grade = Grade::sound;
};

/// Where a band lies; cut off at the ends of the axis.
struct PlacedBand
{
    QRectF area;
    Grade grade = Grade::sound;
    bool sure = true;
};

/// The chances of the grades over a stretch of days to come.
struct PlacedChances
{
    double from = 0;
    double to = 0;
    GradeChances chances{};
};

/// Where a lane runs on after today, as far as it is in sight.
struct PlacedOutlook
{
    std::size_t group = 0;
    std::size_t lane = 0;
    QRectF area; ///< from today (or the left edge) to the last day (or the right edge)
    std::vector<PlacedChances> stretches; ///< from left to right, without gaps
    QRectF spent; ///< the mark at the day of 50 %; empty where that is out of sight
    double spentFrom = 0; ///< the whisker from 10 % to 90 %, cut off at the area's ends
    double spentTo = 0; ///< not above spentFrom: the whisker is out of sight
    bool earlySeen = false; ///< the whisker's ends are in sight
    bool lateSeen = false;
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
    std::vector<SeasonSpan> seasons;
    std::vector<PlacedGroup> groups;
    std::vector<PlacedLane> lanes;
    std::vector<PlacedBand> bands;
    std::vector<PlacedMark> marks; ///< in order of group, lane and date
    std::vector<PlacedRun> runs;
    std::vector<PlacedOutlook> outlooks;

    /// The topmost mark at a point, or the outlook there, if any.
    [[nodiscard]] std::optional<MarkPlace> markAt(double x, double y) const;
    [[nodiscard]] const PlacedMark* placed(const MarkPlace& place) const; ///< null if its lane is folded away
    [[nodiscard]] const PlacedLane* laneAt(double y) const; ///< null between groups
    [[nodiscard]] const PlacedLane* placedLane(std::size_t group, std::size_t lane) const;
    [[nodiscard]] const PlacedGroup* placedGroup(std::size_t group) const;
    [[nodiscard]] const PlacedOutlook* placedOutlook(std::size_t group, std::size_t lane) const;
};

/// All the days of a timeline and of its outlook, with a margin after them.
[[nodiscard]] DaySpan wholeSpan(const Timeline& timeline);

/// Groups whose lanes are folded into one.
using FoldedGroups = std::set<std::size_t>;

/// Lays out a timeline over `width` pixels. The span must not be empty; width must exceed the names' columns.
[[nodiscard]] TimelineGeometry layOut(const Timeline& timeline, const TimelineSizes& sizes, double width,
                                      const DaySpan& span, const FoldedGroups& folded = {});

/// A mark with all it has, as if there were room: for the one that is chosen.
[[nodiscard]] PlacedMark inFull(const Timeline& timeline, const TimelineGeometry& geometry, const PlacedMark& placed);

} // namespace padside

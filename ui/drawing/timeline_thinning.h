// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/timeline_geometry.h"

namespace padside {

/// Which lane marks are placed in, and where it lies.
struct MarkLane
{
    std::size_t group = 0;
    std::size_t lane = 0;
    double middle = 0;
    bool crowded = false; ///< equal grades in a row become one run
};

/// Places the marks of one lane so that nothing overlaps. What matters most finds its room first: the latest mark, new
/// parts, then changes, the worst grade before others; after the numerals come what was left, signs, amounts and
/// pictures. A mark that says nothing new becomes a tick, one with news that finds no room is counted by the mark that
/// took it.
void placeMarks(std::vector<PlacedMark>& placed, const TimelineLane& lane, const MarkLane& where, const TimeAxis& axis,
                const TimelineSizes& sizes);

/// The mark with all it has, whether there is room or not.
[[nodiscard]] PlacedMark placedInFull(const TimelineMark& mark, const PlacedMark& placed, double middle,
                                      const TimelineSizes& sizes);

/// What a mark has to say, for being shown where there is little room; 0: nothing has changed.
[[nodiscard]] int newsOf(const TimelineLane& lane, std::size_t mark);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/cutaway_drawing.h"

#include <QLineF>
#include <QRectF>

#include <optional>
#include <span>
#include <vector>

namespace padside {

/// Where a mark would like to be, and the part it belongs to.
struct MarkWish
{
    QRectF body;
    QPointF anchor;
    QSizeF size;
};

/// Places for marks inside `within`, as near to their anchors as can be without touching one another (`gap` apart).
/// Small parts come first, so that their marks stay on them. The order of the answer is that of the wishes. Only where
/// there is no room left at all does a mark stay on its anchor.
[[nodiscard]] std::vector<QRectF> placeMarks(std::span<const MarkWish> wishes, const QRectF& within, double gap);

/// One part in the picture.
struct PlacedPart
{
    std::size_t part = 0; ///< its number in the content
    std::optional<CutawayPlace> place; ///< empty: the drawing has no place for it, it stands in the row beneath
    QRectF body; ///< in the picture
    QRectF mark;
    std::optional<QLineF> leader; ///< from the mark to the part, where the mark had to move away
};

/// The whole picture, in the painter's units.
struct CutawayGeometry
{
    QRectF drawing; ///< the drawing's area, its shape kept
    QRectF whole; ///< with the row beneath
    double markHeight = 0;
    std::vector<PlacedPart> parts; ///< as in the content

    /// The part whose mark or, failing that, smallest body is at a point.
    [[nodiscard]] std::optional<std::size_t> partAt(const QPointF& point) const;
};

/// Lays a drawing and the marks of its parts out in an area.
[[nodiscard]] CutawayGeometry layOutCutaway(const CutawayContent& content, const CutawayDrawing& drawing,
                                            const QRectF& area);

enum class Direction { left, right, up, down };

/// The part to go to from `from`: the nearest in a direction, sooner ahead than aside; empty at the edge.
[[nodiscard]] std::optional<std::size_t> partBeside(const CutawayGeometry& geometry, std::size_t from,
                                                    Direction direction);
/// The first part as one reads, from the top left; `last` gives the last.
[[nodiscard]] std::optional<std::size_t> firstPart(const CutawayGeometry& geometry, bool last = false);

} // namespace padside

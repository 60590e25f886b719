// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/cutaway_geometry.h"

class QPainter;

namespace padside {

struct Theme;

/// A cutaway ready to be painted; what it refers to outlives it.
struct CutawayPicture
{
    const CutawayContent& content;
    const CutawayDrawing& drawing;
    const CutawayGeometry& geometry;
    const Theme& theme;
    std::optional<std::size_t> lit; ///< the part pointed at
    bool focused = false; ///< it also has the keyboard
};

/// The mark of one part: its grade with numeral and, where it was not seen since, a hatched tail; hatched if it was
/// never seen, an outline if nothing is recorded.
void paintPartMark(QPainter& painter, const QRectF& area, const CutawayPart& part, const Theme& theme);

/// Part pointed at, leader lines and marks, over the drawing.
void paintCutawayMarks(QPainter& painter, const CutawayPicture& picture);

/// All of it, for screen and paper alike.
void paintCutaway(QPainter& painter, const QRectF& area, const CutawayContent& content, const Theme& theme);

} // namespace padside

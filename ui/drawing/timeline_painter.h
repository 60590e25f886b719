// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/sentence.h"
#include "ui/drawing/timeline_geometry.h"

class QPainter;

namespace padside {

struct Theme;

/// Everything a timeline is painted from. References: the picture lives only while it is painted.
struct TimelinePicture
{
    const Timeline& timeline;
    const TimelineGeometry& geometry;
    const Speaker& speaker;
    const Theme& theme;
    std::optional<MarkPlace> selected;
};

/// The whole picture within `area`, from its top left; what does not fit is cut off. The same on screen and paper: text
/// has pixel sizes, colours are opaque, hatching is drawn line by line.
void paintTimeline(QPainter& painter, const QRectF& area, const TimelinePicture& picture);

/// Its three pieces, in the geometry's coordinates, for a view that holds header and names in place.
void paintTimelineHeader(QPainter& painter, const TimelinePicture& picture);
void paintTimelineNames(QPainter& painter, const TimelinePicture& picture);
void paintTimelineLanes(QPainter& painter, const TimelinePicture& picture);

} // namespace padside

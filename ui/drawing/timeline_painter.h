// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/sentence.h"
#include "ui/drawing/timeline_geometry.h"

#include <QImage>

#include <functional>

class QPainter;

namespace padside {

struct Theme;

/// A small picture of a photograph; null while there is none.
using PictureSource = std::function<QImage(const PhotoId&)>;

/// Everything a timeline is painted from. References: the picture lives only while it is painted.
struct TimelinePicture
{
    const Timeline& timeline;
    const TimelineGeometry& geometry;
    const Speaker& speaker;
    const Theme& theme;
    std::optional<MarkPlace> selected;
    PictureSource pictures = {};
    bool folds = true; ///< paper has nothing to press: no triangles
};

/// The whole picture within `area`, from its top left; what does not fit is cut off. The same on screen and paper: text
/// has pixel sizes, colours are opaque, hatching is drawn line by line.
void paintTimeline(QPainter& painter, const QRectF& area, const TimelinePicture& picture);

/// Its three pieces, in the geometry's coordinates, for a view that holds header and names in place.
void paintTimelineHeader(QPainter& painter, const TimelinePicture& picture);
void paintTimelineNames(QPainter& painter, const TimelinePicture& picture);
void paintTimelineLanes(QPainter& painter, const TimelinePicture& picture);

constexpr double amountType = 0.84; ///< height of amounts, of that of the text

/// One mark, as much of it as is placed.
void paintTimelineMark(QPainter& painter, const TimelinePicture& picture, const PlacedMark& placed);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What is drawn: the opened unit, its timeline.

#include "ui/drawing/cutaway_painter.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_legend.h"
#include "ui/drawing/timeline_measure.h"
#include "ui/drawing/timeline_outlook.h"
#include "ui/drawing/timeline_painter.h"
#include "ui/paper/owner_history_content.h"
#include "ui/paper/screen_drawing.h"

#include <QPainter>

#include <memory>

namespace padside {

namespace {

constexpr double unitHeight = 620;
constexpr double underTimeline = 16;

/// The timeline with a lane for each part, laid out for a width in tenths of a millimetre.
struct LaidTimeline
{
    Timeline timeline;
    TimelineGeometry geometry;
    double legend = 0; ///< height, in the drawing's own units

    [[nodiscard]] double height() const { return (geometry.height + underTimeline + legend) * screenScale; }
};

std::shared_ptr<const LaidTimeline> laidOut(const Timeline& timeline, const Speaker& speaker, double width)
{
    const double pixels = width / screenScale;
    FoldedGroups folded;
    for (std::size_t group = 0; group < timeline.groups.size(); ++group) {
        if (timeline.groups[group].foldable())
            folded.insert(group);
    }
    const TimelineSizes sizes
        = sizesFor(nameWidths(timeline, TimelineWords(speaker), labelFont(), labelPixels), labelPixels, pixels);
    return std::make_shared<const LaidTimeline>(
        LaidTimeline{timeline, layOut(timeline, sizes, pixels, wholeSpan(timeline), folded),
                     legendHeight(timeline, speaker, pixels)});
}

void paintLaid(QPainter& painter, const LaidTimeline& picture, const Speaker& speaker)
{
    painter.scale(screenScale, screenScale);
    painter.setFont(labelFont());
    const TimelineGeometry& geometry = picture.geometry;
    paintTimeline(painter, QRectF(0, 0, geometry.width, geometry.height),
                  TimelinePicture{picture.timeline, geometry, speaker, Theme::print(), std::nullopt, {}, false});
    paintTimelineLegend(painter, QRectF(0, geometry.height + underTimeline, geometry.width, picture.legend),
                        picture.timeline, speaker, Theme::print());
}

} // namespace

DrawingBlock unitPicture(const OwnerView& view)
{
    const auto content = std::make_shared<const CutawayContent>(
        cutawayOf(view.record, view.input.review, view.input.catalogue, view.input.speaker));
    DrawingBlock block;
    block.heading = OwnerText::tr("The unit, opened");
    block.lay = [content](double) {
        return LaidDrawing{unitHeight, [content](QPainter& painter, const QSizeF& size) {
                               painter.scale(screenScale, screenScale);
                               painter.setFont(labelFont());
                               paintCutaway(painter, QRectF(QPointF(0, 0), size / screenScale), *content,
                                            Theme::print());
                           }};
    };
    block.under = OwnerText::tr("Each part with the worst grade last found on it: 1 sound, 2 worn, 3 marked, 4 poor, "
                                "5 spent; hatched where it could not be seen.");
    return block;
}

DrawingBlock timelinePicture(const OwnerView& view)
{
    const OwnerHistoryInput& input = view.input;
    const auto timeline = std::make_shared<const Timeline>(
        input.outlook != nullptr ? timelineWithOutlook(view.record, input.catalogue, *input.outlook, input.today)
                                 : timelineOf(view.record, input.catalogue, input.today));
    const Speaker* speaker = &view.input.speaker;
    DrawingBlock block;
    block.heading = OwnerText::tr("Through the years");
    block.wide = true;
    block.lay = [timeline, speaker](double width) {
        const auto laid = laidOut(*timeline, *speaker, width);
        return LaidDrawing{laid->height(),
                           [laid, speaker](QPainter& painter, const QSizeF&) { paintLaid(painter, *laid, *speaker); }};
    };
    return block;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_painter.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_outlook_painter.h"
#include "ui/drawing/timeline_signs.h"
#include "ui/drawing/timeline_words.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr double foldWidth = 12; ///< room for the triangle before a part's name

/// Where the weeks of a season lie.
QColor seasonGround(const Theme& theme)
{
    return mixed(theme.softInk, theme.panel, 0.09);
}

QFont fontOf(const QPainter& painter, double pixels, bool bold = false)
{
    QFont font = painter.font();
    font.setPixelSize(static_cast<int>(std::round(pixels)));
    font.setBold(bold);
    return font;
}

/// An upright hairline on a whole pixel.
void upright(QPainter& painter, double x, double top, double bottom, const QColor& colour)
{
    painter.setPen(QPen(colour, 1));
    const double at = std::floor(x) + 0.5;
    painter.drawLine(QPointF(at, top), QPointF(at, bottom));
}

void paintGuides(QPainter& painter, const TimelinePicture& picture)
{
    const TimelineGeometry& geometry = picture.geometry;
    const Theme& theme = picture.theme;
    const double top = geometry.sizes.header;
    for (const TimelineMark& visit : picture.timeline.groups.front().lanes.front().marks) {
        const bool callOut = visit.reason == VisitReason::callOut;
        upright(painter, geometry.axis.x(visit.on), top, geometry.height,
                mixed(theme.line, theme.panel, callOut ? 0.9 : 0.45));
    }
    for (const TimeTick& tick : geometry.ticks) {
        if (tick.kind == TimeTick::Kind::year)
            upright(painter, tick.x, top, geometry.height, mixed(theme.softInk, theme.panel, 0.45));
    }
    painter.setPen(QPen(theme.line, 1));
    for (const PlacedGroup& group : geometry.groups)
        painter.drawLine(QPointF(0, group.area.bottom() - 0.5), QPointF(geometry.width, group.area.bottom() - 0.5));
    const bool runsOn = picture.timeline.until.has_value(); // what was seen ends here, what may come begins
    painter.fillRect(QRectF(std::floor(geometry.todayX), top, runsOn ? 2 : 1, geometry.height - top), theme.accent);
}

/// "today" in the header: among the seasons where they have no names, else where no year stands in its way.
void paintTodayName(QPainter& painter, const TimelinePicture& picture, double half, bool seasonNames)
{
    const TimelineGeometry& geometry = picture.geometry;
    if (!picture.timeline.until || geometry.todayX < geometry.sizes.names())
        return;
    const QFont font = fontOf(painter, geometry.sizes.text * 0.84, true);
    const QFontMetricsF metrics(font);
    const QString name = TimelineWords(picture.speaker).todayName();
    const double width = metrics.horizontalAdvance(name);
    const double yearWidth = metrics.horizontalAdvance(u"00000"_s) + 8;
    const auto taken = [&](double from, double to) {
        if (to > geometry.width || from < geometry.sizes.names())
            return true;
        return seasonNames && std::ranges::any_of(geometry.ticks, [&](const TimeTick& tick) {
                   return tick.kind == TimeTick::Kind::year && tick.x < to && tick.x + yearWidth > from;
               });
    };
    const double top = seasonNames ? 0 : half - 2;
    const double bottom = seasonNames ? half : geometry.sizes.header;
    for (const double left : {geometry.todayX + 5, geometry.todayX - width - 4}) {
        if (taken(left, left + width))
            continue;
        painter.setFont(font);
        painter.setPen(picture.theme.accent);
        painter.drawText(QRectF(left, top, width + 1, bottom - top), Qt::AlignVCenter | Qt::AlignLeft, name);
        return;
    }
}

/// A thin line wherever a part was fitted, seen or not.
void paintLives(QPainter& painter, const TimelinePicture& picture)
{
    const TimelineGeometry& geometry = picture.geometry;
    painter.setPen(QPen(mixed(picture.theme.softInk, picture.theme.panel, 0.6), 1));
    for (const PlacedLane& placed : geometry.lanes) {
        const double y = std::round(placed.middle()) - 0.5;
        for (const TimelineLife& life : laneOf(picture.timeline, placed.group, placed.lane).lives)
            painter.drawLine(QPointF(geometry.axis.x(life.from), y), QPointF(geometry.axis.x(life.to), y));
    }
}

/// The weeks in which the site is visited, as a light ground.
void paintSeasons(QPainter& painter, const TimelinePicture& picture, double top, double bottom)
{
    const QColor ground = seasonGround(picture.theme);
    for (const SeasonSpan& season : picture.geometry.seasons)
        painter.fillRect(QRectF(season.from, top, season.to - season.from, bottom - top), ground);
}

void paintSelected(QPainter& painter, const TimelinePicture& picture)
{
    if (picture.selected && picture.selected->mark == outlookMark) {
        const PlacedOutlook* outlook = picture.geometry.placedOutlook(picture.selected->group, picture.selected->lane);
        if (outlook) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(picture.theme.accent, 2));
            painter.drawRect(outlook->area.adjusted(1, 1, -1, -1));
        }
        return;
    }
    const PlacedMark* chosen = picture.selected ? picture.geometry.placed(*picture.selected) : nullptr;
    if (!chosen)
        return;
    const PlacedMark full = inFull(picture.timeline, picture.geometry, *chosen);
    if (chosen->detail != PlacedMark::Detail::full) {
        painter.fillRect(full.area.adjusted(-2, -2, 2, 2), picture.theme.panel);
        paintTimelineMark(painter, picture, full);
    }
    const bool whole = chosen->detail == PlacedMark::Detail::full;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(picture.theme.accent, 2));
    painter.drawRoundedRect((whole ? chosen->area : full.area).adjusted(-3, -3, 3, 3), 4, 4);
}

/// Where the chosen name stands; empty if no name is chosen.
QRectF nameArea(const TimelinePicture& picture)
{
    if (!picture.selected || picture.selected->mark != laneName)
        return {};
    const TimelineGeometry& geometry = picture.geometry;
    if (picture.selected->lane == partHeading) {
        const PlacedGroup* group = geometry.placedGroup(picture.selected->group);
        return group ? group->heading : QRectF();
    }
    const PlacedLane* lane = geometry.placedLane(picture.selected->group, picture.selected->lane);
    return lane
        ? QRectF(geometry.sizes.partColumn - 6, lane->area.top(), geometry.sizes.zoneColumn + 4, lane->area.height())
        : QRectF();
}

/// A triangle that points down to lanes or right where they are folded away.
void paintFold(QPainter& painter, const QPointF& middle, bool folded, const QColor& colour)
{
    constexpr double half = 4;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const QPolygonF right{QPointF(-half * 0.6, -half), QPointF(half * 0.8, 0), QPointF(-half * 0.6, half)};
    const QPolygonF down{QPointF(-half, -half * 0.6), QPointF(half, -half * 0.6), QPointF(0, half * 0.8)};
    painter.translate(middle);
    painter.drawPolygon(folded ? right : down);
    painter.restore();
}

} // namespace

void paintTimelineHeader(QPainter& painter, const TimelinePicture& picture)
{
    const TimelineGeometry& geometry = picture.geometry;
    const Theme& theme = picture.theme;
    const double half = std::round(geometry.sizes.header * 0.55);
    const double bottom = geometry.sizes.header;
    painter.save();
    painter.fillRect(QRectF(0, 0, geometry.width, bottom), theme.panel);
    painter.setClipRect(QRectF(geometry.sizes.names(), 0, geometry.width - geometry.sizes.names(), bottom),
                        Qt::IntersectClip);
    paintSeasons(painter, picture, half, bottom);
    const TimelineWords words(picture.speaker);
    const QFont yearFont = fontOf(painter, geometry.sizes.text, true);
    const QFont seasonFont = fontOf(painter, geometry.sizes.text * 0.84);
    const double halfYear = geometry.axis.pixelsPerDay() * 160; // spring and fall lie at least so many days apart
    const auto fits
        = [&](const QString& text) { return QFontMetricsF(seasonFont).horizontalAdvance(text) + 6 <= halfYear; };
    const QString spring = words.word(wordOf(VisitReason::spring));
    const QString fall = words.word(wordOf(VisitReason::fall));
    const bool seasonNames = fits(spring) && fits(fall);
    const int step = yearStep(geometry.axis, QFontMetricsF(yearFont).horizontalAdvance(u"0000"_s) + 10);
    for (const TimeTick& tick : geometry.ticks) {
        if (tick.kind == TimeTick::Kind::year) {
            const bool written = tick.year % step == 0;
            upright(painter, tick.x, written ? 2 : half, bottom, mixed(theme.softInk, theme.panel, 0.45));
            if (!written)
                continue;
            painter.setFont(yearFont);
            painter.setPen(theme.ink);
            const QString year = QString::number(tick.year);
            if (tick.x + 5 + QFontMetricsF(yearFont).horizontalAdvance(year) < geometry.width)
                painter.drawText(QRectF(tick.x + 5, 0, 80, half), Qt::AlignVCenter | Qt::AlignLeft, year);
        } else if (seasonNames) {
            painter.setFont(seasonFont);
            painter.setPen(theme.softInk);
            painter.drawText(QRectF(tick.x - 60, half - 2, 120, bottom - half), Qt::AlignCenter,
                             tick.kind == TimeTick::Kind::spring ? spring : fall);
        }
    }
    upright(painter, geometry.todayX, half - 2, bottom, theme.accent);
    paintTodayName(painter, picture, half, seasonNames);
    painter.restore();
    painter.setPen(QPen(theme.line, 1));
    painter.drawLine(QPointF(0, bottom - 0.5), QPointF(geometry.width, bottom - 0.5));
}

void paintTimelineNames(QPainter& painter, const TimelinePicture& picture)
{
    const TimelineGeometry& geometry = picture.geometry;
    const TimelineSizes& sizes = geometry.sizes;
    const Theme& theme = picture.theme;
    const TimelineWords words(picture.speaker);
    painter.save();
    painter.fillRect(QRectF(0, sizes.header, sizes.names(), geometry.height - sizes.header), theme.panel);
    const QFont partFont = fontOf(painter, sizes.text, true);
    const QFont zoneFont = fontOf(painter, sizes.text);
    for (const PlacedGroup& placed : geometry.groups) {
        const TimelineGroup& group = picture.timeline.groups[placed.group];
        const QRectF name = placed.heading.adjusted(foldWidth + 4, sizes.groupGap / 2, -6, -sizes.groupGap / 2);
        const bool one = placed.folded || group.lanes.size() == 1;
        if (group.foldable() && picture.folds)
            paintFold(painter, QPointF(foldWidth / 2 + 3, name.top() + sizes.lane / 2), placed.folded, theme.softInk);
        painter.setFont(partFont);
        painter.setPen(group.fitted ? theme.ink : theme.softInk);
        const QString text = words.partName(group);
        const QString cut = QFontMetricsF(partFont).elidedText(text, Qt::ElideRight, name.width() * (one ? 1 : 1.9));
        const QRectF lines = one ? name : name.adjusted(0, (sizes.lane - QFontMetricsF(partFont).height()) / 2, 0, 0);
        painter.drawText(
            lines, one ? int(Qt::AlignVCenter | Qt::AlignLeft) : int(Qt::AlignTop | Qt::AlignLeft | Qt::TextWordWrap),
            cut);
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(QPointF(0, placed.area.bottom() - 0.5), QPointF(sizes.names(), placed.area.bottom() - 0.5));
    }
    painter.setFont(zoneFont);
    for (const PlacedLane& placed : geometry.lanes) {
        const QRectF place(sizes.partColumn, placed.area.top(), sizes.zoneColumn - 6, placed.area.height());
        const QString name = words.zoneName(laneOf(picture.timeline, placed.group, placed.lane));
        painter.setPen(picture.timeline.groups[placed.group].fitted && placed.lane != worstLane ? theme.ink
                                                                                                : theme.softInk);
        painter.drawText(place, Qt::AlignVCenter | Qt::AlignLeft,
                         QFontMetricsF(zoneFont).elidedText(name, Qt::ElideRight, place.width()));
    }
    if (const QRectF chosen = nameArea(picture); !chosen.isEmpty()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.accent, 2));
        painter.drawRect(chosen.adjusted(2, 1, -2, -1));
    }
    upright(painter, sizes.names() - 1, sizes.header, geometry.height, theme.line);
    painter.restore();
}

void paintTimelineLanes(QPainter& painter, const TimelinePicture& picture)
{
    const TimelineGeometry& geometry = picture.geometry;
    const double names = geometry.sizes.names();
    const double header = geometry.sizes.header;
    const QRectF lanes(names, header, geometry.width - names, geometry.height - header);
    painter.save();
    painter.setClipRect(lanes, Qt::IntersectClip);
    painter.fillRect(lanes, picture.theme.panel);
    paintOutlookGround(painter, picture);
    paintSeasons(painter, picture, header, geometry.height);
    paintGuides(painter, picture);
    paintLives(painter, picture);
    const QRectF visible = painter.clipBoundingRect();
    const auto inSight = [&visible](const QRectF& area) { return area.adjusted(-8, -8, 8, 8).intersects(visible); };
    paintOutlooks(painter, picture);
    for (const PlacedBand& band : geometry.bands) {
        if (band.area.intersects(visible))
            paintBand(painter, band.area, band.grade, band.sure, picture.theme);
    }
    for (const PlacedRun& run : geometry.runs) {
        if (inSight(run.area))
            paintGrade(painter, run.area, run.grade, picture.theme);
    }
    for (const PlacedMark& mark : geometry.marks) {
        if (mark.painted() && inSight(mark.area))
            paintTimelineMark(painter, picture, mark);
    }
    paintSelected(painter, picture);
    painter.restore();
}

void paintTimeline(QPainter& painter, const QRectF& area, const TimelinePicture& picture)
{
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.translate(area.topLeft());
    paintTimelineLanes(painter, picture);
    paintTimelineNames(painter, picture);
    paintTimelineHeader(painter, picture);
    painter.restore();
}

} // namespace padside

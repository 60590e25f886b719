// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_painter.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_signs.h"
#include "ui/drawing/timeline_words.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double signsWidth = 200; ///< as far as signs and amounts may reach to the right of a mark

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
    upright(painter, geometry.todayX, top, geometry.height, theme.accent);
}

/// A thin line wherever a part was fitted, seen or not.
void paintLives(QPainter& painter, const TimelinePicture& picture)
{
    const TimelineGeometry& geometry = picture.geometry;
    painter.setPen(QPen(mixed(picture.theme.softInk, picture.theme.panel, 0.6), 1));
    for (const PlacedLane& placed : geometry.lanes) {
        const double y = std::round(placed.middle()) - 0.5;
        for (const TimelineLife& life : picture.timeline.groups[placed.group].lanes[placed.lane].lives)
            painter.drawLine(QPointF(geometry.axis.x(life.from), y), QPointF(geometry.axis.x(life.to), y));
    }
}

void paintZoneMark(QPainter& painter, const TimelinePicture& picture, const PlacedMark& placed,
                   const TimelineMark& mark)
{
    const Theme& theme = picture.theme;
    const TimelineSizes& sizes = picture.geometry.sizes;
    if (mark.found)
        paintGrade(painter, placed.found, *mark.found, theme);
    else if (mark.notSeen)
        paintNotSeen(painter, placed.found, theme);
    if (mark.left)
        paintGrade(painter, placed.left, *mark.left, theme);
    const bool bare = placed.found.isEmpty() && placed.left.isEmpty();
    double x = bare ? placed.area.left() + sizes.mark * 0.2 : placed.area.right() + 2;
    const double side = std::round(sizes.text * 0.72);
    const double middle = placed.area.center().y();
    if (mark.fitted) {
        const QRectF bar(x, middle - sizes.lane / 2 + 2, side, sizes.lane - 4);
        paintFittedSign(painter, bar, theme);
        x += side;
    }
    for (const Treatment& treatment : mark.treatments) {
        if (treatment.kind == TreatmentKind::replace && mark.fitted)
            continue;
        paintTreatmentSign(painter, QRectF(x, std::round(middle - side / 2), side, side), treatment.kind, theme);
        x += side + 2;
    }
    const QRectF carrier = placed.found.isEmpty() ? placed.left : placed.found;
    if (mark.photos > 0)
        paintPhotoSign(painter, carrier.isEmpty() ? placed.area : carrier, theme);
    if (!mark.correction.empty())
        paintCorrectedSign(painter, carrier.isEmpty() ? placed.area : carrier, theme);
}

/// How far the next mark of the lane is; amounts are only written where they do not run into it.
double roomAfter(const TimelineGeometry& geometry, const PlacedMark& placed)
{
    const PlacedMark* next = geometry.placed(MarkPlace{placed.place.group, placed.place.lane, placed.place.mark + 1});
    return (next ? next->area.left() : geometry.width) - placed.area.right();
}

void paintChargeMark(QPainter& painter, const TimelinePicture& picture, const PlacedMark& placed,
                     const TimelineMark& mark)
{
    const TimelineWords words(picture.speaker);
    const double side = std::round(placed.area.height() * 0.62);
    QRectF sign(0, 0, side, side);
    sign.moveCenter(placed.area.center());
    painter.setFont(fontOf(painter, picture.geometry.sizes.text * 0.84));
    const QFontMetricsF metrics(painter.font());
    const double end = placed.area.right() + roomAfter(picture.geometry, placed);
    for (const ChargeEntry& charge : mark.charges) {
        paintChargeSign(painter, sign, charge.direction, picture.theme);
        const QString text = words.chargeText(charge);
        const QRectF place(sign.right() + 3, placed.area.top() - 2, metrics.horizontalAdvance(text) + 2,
                           placed.area.height() + 4);
        const bool fits = place.right() <= end;
        if (fits) {
            painter.setPen(picture.theme.ink);
            painter.drawText(place, Qt::AlignVCenter | Qt::AlignLeft, text);
        }
        sign.moveLeft(fits ? place.right() + 4 : sign.right() + 2);
    }
}

void paintMark(QPainter& painter, const TimelinePicture& picture, const PlacedMark& placed)
{
    const MarkPlace& place = placed.place;
    const TimelineMark& mark = picture.timeline.groups[place.group].lanes[place.lane].marks[place.mark];
    switch (mark.subject) {
    case TimelineMark::Subject::zone:
        paintZoneMark(painter, picture, placed, mark);
        break;
    case TimelineMark::Subject::visit: {
        const double inset = placed.area.height() * 0.18;
        paintVisitSign(painter, placed.area.adjusted(inset, inset, -inset, -inset),
                       mark.reason.value_or(VisitReason::spring), mark.openVisit, picture.theme);
        break;
    }
    case TimelineMark::Subject::charge:
        paintChargeMark(painter, picture, placed, mark);
        break;
    }
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
    const TimelineWords words(picture.speaker);
    const QFont yearFont = fontOf(painter, geometry.sizes.text, true);
    const QFont seasonFont = fontOf(painter, geometry.sizes.text * 0.84);
    const double halfYear = geometry.axis.pixelsPerDay() * 160; // spring and fall lie at least so many days apart
    const auto fits
        = [&](const QString& text) { return QFontMetricsF(seasonFont).horizontalAdvance(text) + 6 <= halfYear; };
    const QString spring = words.word(wordOf(VisitReason::spring));
    const QString fall = words.word(wordOf(VisitReason::fall));
    const bool seasonNames = fits(spring) && fits(fall);
    for (const TimeTick& tick : geometry.ticks) {
        if (tick.kind == TimeTick::Kind::year) {
            upright(painter, tick.x, 2, bottom, mixed(theme.softInk, theme.panel, 0.45));
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
        } else {
            upright(painter, tick.x, bottom - 6, bottom, theme.softInk);
        }
    }
    upright(painter, geometry.todayX, half - 2, bottom, theme.accent);
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
    std::size_t row = 0;
    for (const PlacedGroup& placed : geometry.groups) {
        const TimelineGroup& group = picture.timeline.groups[placed.group];
        const QRectF name(6, placed.area.top() + sizes.groupGap / 2, sizes.partColumn - 12,
                          placed.area.height() - sizes.groupGap);
        const bool one = group.lanes.size() == 1;
        painter.setFont(partFont);
        painter.setPen(group.fitted ? theme.ink : theme.softInk);
        const QString text = words.partName(group);
        const QString cut = QFontMetricsF(partFont).elidedText(text, Qt::ElideRight, name.width() * (one ? 1 : 1.9));
        const QRectF lines = one ? name : name.adjusted(0, (sizes.lane - QFontMetricsF(partFont).height()) / 2, 0, 0);
        painter.drawText(
            lines, one ? int(Qt::AlignVCenter | Qt::AlignLeft) : int(Qt::AlignTop | Qt::AlignLeft | Qt::TextWordWrap),
            cut);
        painter.setFont(zoneFont);
        for (const TimelineLane& lane : group.lanes) {
            const QRectF& area = geometry.lanes[row++].area;
            const QRectF place(sizes.partColumn, area.top(), sizes.zoneColumn - 6, area.height());
            painter.drawText(place, Qt::AlignVCenter | Qt::AlignLeft,
                             QFontMetricsF(zoneFont).elidedText(words.zoneName(lane), Qt::ElideRight, place.width()));
        }
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(QPointF(0, placed.area.bottom() - 0.5), QPointF(sizes.names(), placed.area.bottom() - 0.5));
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
    paintGuides(painter, picture);
    paintLives(painter, picture);
    const QRectF visible = painter.clipBoundingRect();
    for (const PlacedBand& band : geometry.bands) {
        if (band.area.intersects(visible))
            paintBand(painter, band.area, band.grade, band.sure, picture.theme);
    }
    for (const PlacedMark& mark : geometry.marks) {
        if (mark.area.adjusted(-8, -8, signsWidth, 8).intersects(visible))
            paintMark(painter, picture, mark);
    }
    if (const PlacedMark* chosen = picture.selected ? geometry.placed(*picture.selected) : nullptr) {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(picture.theme.accent, 2));
        painter.drawRoundedRect(chosen->area.adjusted(-3, -3, 3, 3), 4, 4);
    }
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

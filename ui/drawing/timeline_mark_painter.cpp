// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// What a single mark of a timeline looks like.

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_painter.h"
#include "ui/drawing/timeline_signs.h"
#include "ui/drawing/timeline_words.h"

#include <QPainter>

#include <cmath>

namespace padside {

namespace {

void paintSigns(QPainter& painter, const PlacedMark& placed, const TimelineMark& mark, const TimelineSizes& sizes,
                const Theme& theme)
{
    double x = placed.signs.left();
    const double side = sizes.sign();
    const double middle = placed.signs.center().y();
    if (mark.fitted) {
        paintFittedSign(painter, QRectF(x, placed.signs.top(), side, placed.signs.height()), theme);
        x += side;
    }
    for (const Treatment& treatment : mark.treatments) {
        if (treatment.kind == TreatmentKind::replace && mark.fitted)
            continue;
        paintTreatmentSign(painter, QRectF(x, std::round(middle - side / 2), side, side), treatment.kind, theme);
        x += side + 2;
    }
}

void paintPicture(QPainter& painter, const TimelinePicture& picture, const PlacedMark& placed, const PhotoId& photo)
{
    const QImage image = picture.pictures ? picture.pictures(photo) : QImage();
    if (image.isNull())
        return;
    // Cut to the frame rather than squeezed into it.
    QSizeF size(image.size());
    size.scale(placed.picture.size(), Qt::KeepAspectRatioByExpanding);
    const double scale = image.width() / size.width();
    QRectF part(QPointF(0, 0), placed.picture.size() * scale);
    part.moveCenter(QRectF(image.rect()).center());
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(placed.picture, image, part);
    painter.setPen(QPen(picture.theme.line, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(placed.picture.adjusted(0.5, 0.5, -0.5, -0.5));
    painter.restore();
}

void paintZoneMark(QPainter& painter, const TimelinePicture& picture, const PlacedMark& placed,
                   const TimelineMark& mark)
{
    const Theme& theme = picture.theme;
    if (!placed.found.isEmpty() && mark.found)
        paintGrade(painter, placed.found, *mark.found, theme);
    else if (!placed.found.isEmpty() && mark.notSeen)
        paintNotSeen(painter, placed.found, theme);
    if (!placed.left.isEmpty() && mark.left)
        paintGrade(painter, placed.left, *mark.left, theme);
    if (!placed.signs.isEmpty())
        paintSigns(painter, placed, mark, picture.geometry.sizes, theme);
    const QRectF carrier = !placed.found.isEmpty() ? placed.found : !placed.left.isEmpty() ? placed.left : placed.area;
    if (!placed.picture.isEmpty() && !mark.pictures.empty())
        paintPicture(painter, picture, placed, mark.pictures.front());
    if (mark.photos > 0)
        paintPhotoSign(painter, carrier, theme);
    if (!mark.correction.empty())
        paintCorrectedSign(painter, carrier, theme);
}

void paintChargeMark(QPainter& painter, const TimelinePicture& picture, const PlacedMark& placed,
                     const TimelineMark& mark)
{
    const double side = std::round(placed.found.height() * 0.62);
    QRectF sign(0, 0, side, side);
    sign.moveCenter(placed.found.center());
    paintChargeSign(painter, sign, mark.charges.front().direction, picture.theme);
    if (placed.amount.isEmpty())
        return;
    QFont font = painter.font();
    font.setPixelSize(static_cast<int>(std::round(picture.geometry.sizes.text * amountType)));
    font.setBold(false);
    painter.setFont(font);
    painter.setPen(picture.theme.ink);
    painter.drawText(placed.amount, Qt::AlignVCenter | Qt::AlignLeft, TimelineWords(picture.speaker).chargesText(mark));
}

void paintTick(QPainter& painter, const PlacedMark& placed, const TimelineMark& mark, const Theme& theme)
{
    const double inset = std::round(placed.area.height() * (mark.notSeen ? 0.28 : 0.12));
    painter.setPen(QPen(mark.notSeen ? theme.hatch : mixed(theme.ink, theme.panel, 0.75), 1));
    const double x = std::floor(placed.area.center().x()) + 0.5;
    const auto draw = [&](double top, double bottom) { painter.drawLine(QPointF(x, top), QPointF(x, bottom)); };
    if (mark.notSeen) { // broken: there was nothing to be seen
        draw(placed.area.top() + 1, placed.area.top() + inset);
        draw(placed.area.bottom() - inset, placed.area.bottom() - 1);
    } else {
        draw(placed.area.top() + inset, placed.area.bottom() - inset);
    }
}

} // namespace

void paintTimelineMark(QPainter& painter, const TimelinePicture& picture, const PlacedMark& placed)
{
    const TimelineMark& mark = laneOf(picture.timeline, placed.place.group, placed.place.lane).marks[placed.place.mark];
    painter.save();
    if (placed.detail == PlacedMark::Detail::tick) {
        paintTick(painter, placed, mark, picture.theme);
        painter.restore();
        return;
    }
    switch (mark.subject) {
    case TimelineMark::Subject::zone:
        paintZoneMark(painter, picture, placed, mark);
        break;
    case TimelineMark::Subject::visit: {
        const double inset = placed.found.height() * 0.18;
        paintVisitSign(painter, placed.found.adjusted(inset, inset, -inset, -inset),
                       mark.reason.value_or(VisitReason::spring), mark.openVisit, picture.theme);
        break;
    }
    case TimelineMark::Subject::charge:
        paintChargeMark(painter, picture, placed, mark);
        break;
    }
    const QRectF carrier = !placed.found.isEmpty() ? placed.found : placed.area;
    if (placed.standsFor > 0)
        paintMoreSign(painter, carrier, picture.theme);
    painter.restore();
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/paper_painter.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/paper/type_setting.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

namespace padside {

namespace {

constexpr double markScale = 2.2; ///< marks are drawn for a screen of about 115 dots to the inch
constexpr double hairline = 1.8;
constexpr double photoDotsPerUnit = 300 / unitsPerInch;

QColor colour(Ink ink)
{
    const Theme& theme = Theme::print();
    switch (ink) {
    case Ink::full:
        return theme.ink;
    case Ink::soft:
        return theme.softInk;
    case Ink::line:
        return theme.line;
    }
    return theme.ink;
}

struct RunPainter
{
    QPainter& painter;
    const PhotoSource& photos;

    void operator()(const TextRun& run) const
    {
        painter.setFont(paperFont(run.face));
        painter.setPen(colour(run.ink));
        painter.drawText(run.at, run.text);
    }

    void operator()(const RuleRun& run) const
    {
        painter.setPen(
            QPen(colour(run.ink), run.ink == Ink::full ? 2 * hairline : hairline, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(run.line);
    }

    void operator()(const ArrowRun& run) const
    {
        const double middle = run.box.center().y();
        const double left = run.box.left() + 12;
        const double right = run.box.right() - 10;
        painter.setPen(QPen(colour(Ink::soft), hairline * 1.4, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        painter.drawLine(QPointF(left, middle), QPointF(right, middle));
        QPainterPath head(QPointF(right - 7, middle - 6));
        head.lineTo(right, middle);
        head.lineTo(right - 7, middle + 6);
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(head);
    }

    void operator()(const MarkRun& run) const
    {
        painter.save();
        painter.translate(run.box.topLeft());
        painter.scale(markScale, markScale);
        const QRectF area(QPointF(0, 0), run.box.size() / markScale);
        painter.setFont(paperFont(Face::strong));
        const Theme& theme = Theme::print();
        if (const Grade* grade = std::get_if<Grade>(&run.mark))
            paintGrade(painter, area, *grade, theme);
        else if (std::holds_alternative<NotSeenMark>(run.mark))
            paintNotSeen(painter, area, theme);
        else
            paintNoFinding(painter, area, theme);
        painter.restore();
    }

    void operator()(const DrawingRun& run) const
    {
        painter.save();
        painter.translate(run.box.topLeft());
        run.paint(painter);
        painter.restore();
    }

    void operator()(const BoxRun& run) const
    {
        painter.setPen(QPen(colour(Ink::soft), hairline));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(run.box);
        painter.setFont(paperFont(Face::small));
        painter.drawText(run.box, Qt::AlignCenter, run.sign);
    }

    void operator()(const PhotoRun& run) const
    {
        painter.fillRect(run.box, Theme::print().panel);
        QImage image = photos ? photos(run.id) : QImage();
        if (image.isNull()) {
            painter.setFont(paperFont(Face::small));
            painter.setPen(colour(Ink::soft));
            painter.drawText(run.box.adjusted(20, 20, -20, -20), static_cast<int>(Qt::AlignCenter) | Qt::TextWordWrap,
                             QCoreApplication::translate("Paper", "The picture can't be read."));
            return;
        }
        // No more dots than paper shows: a summary is sent by mail.
        const QSize most = (run.box.size() * photoDotsPerUnit).toSize();
        if (image.width() > most.width() || image.height() > most.height())
            image = image.scaled(most, Qt::KeepAspectRatio, Qt::SmoothTransformation);
        const QSizeF size = QSizeF(image.size()).scaled(run.box.size(), Qt::KeepAspectRatio);
        QRectF place(QPointF(0, 0), size);
        place.moveCenter(run.box.center());
        // Flattened on white: a translucent picture would hide what is below it in the archive format.
        QImage opaque(image.size(), QImage::Format_RGB32);
        opaque.fill(Qt::white);
        QPainter(&opaque).drawImage(0, 0, image);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawImage(place, opaque);
    }
};

} // namespace

void paintPage(QPainter& painter, const PaperPage& page, const PhotoSource& photos)
{
    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    const RunPainter paint{painter, photos};
    for (const Run& run : page.runs)
        std::visit(paint, run);
    painter.restore();
}

} // namespace padside

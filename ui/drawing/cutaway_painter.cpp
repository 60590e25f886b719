// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway_painter.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"

#include <QPainter>

namespace padside {

namespace {

void paintLeader(QPainter& painter, const QLineF& line, const Theme& theme, bool lit)
{
    painter.setPen(QPen(theme.panel, 3));
    painter.drawLine(line);
    painter.setPen(QPen(lit ? theme.accent : theme.softInk, 1));
    painter.drawLine(line);
    painter.setBrush(lit ? theme.accent : theme.softInk);
    painter.drawEllipse(line.p2(), 1.6, 1.6);
}

/// Nothing recorded must not look like something, nor hide the part: a small outline.
QRectF extent(const QRectF& mark, const CutawayPart& part)
{
    if (part.grade || part.notSeen)
        return mark;
    const double inset = mark.height() * 0.2;
    return mark.adjusted(inset, inset, -inset, -inset);
}

/// A rim of the ground sets a mark off from the lines behind it.
void paintRim(QPainter& painter, const QRectF& area, const QColor& colour, double width)
{
    painter.setPen(QPen(colour, width));
    painter.setBrush(colour);
    painter.drawRoundedRect(area, 3, 3);
}

} // namespace

void paintPartMark(QPainter& painter, const QRectF& area, const CutawayPart& part, const Theme& theme)
{
    if (!part.grade && !part.notSeen) {
        Theme strong = theme;
        strong.line = mixed(theme.ink, theme.panel, 0.6); // a hairline would be lost among the drawing's lines
        paintNoFinding(painter, area, strong);
        return;
    }
    if (!part.grade) {
        paintNotSeen(painter, area, theme);
        return;
    }
    QRectF grade = area;
    if (part.notSeen) {
        grade.setWidth(area.height() * 1.1);
        paintNotSeen(painter, QRectF(grade.right() - 3, area.top(), area.right() - grade.right() + 3, area.height()),
                     theme);
    }
    paintGrade(painter, grade, *part.grade, theme);
}

void paintCutawayMarks(QPainter& painter, const CutawayPicture& picture)
{
    const Theme& theme = picture.theme;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (picture.lit && picture.geometry.parts[*picture.lit].place)
        picture.drawing.paintLit(painter, picture.geometry.drawing, *picture.geometry.parts[*picture.lit].place);
    for (const PlacedPart& one : picture.geometry.parts) {
        if (one.leader)
            paintLeader(painter, *one.leader, theme, picture.lit == one.part);
    }
    for (const PlacedPart& one : picture.geometry.parts) {
        const CutawayPart& part = picture.content.parts[one.part];
        const QRectF mark = extent(one.mark, part);
        if (picture.lit == one.part)
            paintRim(painter, mark, theme.accent, picture.focused ? 6 : 4);
        paintRim(painter, mark, theme.panel, picture.lit == one.part ? 0 : 2);
        paintPartMark(painter, mark, part, theme);
    }
    painter.restore();
}

void paintCutaway(QPainter& painter, const QRectF& area, const CutawayContent& content, const Theme& theme)
{
    CutawayDrawing drawing(content.unitKind, theme);
    drawing.tint(content);
    const CutawayGeometry geometry = layOutCutaway(content, drawing, area);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    drawing.paint(painter, geometry.drawing);
    paintCutawayMarks(painter, CutawayPicture{content, drawing, geometry, theme, std::nullopt, false});
    painter.restore();
}

} // namespace padside

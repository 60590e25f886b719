// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_outlook_painter.h"

#include "ui/drawing/theme.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double chancesInset = 3; ///< of a lane's height, above and below
constexpr double deepest = 0.8; ///< share of a grade's colour where it is certain; what was seen has all of it
constexpr double palest = 0.3; ///< where anything may be
constexpr double hatchStep = 9;
constexpr double overNext = 0.7;
constexpr double numeralGap = 26; ///< between numerals of the likeliest grade

std::size_t likeliest(const GradeChances& chances)
{
    return static_cast<std::size_t>(std::ranges::max_element(chances) - chances.begin());
}

QRectF chancesIn(const QRectF& lane)
{
    return lane.adjusted(0, chancesInset, 0, -chancesInset);
}

/// The numeral of the likeliest grade where it begins and where it becomes another.
void paintNumerals(QPainter& painter, const PlacedOutlook& placed, const TimelineGeometry& geometry, const Theme& theme)
{
    const double side = geometry.sizes.leftMark;
    std::size_t said = gradeCount;
    double free = placed.area.left() + 2;
    for (const PlacedMark& mark : geometry.marks) { // the last one may reach beyond today
        if (mark.painted() && mark.place.group == placed.group && mark.place.lane == placed.lane)
            free = std::max(free, mark.area.right() + 3);
    }
    for (const PlacedChances& stretch : placed.stretches) {
        const std::size_t grade = likeliest(stretch.chances);
        if (grade == said || stretch.from < free - 1)
            continue;
        const QRectF area(std::round(std::max(stretch.from, free)), std::round(placed.area.center().y() - side / 2),
                          side, side);
        if (area.right() > placed.area.right()
            || (!placed.spent.isEmpty() && area.adjusted(-3, 0, 3, 0).intersects(placed.spent)))
            continue;
        said = grade;
        free = area.right() + numeralGap;
        if (grade + 1 < gradeCount || placed.spent.isEmpty()) // the mark of spent says 5 by itself
            paintExpectedGrade(painter, area, static_cast<Grade>(grade + 1), theme);
    }
}

} // namespace

QColor outlookGround(const Theme& theme)
{
    return mixed(theme.ground, theme.panel, theme.kind == ThemeKind::sunlight ? 1 : 0.75);
}

void paintOutlookGround(QPainter& painter, const TimelinePicture& picture)
{
    const TimelineGeometry& geometry = picture.geometry;
    if (!picture.timeline.until)
        return;
    const QRectF area(QPointF(std::max(geometry.todayX, geometry.sizes.names()), geometry.sizes.header),
                      QPointF(geometry.width, geometry.height));
    if (area.width() <= 0)
        return;
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.fillRect(area, outlookGround(picture.theme));
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(mixed(picture.theme.hatch, outlookGround(picture.theme), 0.16), 1));
    // Only where something is painted: a tall timeline has more lines than a screen shows.
    const QRectF visible = painter.clipBoundingRect();
    const double height = visible.height();
    const double first = std::floor((visible.left() - height) / hatchStep) * hatchStep;
    const double turn = std::fmod(visible.top(), hatchStep); // so that lines meet when a part is painted anew
    for (double x = first; x < visible.right() + hatchStep; x += hatchStep)
        painter.drawLine(QPointF(x - turn, visible.bottom()), QPointF(x - turn + height, visible.top()));
    painter.restore();
}

void paintShares(QPainter& painter, const QRectF& area, const GradeChances& chances, const Theme& theme)
{
    const QColor ground = outlookGround(theme);
    // What is less certain fades.
    const double depth = palest + (deepest - palest) * *std::ranges::max_element(chances);
    double top = area.top();
    for (std::size_t grade = 0; grade < gradeCount; ++grade) {
        // Each down to the bottom, the graver over it: no gap between them, whatever the rounding.
        if (chances[grade] > 0)
            painter.fillRect(QRectF(area.left(), top, area.width(), area.bottom() - top),
                             mixed(theme.gradeFill[grade], ground, depth));
        top += area.height() * chances[grade];
    }
}

void paintExpectedGrade(QPainter& painter, const QRectF& area, Grade grade, const Theme& theme)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(mixed(theme.ink, theme.panel, 0.75), 1);
    pen.setDashPattern({2, 2});
    painter.setPen(pen);
    painter.setBrush(outlookGround(theme));
    painter.drawRoundedRect(area.adjusted(0.5, 0.5, -0.5, -0.5), 2.5, 2.5);
    QFont font = painter.font();
    font.setPixelSize(std::max(7, static_cast<int>(area.height() * 0.72)));
    font.setBold(true);
    painter.setFont(font);
    painter.setPen(theme.ink);
    painter.drawText(area, Qt::AlignCenter, QString::number(numeral(grade)));
    painter.restore();
}

void paintSpentRange(QPainter& painter, const PlacedOutlook& placed, const Theme& theme)
{
    if (placed.spentTo <= placed.spentFrom && placed.spent.isEmpty())
        return;
    painter.save();
    const double y = std::floor(placed.area.center().y()) + 0.5;
    const double half = std::round(placed.area.height() * 0.24);
    painter.setPen(QPen(mixed(theme.ink, theme.panel, 0.8), 1));
    painter.drawLine(QPointF(placed.spentFrom, y), QPointF(placed.spentTo, y));
    const auto end = [&](double x) {
        const double at = std::floor(x) + 0.5;
        painter.drawLine(QPointF(at, y - half), QPointF(at, y + half));
    };
    if (placed.earlySeen)
        end(placed.spentFrom);
    if (placed.lateSeen)
        end(placed.spentTo - 1);
    if (!placed.spent.isEmpty())
        paintExpectedGrade(painter, placed.spent, Grade::spent, theme);
    painter.restore();
}

void paintOutlooks(QPainter& painter, const TimelinePicture& picture)
{
    const QRectF visible = painter.clipBoundingRect();
    for (const PlacedOutlook& placed : picture.geometry.outlooks) {
        if (!placed.area.intersects(visible))
            continue;
        const QRectF band = chancesIn(placed.area);
        for (const PlacedChances& stretch : placed.stretches) {
            // A little over the next one: on paper, edges that only meet leave a pale line.
            const double to = std::min(stretch.to + overNext, placed.area.right());
            paintShares(painter, QRectF(stretch.from, band.top(), to - stretch.from, band.height()), stretch.chances,
                        picture.theme);
        }
        painter.save();
        paintNumerals(painter, placed, picture.geometry, picture.theme);
        painter.restore();
        paintSpentRange(painter, placed, picture.theme);
    }
}

} // namespace padside

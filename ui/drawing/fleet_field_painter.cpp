// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/fleet_field_painter.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double markCorner = 3;

void paintColumns(QPainter& painter, const FleetFieldPicture& picture)
{
    const FleetFieldGeometry& geometry = picture.geometry;
    const Theme& theme = picture.theme;
    for (std::size_t column = 0; column < tollCount; ++column) {
        const QRectF& room = geometry.columns[column];
        if (column % 2 == 1)
            painter.fillRect(room, mixed(theme.softInk, theme.panel, 0.05));
        painter.setPen(theme.softInk);
        const QRectF name(room.left() + 4, room.bottom() + 3, room.width() - 8, geometry.sizes.names - 3);
        painter.drawText(name, Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap,
                         picture.tollNames.value(static_cast<int>(column)));
    }
}

void paintChances(QPainter& painter, const FleetFieldPicture& picture)
{
    const FleetFieldGeometry& geometry = picture.geometry;
    const Theme& theme = picture.theme;
    const QFontMetricsF letters(painter.font());
    double free = geometry.plot.bottom() + letters.height(); // from below: what has no room is not written
    for (const FieldLine& line : geometry.lines) {
        const double y = std::floor(line.y) + 0.5;
        painter.setPen(QPen(theme.line, 1, line.chance > 0 ? Qt::DotLine : Qt::SolidLine));
        painter.drawLine(QPointF(geometry.plot.left(), y), QPointF(geometry.plot.right(), y));
        const QRectF place(geometry.plot.left() - geometry.sizes.axis, y - letters.height() / 2,
                           geometry.sizes.axis - 6, letters.height());
        if (place.bottom() > free)
            continue;
        free = place.top();
        painter.setPen(theme.softInk);
        painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter, picture.shownChance(line.chance));
    }
}

void paintFrame(QPainter& painter, const QRectF& area, const Theme& theme, bool pointed)
{
    painter.setPen(QPen(pointed ? theme.ink : mixed(theme.softInk, theme.panel, 0.6), 1));
    painter.setBrush(theme.panel);
    painter.drawRoundedRect(area.adjusted(0.5, 0.5, -0.5, -0.5), markCorner, markCorner);
}

void paintUnit(QPainter& painter, const FleetFieldPicture& picture, const FieldMark& mark, bool pointed)
{
    const FieldUnit& unit = picture.units[mark.units.front()];
    const QRectF& area = mark.area;
    paintFrame(painter, area, picture.theme, pointed);
    const double side = area.height() - 4;
    const QRectF grade(area.left() + 2, area.top() + 2, side, side);
    if (unit.grade)
        paintGrade(painter, grade, *unit.grade, picture.theme);
    else
        paintNotSeen(painter, grade, picture.theme);
    const QRectF tag(grade.right() + 4, area.top(), area.right() - grade.right() - 6, area.height());
    painter.setPen(picture.theme.ink);
    painter.drawText(tag, Qt::AlignLeft | Qt::AlignVCenter,
                     QFontMetricsF(painter.font()).elidedText(unit.tag, Qt::ElideRight, tag.width()));
}

/// How many of those gathered are at each grade; the last are those never seen.
std::array<std::size_t, 6> gradesIn(const FleetFieldPicture& picture, const FieldMark& mark)
{
    std::array<std::size_t, 6> count{};
    for (const std::size_t unit : mark.units) {
        const auto& grade = picture.units[unit].grade;
        ++count[grade ? static_cast<std::size_t>(numeral(*grade)) - 1 : 5];
    }
    return count;
}

void paintGathered(QPainter& painter, const FleetFieldPicture& picture, const FieldMark& mark, bool pointed)
{
    const Theme& theme = picture.theme;
    // A second sheet behind says that there is more than one.
    paintFrame(painter, mark.area.translated(2, 2), theme, false);
    paintFrame(painter, mark.area, theme, pointed);
    const double strip = std::round(mark.area.height() * 0.26);
    double x = mark.area.left() + 3;
    const double width = mark.area.width() - 6;
    const auto counts = gradesIn(picture, mark);
    for (std::size_t grade = 0; grade < counts.size(); ++grade) {
        const double share = width * static_cast<double>(counts[grade]) / static_cast<double>(mark.units.size());
        const QRectF piece(x, mark.area.bottom() - strip - 2, share, strip);
        if (counts[grade] > 0)
            painter.fillRect(piece, grade < theme.gradeFill.size() ? theme.gradeFill[grade] : theme.hatch);
        x += share;
    }
    QFont font = painter.font();
    const QFont plain = font;
    font.setBold(true);
    painter.setFont(font);
    painter.setPen(theme.ink);
    painter.drawText(mark.area.adjusted(0, 0, 0, -strip - 1), Qt::AlignCenter, QString::number(mark.units.size()));
    painter.setFont(plain);
}

} // namespace

void paintFleetField(QPainter& painter, const FleetFieldPicture& picture)
{
    const FleetFieldGeometry& geometry = picture.geometry;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintColumns(painter, picture);
    paintChances(painter, picture);
    const auto chosen = picture.chosen ? geometry.markOf(*picture.chosen) : std::nullopt;
    for (std::size_t at = 0; at < geometry.marks.size(); ++at) {
        const FieldMark& mark = geometry.marks[at];
        if (mark.gathered())
            paintGathered(painter, picture, mark, picture.pointed == at);
        else
            paintUnit(painter, picture, mark, picture.pointed == at);
    }
    if (chosen) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(picture.theme.accent, 2));
        painter.drawRoundedRect(geometry.marks[*chosen].area.adjusted(-2, -2, 2, 2), markCorner + 1, markCorner + 1);
    }
    painter.restore();
}

} // namespace padside

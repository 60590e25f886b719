// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/season_board_painter.h"

#include "ui/drawing/season_board_months.h"
#include "ui/drawing/theme.h"

#include <QCoreApplication>
#include <QFont>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double namePadding = 10;

void setText(QPainter& painter, double share, bool bold)
{
    QFont font = painter.font();
    font.setPixelSize(std::max(8, static_cast<int>(font.pixelSize() * share)));
    font.setBold(bold);
    painter.setFont(font);
}

QRectF spanOf(const BoardPicture& picture, const Window& window, double top, double height)
{
    const BoardGeometry& geometry = picture.geometry;
    const double left = std::max(geometry.names, geometry.xOf(window.earliest));
    const double right = std::min(geometry.width(), geometry.xOf(window.latest + std::chrono::days(1)));
    return {left, top, std::max(0.0, right - left), height};
}

void paintToday(QPainter& painter, const BoardPicture& picture, double top, double bottom)
{
    const double x = picture.geometry.xOf(picture.board.today) + 0.5;
    painter.setPen(QPen(picture.theme.accent, 1.5));
    painter.drawLine(QPointF(x, top), QPointF(x, bottom));
}

/// A line through the day, and on it the count of checks. A chosen day has a foot, so that it looks set down; what is
/// late or overdue is filled with ink.
void paintMark(QPainter& painter, const BoardPicture& picture, const QRectF& area, const BoardTrip& trip, bool selected)
{
    const Theme& theme = picture.theme;
    const bool pressing = trip.late || trip.overdue;
    const QColor fill = selected ? theme.accent : pressing ? theme.ink : theme.panel;
    const QColor ink = selected ? theme.accentInk : pressing ? theme.panel : theme.ink;
    const QColor line = selected ? theme.accent : theme.ink;
    const double reach = (picture.geometry.leastRow - area.height()) / 2;
    const double stem = std::floor(area.center().x()) + 0.5;
    painter.save();
    painter.setPen(QPen(line, 1));
    painter.drawLine(QPointF(stem, area.top() - reach + 1), QPointF(stem, area.bottom() + reach - 2));
    painter.setBrush(fill);
    painter.drawRect(area.adjusted(0.5, 0.5, -0.5, -0.5));
    if (trip.moved)
        painter.fillRect(QRectF(area.left(), area.bottom() + 1, area.width(), 2.5), line);
    setText(painter, trip.checks > 99 ? 0.66 : 0.82, true);
    painter.setPen(ink);
    painter.drawText(area.adjusted(-4, 0, 4, 0), Qt::AlignCenter, QString::number(trip.checks));
    painter.restore();
}

void paintGhost(QPainter& painter, const BoardPicture& picture, const BoardTrip& trip)
{
    const QRectF from = picture.geometry.mark(picture.move->trip.row, trip.on);
    const QRectF to = picture.geometry.mark(picture.move->trip.row, picture.move->to);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(picture.theme.accent, 1.5, Qt::DotLine));
    painter.drawLine(QPointF(from.center().x(), from.center().y()), QPointF(to.center().x(), to.center().y()));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(from.adjusted(0.5, 0.5, -0.5, -0.5));
    painter.restore();
    BoardTrip ghost = trip;
    ghost.moved = true;
    paintMark(painter, picture, to, ghost, true);
    if (picture.move->costs) {
        painter.setPen(QPen(picture.theme.ink, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(to.adjusted(-2, -2, 2, 4));
    }
}

/// How many trips a week has: a bar against the fullest week, and the number where there is room for it.
void paintCount(QPainter& painter, const BoardPicture& picture, const QRectF& cell, int count, int most,
                const QFont& font)
{
    if (count == 0)
        return;
    const double height = std::max(2.0, std::round((cell.height() - 2) * count / most));
    painter.fillRect(QRectF(cell.left() + 1, cell.bottom() - 1 - height, cell.width() - 2, height),
                     mixed(picture.theme.accent, picture.theme.panel, 0.3));
    const QString text = QString::number(count);
    if (QFontMetricsF(font).horizontalAdvance(text) > cell.width() + 2)
        return;
    painter.setFont(font);
    painter.setPen(picture.theme.ink);
    painter.drawText(cell.adjusted(-4, 0, 4, 0), Qt::AlignCenter, text);
}

void paintRow(QPainter& painter, const BoardPicture& picture, std::size_t index)
{
    const BoardGeometry& geometry = picture.geometry;
    const Theme& theme = picture.theme;
    const BoardRow& row = picture.board.rows[index];
    const double top = geometry.top(index);
    for (const Window& season : row.seasons)
        painter.fillRect(spanOf(picture, season, top, geometry.row), mixed(theme.accent, theme.panel, 0.13));
    painter.setPen(QPen(theme.line, 1));
    painter.drawLine(QPointF(geometry.names, top + geometry.row - 0.5),
                     QPointF(geometry.width(), top + geometry.row - 0.5));
    for (int week = 0; week < geometry.weeks; ++week) {
        if (!beginsMonth(geometry, week))
            continue;
        const double x = std::floor(geometry.xOf(dayOfWeek(geometry, week))) + 0.5;
        painter.drawLine(QPointF(x, top), QPointF(x, top + geometry.row));
    }
}

void paintTrips(QPainter& painter, const BoardPicture& picture, std::size_t index)
{
    const BoardRow& row = picture.board.rows[index];
    for (std::size_t i = 0; i < row.trips.size(); ++i) {
        const BoardPlace place{index, i};
        if (picture.move && picture.move->trip == place)
            continue;
        paintMark(painter, picture, picture.geometry.mark(index, row.trips[i].on), row.trips[i],
                  picture.selected == place);
    }
    if (picture.move && picture.move->trip.row == index && picture.move->trip.trip < row.trips.size())
        paintGhost(painter, picture, row.trips[picture.move->trip.trip]);
}

} // namespace

void paintBoardRows(QPainter& painter, const BoardPicture& picture, std::size_t first, std::size_t last)
{
    for (std::size_t row = first; row < last; ++row)
        paintRow(painter, picture, row);
    if (first < last)
        paintToday(painter, picture, picture.geometry.top(first), picture.geometry.top(last));
    for (std::size_t row = first; row < last; ++row)
        paintTrips(painter, picture, row);
}

void paintBoardNames(QPainter& painter, const BoardPicture& picture, std::size_t first, std::size_t last)
{
    const BoardGeometry& geometry = picture.geometry;
    const Theme& theme = picture.theme;
    painter.save();
    for (std::size_t index = first; index < last; ++index) {
        const QRectF area(0, geometry.top(index), geometry.names, geometry.row);
        painter.fillRect(area, theme.panel);
        const bool chosen = picture.selected && picture.selected->row == index;
        QFont font = painter.font();
        font.setBold(chosen);
        painter.setFont(font);
        painter.setPen(theme.ink);
        const QFontMetricsF metrics(font);
        const QRectF text = area.adjusted(namePadding, 0, -namePadding, 0);
        painter.drawText(text, Qt::AlignVCenter | Qt::AlignLeft,
                         metrics.elidedText(picture.board.rows[index].site, Qt::ElideRight, text.width()));
        painter.setPen(QPen(theme.line, 1));
        painter.drawLine(QPointF(0, area.bottom() - 0.5), QPointF(area.right(), area.bottom() - 0.5));
    }
    painter.restore();
}

void paintBoardHeader(QPainter& painter, const BoardPicture& picture)
{
    const BoardGeometry& geometry = picture.geometry;
    const Theme& theme = picture.theme;
    painter.save();
    painter.fillRect(QRectF(geometry.names, 0, geometry.weeks * geometry.week, geometry.header), theme.panel);
    const double third = geometry.header / 3;
    const std::vector<int> counts = tripsByWeek(picture.board, geometry);
    const int most = counts.empty() ? 0 : std::ranges::max(counts);
    const auto thisWeek = static_cast<int>((picture.board.today - geometry.firstMonday).count() / 7);
    painter.fillRect(QRectF(geometry.names + thisWeek * geometry.week, third, geometry.week, 2 * third),
                     mixed(theme.accent, theme.panel, 0.3));
    setText(painter, 0.85, false);
    const QFont dayFont = painter.font();
    QFont countFont = dayFont;
    countFont.setBold(true);
    const int everyWeeks = QFontMetricsF(dayFont).horizontalAdvance(QStringLiteral("288")) < geometry.week ? 1 : 2;
    const std::vector<MonthHead> heads = monthHeads(geometry, picture.months, QFontMetricsF(countFont));
    for (const MonthHead& head : heads) {
        painter.setFont(countFont);
        painter.setPen(theme.ink);
        painter.drawText(QRectF(geometry.names + head.week * geometry.week + 2, 0, head.room, third),
                         Qt::AlignLeft | Qt::AlignVCenter, head.text);
    }
    for (int week = 0; week < geometry.weeks; ++week) {
        const double left = geometry.names + week * geometry.week;
        painter.setFont(dayFont);
        painter.setPen(theme.softInk);
        const QRectF cell(left, third, geometry.week, third);
        if (week % everyWeeks == thisWeek % everyWeeks)
            painter.drawText(cell.adjusted(-6, 0, 6, 0), Qt::AlignCenter,
                             QString::number(unsigned(std::chrono::year_month_day(dayOfWeek(geometry, week)).day())));
        paintCount(painter, picture, cell.translated(0, third), counts[static_cast<std::size_t>(week)], most,
                   countFont);
    }
    painter.setPen(QPen(theme.line, 1));
    painter.drawLine(QPointF(geometry.names, geometry.header - 0.5), QPointF(geometry.width(), geometry.header - 0.5));
    painter.restore();
}

} // namespace padside

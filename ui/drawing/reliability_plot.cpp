// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/reliability_plot.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr int fifths = 5;
constexpr double leastDot = 3; ///< radius in px
constexpr double largestDot = 10;
constexpr double lessBelow = 0.4; ///< where the word in the lower half stands: right of the diagonal there
constexpr double barEnd = 4; ///< half the width of what closes a bar
constexpr double mostWidth = 1.6; ///< times its height; wider, the diagonal says nothing any more
constexpr double besideAxis = largestDot + 2; ///< from an axis to its numbers, which a dot on it must not cover

QPointF placeOf(const QRectF& frame, double said, double came)
{
    return {frame.left() + said * frame.width(), frame.bottom() - came * frame.height()};
}

QRectF frameIn(const QRectF& area, const ReliabilityPlot& plot, const QFontMetricsF& letters)
{
    const double left = letters.horizontalAdvance(plot.shown(1)) + besideAxis + 4;
    const double above = letters.height() + 8;
    const double below = 2 * letters.height() + besideAxis + 7;
    const double right = letters.horizontalAdvance(plot.shown(1)) / 2 + 4;
    const double width = std::max(40.0, area.width() - left - right);
    const double height = std::max(40.0, std::min(width, area.height() - above - below));
    return {area.left() + left, area.top() + above, std::min(width, mostWidth * height), height};
}

void paintGrid(QPainter& painter, const QRectF& frame, const ReliabilityPlot& plot, const Theme& theme)
{
    const QFontMetricsF letters(painter.font());
    for (int fifth = 0; fifth <= fifths; ++fifth) {
        const double share = static_cast<double>(fifth) / fifths;
        painter.setPen(theme.line);
        painter.drawLine(placeOf(frame, share, 0), placeOf(frame, share, 1));
        painter.drawLine(placeOf(frame, 0, share), placeOf(frame, 1, share));
        painter.setPen(theme.softInk);
        const QString text = plot.shown(share);
        const double width = letters.horizontalAdvance(text);
        painter.drawText(placeOf(frame, share, 0) + QPointF(-width / 2, letters.ascent() + besideAxis), text);
        painter.drawText(placeOf(frame, 0, share) + QPointF(-width - besideAxis, letters.ascent() / 2 - 1), text);
    }
    painter.setPen(theme.ink);
    painter.drawText(QPointF(frame.left(), frame.top() - letters.descent() - 4), plot.cameName);
    const double width = letters.horizontalAdvance(plot.saidName);
    painter.drawText(QPointF(std::max(frame.left(), frame.right() - width),
                             frame.bottom() + letters.height() + letters.ascent() + besideAxis + 2),
                     plot.saidName);
}

void paintDiagonal(QPainter& painter, const QRectF& frame, const ReliabilityPlot& plot, const Theme& theme)
{
    painter.setPen(QPen(theme.softInk, 1.5, Qt::DashLine));
    painter.drawLine(placeOf(frame, 0, 0), placeOf(frame, 1, 1));
    const QFontMetricsF letters(painter.font());
    painter.setPen(theme.softInk);
    const double half = frame.width() * (1 - lessBelow) - 16;
    painter.drawText(placeOf(frame, 0, 1) + QPointF(8, letters.ascent() + 6),
                     letters.elidedText(plot.moreCame, Qt::ElideRight, half));
    const QString less = letters.elidedText(plot.lessCame, Qt::ElideRight, frame.width() * (1 - lessBelow) - 4);
    painter.drawText(placeOf(frame, 1, 0) + QPointF(-8 - letters.horizontalAdvance(less), -8),
                     less); // far from the dots
}

void paintPoint(QPainter& painter, const QRectF& frame, const ReliabilityPoint& point, double radius,
                const Theme& theme)
{
    const QPointF at = placeOf(frame, point.said, point.came);
    const QPointF low = placeOf(frame, point.said, point.low);
    const QPointF high = placeOf(frame, point.said, point.high);
    painter.setPen(QPen(theme.ink, 1.5));
    painter.drawLine(low, high);
    painter.drawLine(low - QPointF(barEnd, 0), low + QPointF(barEnd, 0));
    painter.drawLine(high - QPointF(barEnd, 0), high + QPointF(barEnd, 0));
    painter.setBrush(theme.accent);
    painter.drawEllipse(at, radius, radius);

    const QFontMetricsF letters(painter.font());
    const QString count = QString::number(point.count);
    const double width = letters.horizontalAdvance(count);
    QPointF where(at.x() - width / 2, std::min(high.y(), at.y() - radius) - 4);
    if (where.y() - letters.ascent() < frame.top())
        where.setY(std::max(low.y(), at.y() + radius) + letters.ascent() + 4);
    if (where.y() > frame.bottom())
        where = at + QPointF(radius + 4, letters.ascent() / 2);
    where.setX(std::clamp(where.x(), frame.left() + 2, std::max(frame.left() + 2, frame.right() - width - 2)));
    painter.setPen(theme.ink);
    painter.drawText(where, count);
}

} // namespace

void paintReliabilityPlot(QPainter& painter, const QRectF& area, const ReliabilityPlot& plot, const Theme& theme)
{
    if (!plot.shown)
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = frameIn(area, plot, QFontMetricsF(painter.font()));
    paintGrid(painter, frame, plot, theme);
    paintDiagonal(painter, frame, plot, theme);
    int most = 1;
    for (const ReliabilityPoint& point : plot.points)
        most = std::max(most, point.count);
    for (const ReliabilityPoint& point : plot.points) {
        const double share = std::sqrt(static_cast<double>(point.count) / most); // the area tells the number
        paintPoint(painter, frame, point, std::max(leastDot, largestDot * share), theme);
    }
    painter.restore();
}

} // namespace padside

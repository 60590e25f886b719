// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/measure_chart.h"

#include "core/quantity/date.h"
#include "ui/drawing/time_axis.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr double fanYears = 3; // how far a forecast runs on; ours
constexpr double dotRadius = 3.5;
constexpr int mostSteps = 4; // lines of values; more would crowd a low chart

/// What part of time and values is on the chart, and where.
struct Plot
{
    QRectF frame;
    double fromDay = 0;
    double toDay = 1;
    double lowest = 0;
    double highest = 1;
    double step = 1; ///< from one line of values to the next

    [[nodiscard]] QPointF at(double day, double value) const
    {
        return {frame.left() + (day - fromDay) / (toDay - fromDay) * frame.width(),
                frame.bottom() - (value - lowest) / (highest - lowest) * frame.height()};
    }
};

/// The next 1, 2 or 5 times a power of ten: what people count in.
double roundStep(double atLeast)
{
    const double power = std::pow(10.0, std::floor(std::log10(atLeast)));
    for (const double times : {1.0, 2.0, 5.0}) {
        if (times * power >= atLeast * (1 - 1e-9))
            return times * power;
    }
    return 10 * power;
}

double fanValue(const MeasureChart& chart, double ratePerDay, double day)
{
    return std::max(0.0, chart.points.back().value + ratePerDay * (day - chart.points.back().time));
}

Plot plotOf(const QRectF& area, const MeasureChart& chart, const QFontMetricsF& letters)
{
    Plot plot;
    plot.fromDay = chart.points.front().time - daysInAYear / 4;
    plot.toDay = chart.points.back().time + (chart.fan ? fanYears : 0.25) * daysInAYear;
    double lowest = chart.limit.value_or(chart.points.back().value);
    double highest = lowest;
    for (const TrendPoint& point : chart.points) {
        lowest = std::min(lowest, point.value);
        highest = std::max(highest, point.value);
    }
    if (chart.fan) {
        const double end = fanValue(chart, chart.fan->ratePerDay, plot.toDay);
        lowest = std::min(lowest, end);
        highest = std::max(highest, end);
    }
    const double span = std::max(highest - lowest, std::abs(highest) * 0.05 + 1e-12);
    plot.lowest = lowest < highest / 2 ? 0 : lowest - span * 0.15;
    plot.highest = highest + span * 0.15;
    plot.step = roundStep((plot.highest - plot.lowest) / mostSteps / chart.unit) * chart.unit;
    const double words
        = std::max(letters.horizontalAdvance(chart.shown(highest)), letters.horizontalAdvance(chart.shown(lowest)));
    plot.frame = area.adjusted(words + 10, letters.height() / 2 + 2, -8, -letters.height() - 6);
    return plot;
}

void paintYears(QPainter& painter, const Plot& plot, const Theme& theme)
{
    const TimeAxis axis{plot.fromDay, plot.toDay, plot.frame.left(), plot.frame.right()};
    const QFontMetricsF letters(painter.font());
    const int step = yearStep(axis, letters.horizontalAdvance(u"2026"_s) + 12);
    for (const TimeTick& tick : ticksOf(axis, {}, {})) {
        if (tick.kind != TimeTick::Kind::year)
            continue;
        painter.setPen(theme.line);
        painter.drawLine(QPointF(tick.x, plot.frame.top()), QPointF(tick.x, plot.frame.bottom()));
        const QString year = QString::number(tick.year);
        const double width = letters.horizontalAdvance(year);
        if (tick.year % step != 0 || tick.x + width > plot.frame.right() + 8)
            continue;
        painter.setPen(theme.softInk);
        painter.drawText(QPointF(tick.x + 3, plot.frame.bottom() + letters.ascent() + 3), year);
    }
}

void paintValues(QPainter& painter, const Plot& plot, const MeasureChart& chart, const Theme& theme)
{
    const QFontMetricsF letters(painter.font());
    const auto first = static_cast<long>(std::ceil(plot.lowest / plot.step - 1e-9));
    const auto last = static_cast<long>(std::floor(plot.highest / plot.step + 1e-9));
    for (long index = first; index <= last; ++index) {
        const double value = static_cast<double>(index) * plot.step;
        const double y = plot.at(plot.fromDay, value).y();
        painter.setPen(theme.line);
        painter.drawLine(QPointF(plot.frame.left(), y), QPointF(plot.frame.right(), y));
        painter.setPen(theme.softInk);
        const QString text = chart.shown(value);
        painter.drawText(QPointF(plot.frame.left() - 6 - letters.horizontalAdvance(text), y + letters.ascent() / 2 - 1),
                         text);
    }
}

void paintFan(QPainter& painter, const Plot& plot, const MeasureChart& chart, const Theme& theme)
{
    const TrendPoint& last = chart.points.back();
    const auto end = [&](double rate) { return plot.at(plot.toDay, fanValue(chart, rate, plot.toDay)); };
    QPainterPath path(plot.at(last.time, last.value));
    path.lineTo(end(chart.fan->highPerDay));
    path.lineTo(end(chart.fan->lowPerDay));
    path.closeSubpath();
    QLinearGradient fading(plot.at(last.time, last.value), QPointF(plot.frame.right(), 0));
    QColor near = theme.fill(Grade::marked);
    near.setAlphaF(0.55F);
    QColor far = near;
    far.setAlphaF(0.08F);
    fading.setColorAt(0, near);
    fading.setColorAt(1, far);
    painter.save();
    painter.setClipRect(plot.frame);
    painter.fillPath(path, fading);
    painter.setPen(QPen(theme.ink, 1, Qt::DashLine));
    painter.drawLine(plot.at(last.time, last.value), end(chart.fan->ratePerDay));
    painter.restore();
}

void paintLimit(QPainter& painter, const Plot& plot, const MeasureChart& chart, const Theme& theme)
{
    const double y = plot.at(plot.fromDay, *chart.limit).y();
    painter.setPen(QPen(theme.fill(Grade::spent), 2));
    painter.drawLine(QPointF(plot.frame.left(), y), QPointF(plot.frame.right(), y));
    const QFontMetricsF letters(painter.font());
    painter.setPen(theme.ink);
    const bool above = y - plot.frame.top() > letters.height() + 4;
    const QString text = letters.elidedText(chart.limitName, Qt::ElideRight, plot.frame.width() - 12);
    painter.drawText(QPointF(plot.frame.left() + 6, above ? y - 4 : y + letters.ascent() + 3), text);
}

void paintPoints(QPainter& painter, const Plot& plot, const MeasureChart& chart, const Theme& theme)
{
    QPolygonF line;
    for (const TrendPoint& point : chart.points)
        line << plot.at(point.time, point.value);
    painter.setPen(QPen(theme.ink, 1.5));
    painter.drawPolyline(line);
    painter.setBrush(theme.panel);
    for (const QPointF& point : line)
        painter.drawEllipse(point, dotRadius, dotRadius);
    const QFontMetricsF letters(painter.font());
    const QString last = chart.shown(chart.points.back().value);
    QPointF where = line.back() + QPointF(6, -6);
    if (where.x() + letters.horizontalAdvance(last) > plot.frame.right())
        where.setX(line.back().x() - 6 - letters.horizontalAdvance(last));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(theme.ink);
    painter.drawText(where, last);
}

} // namespace

void paintMeasureChart(QPainter& painter, const QRectF& area, const MeasureChart& chart, const Theme& theme)
{
    if (chart.points.empty() || !chart.shown)
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const Plot plot = plotOf(area, chart, QFontMetricsF(painter.font()));
    paintValues(painter, plot, chart, theme);
    paintYears(painter, plot, theme);
    if (chart.fan)
        paintFan(painter, plot, chart, theme);
    if (chart.limit)
        paintLimit(painter, plot, chart, theme);
    paintPoints(painter, plot, chart, theme);
    painter.restore();
}

} // namespace padside

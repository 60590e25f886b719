// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_signs.h"

#include "ui/drawing/theme.h"

#include <QPainter>
#include <QPolygonF>

#include <algorithm>

namespace padside {

namespace {

/// Saves the painter and sets it up for small shapes.
class Shapes
{
public:
    Shapes(QPainter& painter, const QColor& colour, double pen = 0)
        : m_painter(painter)
    {
        m_painter.save();
        m_painter.setRenderHint(QPainter::Antialiasing);
        m_painter.setPen(pen > 0 ? QPen(colour, pen) : QPen(Qt::NoPen));
        m_painter.setBrush(pen > 0 ? QBrush(Qt::NoBrush) : QBrush(colour));
    }
    ~Shapes() { m_painter.restore(); }
    Shapes(const Shapes&) = delete;
    Shapes& operator=(const Shapes&) = delete;

private:
    QPainter& m_painter;
};

constexpr double stroke = 1.6;

} // namespace

void paintTreatmentSign(QPainter& painter, const QRectF& area, TreatmentKind kind, const Theme& theme)
{
    const double unit = area.height() / 8;
    const auto disc = [&](double x, double y, double radius) {
        painter.drawEllipse(area.topLeft() + QPointF(x, y) * unit, radius * unit, radius * unit);
    };
    switch (kind) {
    case TreatmentKind::clean: { // three drops
        const Shapes shapes(painter, theme.accent);
        disc(4, 1.5, 1.4);
        disc(1.6, 6, 1.4);
        disc(6.4, 6, 1.4);
        break;
    }
    case TreatmentKind::brushAndCoat: { // a thick layer on a thin one
        const Shapes shapes(painter, theme.accent);
        painter.drawRect(QRectF(area.left(), area.top() + unit, area.width(), unit * 3.6));
        painter.drawRect(QRectF(area.left(), area.top() + unit * 5.8, area.width(), unit * 1.4));
        break;
    }
    case TreatmentKind::grease: {
        const Shapes shapes(painter, theme.accent);
        disc(4, 4, 3.6);
        break;
    }
    case TreatmentKind::lubricate: {
        const Shapes shapes(painter, theme.accent, stroke);
        disc(4, 4, 3);
        break;
    }
    case TreatmentKind::repair: { // a cross
        const Shapes shapes(painter, theme.accent, stroke + 0.4);
        const QRectF cross = area.adjusted(unit, unit, -unit, -unit);
        painter.drawLine(cross.topLeft(), cross.bottomRight());
        painter.drawLine(cross.bottomLeft(), cross.topRight());
        break;
    }
    case TreatmentKind::replace:
        paintFittedSign(painter, area, theme);
        break;
    }
}

void paintFittedSign(QPainter& painter, const QRectF& area, const Theme& theme)
{
    const Shapes shapes(painter, theme.ink);
    const double middle = area.center().x();
    const double serif = std::min(3.0, area.width() / 3);
    painter.drawRect(QRectF(middle - 1, area.top(), 2, area.height()));
    painter.drawRect(QRectF(middle - serif, area.top(), 2 * serif, 1.5));
    painter.drawRect(QRectF(middle - serif, area.bottom() - 1.5, 2 * serif, 1.5));
}

void paintPhotoSign(QPainter& painter, const QRectF& mark, const Theme& theme)
{
    const double side = mark.height() * 0.36;
    const QPointF corner = mark.topRight() + QPointF(1, -1);
    const Shapes shapes(painter, theme.panel);
    painter.drawPolygon(QPolygonF{corner + QPointF(-side - 1.5, 0), corner, corner + QPointF(0, side + 1.5)});
    painter.setBrush(theme.ink);
    painter.drawPolygon(QPolygonF{corner + QPointF(-side, 0), corner, corner + QPointF(0, side)});
}

void paintCorrectedSign(QPainter& painter, const QRectF& mark, const Theme& theme)
{
    const Shapes shapes(painter, theme.panel);
    const QPointF middle = mark.bottomLeft() + QPointF(1.5, -1.5);
    painter.drawEllipse(middle, 3.4, 3.4);
    painter.setBrush(theme.ink);
    painter.drawEllipse(middle, 2.2, 2.2);
}

void paintMoreSign(QPainter& painter, const QRectF& mark, const Theme& theme)
{
    const Shapes shapes(painter, theme.ink, 1);
    const QPointF corner = mark.bottomRight() + QPointF(1.5, 1.5);
    painter.drawPolyline(QPolygonF{QPointF(corner.x(), mark.top() + 4), corner, QPointF(mark.left() + 4, corner.y())});
}

void paintVisitSign(QPainter& painter, const QRectF& area, VisitReason reason, bool open, const Theme& theme)
{
    const Shapes shapes(painter, theme.ink);
    if (open) {
        painter.setPen(QPen(theme.ink, stroke));
        painter.setBrush(theme.panel);
    }
    if (reason == VisitReason::callOut) {
        const QPointF middle = area.center();
        const double half = area.height() / 2;
        painter.drawPolygon(QPolygonF{middle + QPointF(0, -half), middle + QPointF(half, 0), middle + QPointF(0, half),
                                      middle + QPointF(-half, 0)});
    } else {
        painter.drawEllipse(area.adjusted(1, 1, -1, -1));
    }
}

void paintChargeSign(QPainter& painter, const QRectF& area, ChargeDirection direction, const Theme& theme)
{
    if (direction == ChargeDirection::added) {
        const Shapes shapes(painter, theme.ink);
        painter.drawPolygon(QPolygonF{area.bottomLeft(), area.bottomRight(), QPointF(area.center().x(), area.top())});
    } else {
        const Shapes shapes(painter, theme.ink, stroke);
        painter.drawPolygon(QPolygonF{area.topLeft(), area.topRight(), QPointF(area.center().x(), area.bottom())});
    }
}

void paintBand(QPainter& painter, const QRectF& area, Grade grade, bool sure, const Theme& theme)
{
    const QColor& fill = theme.fill(grade);
    const QColor edge = mixed(theme.ink, fill, 0.3);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(area, sure ? fill : theme.panel);
    if (!sure) {
        painter.setClipRect(area, Qt::IntersectClip);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(mixed(fill, edge, 0.6), 1.4));
        constexpr double spacing = 5;
        for (double x = area.left() - area.height(); x < area.right(); x += spacing)
            painter.drawLine(QPointF(x, area.bottom()), QPointF(x + area.height(), area.top()));
        painter.setRenderHint(QPainter::Antialiasing, false);
    }
    painter.setPen(QPen(edge, 1));
    painter.drawLine(area.topLeft(), area.topRight());
    painter.drawLine(area.bottomLeft(), area.bottomRight());
    painter.restore();
}

} // namespace padside

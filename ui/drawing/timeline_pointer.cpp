// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The pointer in the timeline: what lies under it, dragging, the wheel.

#include "ui/drawing/timeline_view.h"

#include <QApplication>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QToolTip>

#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr double wheelStep = 1.25;
constexpr double wheelNotch = 120; ///< of QWheelEvent::angleDelta

} // namespace

std::optional<MarkPlace> TimelineView::markUnder(const QPointF& point) const
{
    if (point.x() < m_sizes.names() || point.y() < m_sizes.header)
        return std::nullopt;
    return m_geometry.markAt(point.x(), point.y() + verticalScrollBar()->value());
}

std::optional<MarkPlace> TimelineView::nameUnder(const QPointF& point) const
{
    const double y = point.y() + verticalScrollBar()->value();
    if (point.x() >= m_sizes.names() || point.y() < m_sizes.header)
        return std::nullopt;
    const PlacedLane* lane = m_geometry.laneAt(y);
    if (!lane)
        return std::nullopt;
    const bool heading
        = m_timeline.groups[lane->group].foldable() && (point.x() < m_sizes.partColumn || lane->lane == worstLane);
    return MarkPlace{lane->group, heading ? partHeading : lane->lane, laneName};
}

void TimelineView::pointAt(const std::optional<MarkPlace>& place)
{
    if (place == m_pointed)
        return;
    m_pointed = place;
    tell();
}

void TimelineView::mousePressEvent(QMouseEvent* event)
{
    event->accept(); // what counts is where the button is let go
    if (event->button() != Qt::LeftButton)
        return;
    m_pressedAt = event->position();
    m_scrolledAtPress = QPoint(horizontalScrollBar()->value(), verticalScrollBar()->value());
    m_panning = false;
}

void TimelineView::mouseMoveEvent(QMouseEvent* event)
{
    if (m_pressedAt && event->buttons().testFlag(Qt::LeftButton)) {
        const QPointF moved = event->position() - *m_pressedAt;
        m_panning = m_panning || moved.manhattanLength() >= QApplication::startDragDistance();
        if (m_panning) {
            viewport()->setCursor(Qt::ClosedHandCursor);
            horizontalScrollBar()->setValue(m_scrolledAtPress.x() - static_cast<int>(std::round(moved.x())));
            verticalScrollBar()->setValue(m_scrolledAtPress.y() - static_cast<int>(std::round(moved.y())));
            return;
        }
    }
    const auto mark = markUnder(event->position());
    const auto name = mark ? std::nullopt : nameUnder(event->position());
    const bool press = mark || (name && name->group > 0);
    viewport()->setCursor(press ? Qt::PointingHandCursor : Qt::ArrowCursor);
    pointAt(mark ? mark : name);
}

void TimelineView::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton || !m_pressedAt)
        return;
    m_pressedAt.reset();
    if (m_panning) {
        m_panning = false;
        viewport()->setCursor(Qt::ArrowCursor);
        return;
    }
    const auto mark = markUnder(event->position());
    const auto place = mark ? mark : nameUnder(event->position());
    if (place) {
        select(*place);
        activate(*place);
    }
}

void TimelineView::leaveEvent(QEvent* event)
{
    QAbstractScrollArea::leaveEvent(event);
    pointAt(std::nullopt);
}

void TimelineView::wheelEvent(QWheelEvent* event)
{
    const QPoint delta = event->angleDelta();
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        zoomBy(std::pow(wheelStep, delta.y() / wheelNotch), event->position().x());
        event->accept();
        return;
    }
    // Where everything fits in height, or with Shift, the wheel moves through the years.
    const bool years = event->modifiers().testFlag(Qt::ShiftModifier) || verticalScrollBar()->maximum() == 0;
    if (years && delta.x() == 0) {
        const double steps = delta.y() / wheelNotch * QApplication::wheelScrollLines();
        horizontalScrollBar()->setValue(horizontalScrollBar()->value()
                                        - static_cast<int>(std::round(steps * horizontalScrollBar()->singleStep())));
        event->accept();
        return;
    }
    QAbstractScrollArea::wheelEvent(event);
}

bool TimelineView::viewportEvent(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QAbstractScrollArea::viewportEvent(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto mark = markUnder(help->pos());
    const auto place = mark ? mark : nameUnder(help->pos());
    if (!place)
        QToolTip::hideText();
    else
        QToolTip::showText(help->globalPos(), u"<p>"_s + sentenceOf(*place).toHtmlEscaped() + u"</p>"_s, viewport());
    return true;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/season/season_board_view.h"

#include "ui/drawing/theme.h"

#include <QAccessible>
#include <QApplication>
#include <QFontInfo>
#include <QHelpEvent>
#include <QLocale>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double edge = 24; ///< dragging this near to the edge scrolls

} // namespace

SeasonBoardView::SeasonBoardView(const Theme& theme, const QLocale& locale, QWidget* parent)
    : QAbstractScrollArea(parent)
    , m_theme(theme)
{
    for (int month = 1; month <= 12; ++month)
        m_months << locale.standaloneMonthName(month, QLocale::ShortFormat);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    viewport()->setMouseTracking(true);
    setAccessibleName(tr("Trips by site and week"));
    viewport()->setAccessibleName(tr("Trips by site and week, board"));
    setMinimumHeight(160);
}

QFont SeasonBoardView::boardFont() const
{
    QFont own = font();
    own.setPixelSize(QFontInfo(font()).pixelSize());
    return own;
}

void SeasonBoardView::setBoard(SeasonBoard board, std::optional<BoardPlace> selected)
{
    m_board = std::move(board);
    m_selected = selected;
    m_move.reset();
    m_pressedAt.reset();
    layOut();
    if (m_selected && m_words)
        describe(m_words(*m_selected));
}

void SeasonBoardView::layOut()
{
    double names = 60;
    QFont bold = boardFont(); // the chosen row's name
    bold.setBold(true);
    const QFontMetricsF metrics(bold);
    for (const BoardRow& row : m_board.rows)
        names = std::max(names, metrics.horizontalAdvance(row.site) + 22);
    names = std::min(names, std::max(120.0, viewport()->width() * 0.24));
    m_geometry = boardGeometry(m_board, QFontInfo(font()).pixelSize(), names, viewport()->width());
    m_geometry.leastRow = std::max(m_geometry.leastRow, static_cast<double>(m_theme.size.entry));
    fillHeight(m_geometry, m_board, viewport()->height());
    horizontalScrollBar()->setPageStep(viewport()->width());
    horizontalScrollBar()->setSingleStep(static_cast<int>(m_geometry.week));
    horizontalScrollBar()->setRange(0, std::max(0, static_cast<int>(m_geometry.width()) - viewport()->width()));
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(static_cast<int>(m_geometry.row));
    verticalScrollBar()->setRange(
        0, std::max(0, static_cast<int>(std::ceil(m_geometry.height(m_board))) - viewport()->height()));
    viewport()->update();
}

QPointF SeasonBoardView::onBoard(const QPointF& point) const
{
    return point + QPointF(horizontalScrollBar()->value(), verticalScrollBar()->value());
}

std::optional<BoardPlace> SeasonBoardView::tripUnder(const QPointF& point) const
{
    if (point.x() < m_geometry.names || point.y() < m_geometry.header)
        return std::nullopt;
    return m_geometry.tripAt(m_board, onBoard(point));
}

QRectF SeasonBoardView::markNow(const BoardPlace& place) const
{
    return m_geometry.mark(place.row, m_board.rows[place.row].trips[place.trip].on)
        .translated(-horizontalScrollBar()->value(), -verticalScrollBar()->value());
}

void SeasonBoardView::paintEvent(QPaintEvent*)
{
    QPainter painter(viewport());
    painter.setFont(boardFont());
    painter.fillRect(viewport()->rect(), m_theme.panel);
    const BoardPicture picture{m_board, m_geometry, m_theme, m_months, m_selected, m_move};
    const double across = horizontalScrollBar()->value();
    const double down = verticalScrollBar()->value();
    const auto count = m_board.rows.size();
    const auto first = std::min(count, static_cast<std::size_t>(down / m_geometry.row));
    const auto last = std::min(count, first + static_cast<std::size_t>(viewport()->height() / m_geometry.row) + 2);
    const QRectF all(viewport()->rect());

    painter.save();
    painter.setClipRect(all.adjusted(m_geometry.names, m_geometry.header, 0, 0));
    painter.translate(-across, -down);
    paintBoardRows(painter, picture, first, last);
    painter.restore();
    painter.save();
    painter.setClipRect(QRectF(0, m_geometry.header, m_geometry.names, all.height()));
    painter.translate(0, -down);
    paintBoardNames(painter, picture, first, last);
    painter.restore();
    painter.save();
    painter.setClipRect(QRectF(m_geometry.names, 0, all.width(), m_geometry.header));
    painter.translate(-across, 0);
    paintBoardHeader(painter, picture);
    painter.restore();
    painter.setPen(m_theme.softInk);
    const double third = m_geometry.header / 3;
    const QRectF corner(10, third, m_geometry.names - 14, third);
    painter.drawText(corner, Qt::AlignVCenter | Qt::AlignLeft, tr("Week from"));
    painter.drawText(corner.translated(0, third), Qt::AlignVCenter | Qt::AlignLeft, tr("Trips"));
    painter.setPen(QPen(m_theme.line, 1));
    painter.drawLine(QPointF(0, m_geometry.header - 0.5), QPointF(m_geometry.names, m_geometry.header - 0.5));
    painter.drawLine(QPointF(m_geometry.names - 0.5, 0), QPointF(m_geometry.names - 0.5, all.height()));
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme.accent, 2));
        painter.drawRect(all.adjusted(1, 1, -1, -1));
    }
}

void SeasonBoardView::resizeEvent(QResizeEvent* event)
{
    QAbstractScrollArea::resizeEvent(event);
    layOut();
}

void SeasonBoardView::changeEvent(QEvent* event)
{
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        layOut();
}

void SeasonBoardView::scrollContentsBy(int, int)
{
    viewport()->update();
}

void SeasonBoardView::describe(const QString& text)
{
    setAccessibleDescription(text);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

void SeasonBoardView::sayCost(const QString& sentence, bool costs)
{
    if (m_move)
        m_move->costs = costs;
    describe(sentence);
    viewport()->update();
}

void SeasonBoardView::select(const BoardPlace& place)
{
    if (place.row >= m_board.rows.size() || place.trip >= m_board.rows[place.row].trips.size())
        return;
    giveUp();
    m_selected = place;
    ensureVisible(place, m_board.rows[place.row].trips[place.trip].on);
    describe(m_words ? m_words(place) : QString());
    Q_EMIT tripSelected(place);
    viewport()->update();
}

void SeasonBoardView::ensureVisible(const BoardPlace& place, Date on)
{
    const QRectF area = m_geometry.mark(place.row, on);
    const auto bring = [](QScrollBar* bar, double from, double to, double hidden, double room) {
        if (from - hidden < bar->value())
            bar->setValue(static_cast<int>(from - hidden));
        else if (to > bar->value() + room)
            bar->setValue(static_cast<int>(std::ceil(to - room)));
    };
    bring(horizontalScrollBar(), area.left() - edge, area.right() + edge, m_geometry.names, viewport()->width());
    bring(verticalScrollBar(), m_geometry.top(place.row), m_geometry.top(place.row + 1), m_geometry.header,
          viewport()->height());
}

void SeasonBoardView::propose(Date to)
{
    const Date from = m_board.rows[m_selected->row].trips[m_selected->trip].on;
    const Date day = std::clamp(to, m_board.today, m_geometry.lastDay());
    if (day == from && !m_move)
        return;
    if (m_move && m_move->to == day)
        return;
    m_move = BoardMove{*m_selected, day, false};
    Q_EMIT moveProposed(*m_selected, day);
    viewport()->update();
}

void SeasonBoardView::putDown()
{
    if (!m_move)
        return;
    const BoardMove move = *m_move;
    if (m_board.rows[move.trip.row].trips[move.trip.trip].on == move.to) {
        giveUp();
        return;
    }
    m_move.reset();
    Q_EMIT movePutDown(move.trip, move.to);
}

void SeasonBoardView::giveUp()
{
    m_pressedAt.reset();
    if (!m_move)
        return;
    m_move.reset();
    describe(m_words && m_selected ? m_words(*m_selected) : QString());
    Q_EMIT moveGivenUp();
    viewport()->update();
}

void SeasonBoardView::mousePressEvent(QMouseEvent* event)
{
    const auto place = event->button() == Qt::LeftButton ? tripUnder(event->position()) : std::nullopt;
    if (!place)
        return;
    select(*place);
    m_pressedAt = onBoard(event->position());
}

void SeasonBoardView::mouseMoveEvent(QMouseEvent* event)
{
    if (!m_pressedAt) {
        viewport()->setCursor(tripUnder(event->position()) ? Qt::OpenHandCursor : Qt::ArrowCursor);
        return;
    }
    const double x = event->position().x();
    if (!m_move && std::abs(onBoard(event->position()).x() - m_pressedAt->x()) < QApplication::startDragDistance())
        return;
    viewport()->setCursor(Qt::ClosedHandCursor);
    if (x > viewport()->width() - edge)
        horizontalScrollBar()->triggerAction(QAbstractSlider::SliderSingleStepAdd);
    else if (x < m_geometry.names + edge)
        horizontalScrollBar()->triggerAction(QAbstractSlider::SliderSingleStepSub);
    const Date from = m_board.rows[m_selected->row].trips[m_selected->trip].on;
    const double centre = m_geometry.xOf(from) + m_geometry.week / 14;
    propose(m_geometry.dayAt(centre + onBoard(event->position()).x() - m_pressedAt->x()));
}

void SeasonBoardView::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    m_pressedAt.reset();
    viewport()->setCursor(Qt::ArrowCursor);
    putDown();
}

void SeasonBoardView::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (const auto place = tripUnder(event->position()))
        Q_EMIT tripActivated(*place);
}

bool SeasonBoardView::viewportEvent(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QAbstractScrollArea::viewportEvent(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto place = tripUnder(help->pos());
    if (place && m_words)
        QToolTip::showText(help->globalPos(), QStringLiteral("<p>%1</p>").arg(m_words(*place).toHtmlEscaped()),
                           viewport());
    else
        QToolTip::hideText();
    return true;
}

} // namespace padside

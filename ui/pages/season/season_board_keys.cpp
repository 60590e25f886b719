// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The board's keys.

#include "ui/pages/season/season_board_view.h"

#include <QKeyEvent>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr int daysInWeek = 7;

/// All trips of the board by date, then row.
std::vector<std::pair<Date, BoardPlace>> byDate(const SeasonBoard& board)
{
    std::vector<std::pair<Date, BoardPlace>> all;
    for (std::size_t row = 0; row < board.rows.size(); ++row) {
        for (std::size_t trip = 0; trip < board.rows[row].trips.size(); ++trip)
            all.emplace_back(board.rows[row].trips[trip].on, BoardPlace{row, trip});
    }
    std::ranges::sort(all);
    return all;
}

} // namespace

void SeasonBoardView::selectFirst()
{
    const auto all = byDate(m_board);
    if (!all.empty())
        select(all.front().second);
}

void SeasonBoardView::selectByDate(int step)
{
    if (!m_selected)
        return selectFirst();
    const auto all = byDate(m_board);
    const auto here = std::ranges::find(all, *m_selected, [](const auto& one) { return one.second; });
    const auto next = (here - all.begin()) + step;
    if (next >= 0 && next < static_cast<std::ptrdiff_t>(all.size()))
        select(all[static_cast<std::size_t>(next)].second);
}

void SeasonBoardView::selectBeside(int step)
{
    if (!m_selected)
        return selectFirst();
    const auto next = static_cast<std::ptrdiff_t>(m_selected->trip) + step;
    if (next >= 0 && next < static_cast<std::ptrdiff_t>(m_board.rows[m_selected->row].trips.size()))
        select({m_selected->row, static_cast<std::size_t>(next)});
}

void SeasonBoardView::selectInOtherRow(int step)
{
    if (!m_selected)
        return selectFirst();
    const Date here = m_board.rows[m_selected->row].trips[m_selected->trip].on;
    const auto count = static_cast<std::ptrdiff_t>(m_board.rows.size());
    for (auto row = static_cast<std::ptrdiff_t>(m_selected->row) + step; row >= 0 && row < count; row += step) {
        const auto& trips = m_board.rows[static_cast<std::size_t>(row)].trips;
        if (trips.empty())
            continue;
        const auto nearest = std::ranges::min_element(
            trips, {}, [here](const BoardTrip& trip) { return std::abs((trip.on - here).count()); });
        return select({static_cast<std::size_t>(row), static_cast<std::size_t>(nearest - trips.begin())});
    }
}

bool SeasonBoardView::moveByKey(const QKeyEvent& event)
{
    const bool isStep = event.key() == Qt::Key_Left || event.key() == Qt::Key_Right;
    if (!m_selected || !isStep || !event.modifiers().testFlag(Qt::AltModifier))
        return false;
    const int days = event.modifiers().testFlag(Qt::ShiftModifier) ? 1 : daysInWeek;
    const Date from = m_move ? m_move->to : m_board.rows[m_selected->row].trips[m_selected->trip].on;
    propose(from + std::chrono::days(event.key() == Qt::Key_Left ? -days : days));
    if (m_move)
        ensureVisible(m_move->trip, m_move->to);
    return true;
}

void SeasonBoardView::keyPressEvent(QKeyEvent* event)
{
    if (moveByKey(*event))
        return;
    const bool overAll = event->modifiers().testFlag(Qt::ControlModifier);
    switch (event->key()) {
    case Qt::Key_Left:
        return overAll ? selectByDate(-1) : selectBeside(-1);
    case Qt::Key_Right:
        return overAll ? selectByDate(1) : selectBeside(1);
    case Qt::Key_Up:
        return selectInOtherRow(-1);
    case Qt::Key_Down:
        return selectInOtherRow(1);
    case Qt::Key_Home:
        return selectFirst();
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (m_move)
            putDown();
        else if (m_selected)
            Q_EMIT tripActivated(*m_selected);
        return;
    case Qt::Key_K:
        if (event->modifiers() != Qt::NoModifier)
            break;
        giveUp();
        if (m_selected)
            Q_EMIT keepAsked();
        return;
    case Qt::Key_Escape:
        if (m_move)
            return giveUp();
        break;
    default:
        break;
    }
    QAbstractScrollArea::keyPressEvent(event);
}

void SeasonBoardView::focusInEvent(QFocusEvent* event)
{
    QAbstractScrollArea::focusInEvent(event);
    if (!m_selected && event->reason() != Qt::MouseFocusReason)
        selectFirst();
    viewport()->update();
}

void SeasonBoardView::focusOutEvent(QFocusEvent* event)
{
    QAbstractScrollArea::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        giveUp();
    viewport()->update();
}

} // namespace padside

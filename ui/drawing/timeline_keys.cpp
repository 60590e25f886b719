// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The keyboard of the timeline: from mark to mark, zoom, open.

#include "ui/drawing/timeline_view.h"

#include <QFocusEvent>
#include <QKeyEvent>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double zoomStep = 1.25;

std::vector<MarkPlace> lanesWithMarks(const Timeline& timeline)
{
    std::vector<MarkPlace> lanes;
    for (std::size_t g = 0; g < timeline.groups.size(); ++g) {
        for (std::size_t l = 0; l < timeline.groups[g].lanes.size(); ++l) {
            if (!timeline.groups[g].lanes[l].marks.empty())
                lanes.push_back(MarkPlace{g, l, 0});
        }
    }
    return lanes;
}

const std::vector<TimelineMark>& marksOf(const Timeline& timeline, const MarkPlace& place)
{
    return timeline.groups[place.group].lanes[place.lane].marks;
}

/// The latest mark of the first lane with marks: where walking starts.
std::optional<MarkPlace> startOf(const Timeline& timeline)
{
    const auto lanes = lanesWithMarks(timeline);
    if (lanes.empty())
        return std::nullopt;
    MarkPlace place = lanes.front();
    place.mark = marksOf(timeline, place).size() - 1;
    return place;
}

} // namespace

void TimelineView::selectBeside(int step)
{
    MarkPlace place = *m_selected;
    const auto count = static_cast<std::ptrdiff_t>(marksOf(m_timeline, place).size());
    place.mark = static_cast<std::size_t>(
        std::clamp<std::ptrdiff_t>(static_cast<std::ptrdiff_t>(place.mark) + step, 0, count - 1));
    select(place);
}

void TimelineView::selectAcross(int step)
{
    const auto lanes = lanesWithMarks(m_timeline);
    const auto here = std::ranges::find(lanes, MarkPlace{m_selected->group, m_selected->lane, 0});
    const auto next = (here - lanes.begin()) + step;
    if (next < 0 || next >= static_cast<std::ptrdiff_t>(lanes.size()))
        return;
    MarkPlace place = lanes[static_cast<std::size_t>(next)];
    const Date on = marksOf(m_timeline, *m_selected)[m_selected->mark].on;
    const auto& marks = marksOf(m_timeline, place);
    const auto nearest = std::ranges::min_element(
        marks, {}, [on](const TimelineMark& mark) { return std::abs((mark.on - on).count()); });
    place.mark = static_cast<std::size_t>(nearest - marks.begin());
    select(place);
}

void TimelineView::focusInEvent(QFocusEvent* event)
{
    QAbstractScrollArea::focusInEvent(event);
    const bool byKey = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason
        || event->reason() == Qt::ShortcutFocusReason;
    if (byKey && !m_selected) {
        if (const auto start = startOf(m_timeline))
            select(*start);
    }
    viewport()->update();
}

void TimelineView::keyPressEvent(QKeyEvent* event)
{
    const double middle = (m_geometry.axis.left + m_geometry.axis.right) / 2;
    const double around
        = m_selected ? m_geometry.axis.x(marksOf(m_timeline, *m_selected)[m_selected->mark].on) : middle;
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomBy(zoomStep, around);
        return;
    case Qt::Key_Minus:
        zoomBy(1 / zoomStep, around);
        return;
    case Qt::Key_0:
        zoomBy(1e-6, around);
        return;
    default:
        break;
    }
    const bool walks = event->key() == Qt::Key_Left || event->key() == Qt::Key_Right || event->key() == Qt::Key_Up
        || event->key() == Qt::Key_Down || event->key() == Qt::Key_Home || event->key() == Qt::Key_End;
    if (walks && !m_selected) {
        if (const auto start = startOf(m_timeline))
            select(*start);
        return;
    }
    switch (event->key()) {
    case Qt::Key_Left:
        return selectBeside(-1);
    case Qt::Key_Right:
        return selectBeside(1);
    case Qt::Key_Up:
        return selectAcross(-1);
    case Qt::Key_Down:
        return selectAcross(1);
    case Qt::Key_Home:
        return selectBeside(-1'000'000);
    case Qt::Key_End:
        return selectBeside(1'000'000);
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (m_selected)
            activate(*m_selected);
        return;
    default:
        QAbstractScrollArea::keyPressEvent(event);
    }
}

} // namespace padside

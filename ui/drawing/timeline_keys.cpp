// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The keyboard of the timeline: from mark to mark, to the names, fold, zoom, open.

#include "ui/drawing/timeline_view.h"

#include <QFocusEvent>
#include <QKeyEvent>

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double zoomStep = 1.25;
constexpr double farOut = 1e-6; ///< the view stops at all years

const std::vector<TimelineMark>& marksOf(const Timeline& timeline, const PlacedLane& lane)
{
    return laneOf(timeline, lane.group, lane.lane).marks;
}

/// The latest mark of the first lane with marks: where walking starts.
std::optional<MarkPlace> startOf(const Timeline& timeline, const TimelineGeometry& geometry)
{
    for (const PlacedLane& lane : geometry.lanes) {
        if (const auto& marks = marksOf(timeline, lane); !marks.empty())
            return MarkPlace{lane.group, lane.lane, marks.size() - 1};
    }
    return std::nullopt;
}

/// Where the name of a place's lane stands.
MarkPlace nameOf(const MarkPlace& place)
{
    return {place.group, place.lane == worstLane ? partHeading : place.lane, laneName};
}

bool isName(const MarkPlace& place)
{
    return place.mark == laneName;
}

} // namespace

void TimelineView::selectBeside(int step)
{
    MarkPlace place = *m_selected;
    const bool foldable = m_timeline.groups[place.group].foldable();
    if (isName(place) && place.lane == partHeading) {
        const bool isFolded = m_folded.contains(place.group);
        if (step < 0 || isFolded)
            fold(place.group, step < 0);
        else
            select(MarkPlace{place.group, 0, laneName});
        return;
    }
    const TimelineLane& lane = laneOf(m_timeline, place.group, place.lane);
    const std::size_t count = lane.marks.size();
    const MarkPlace ahead{place.group, place.lane, outlookMark};
    if (place.mark == outlookMark) {
        if (step < 0)
            select(count > 0 ? MarkPlace{place.group, place.lane, count - 1} : nameOf(place));
        return;
    }
    if (isName(place)) {
        if (step > 0 && count > 0)
            select(MarkPlace{place.group, place.lane, 0});
        else if (step > 0 && lane.outlook)
            select(ahead);
        else if (step < 0 && foldable)
            select(MarkPlace{place.group, partHeading, laneName});
        return;
    }
    if (step < 0 && place.mark == 0)
        place = nameOf(place);
    else if (step > 0 && place.mark + 1 == count && lane.outlook)
        place = ahead;
    else
        place.mark = std::min(place.mark + static_cast<std::size_t>(step), count - 1);
    select(place);
}

void TimelineView::selectAcross(int step)
{
    const auto& lanes = m_geometry.lanes;
    const bool onHeading = m_selected->lane == partHeading;
    const auto here = std::ranges::find_if(lanes, [&](const PlacedLane& lane) {
        return lane.group == m_selected->group && (onHeading || lane.lane == m_selected->lane);
    });
    const auto end = static_cast<std::ptrdiff_t>(lanes.size());
    for (std::ptrdiff_t row = here - lanes.begin() + step; row >= 0 && row < end; row += step) {
        const PlacedLane& lane = lanes[static_cast<std::size_t>(row)];
        const auto& marks = marksOf(m_timeline, lane);
        const bool foldable = m_timeline.groups[lane.group].foldable();
        if (onHeading && foldable && lane.group != m_selected->group)
            return select(MarkPlace{lane.group, partHeading, laneName});
        if (isName(*m_selected) && !onHeading)
            return select(nameOf({lane.group, lane.lane, laneName}));
        if (m_selected->mark == outlookMark) {
            if (!laneOf(m_timeline, lane.group, lane.lane).outlook)
                continue;
            return select(MarkPlace{lane.group, lane.lane, outlookMark});
        }
        if (onHeading || marks.empty())
            continue;
        const Date on = laneOf(m_timeline, m_selected->group, m_selected->lane).marks[m_selected->mark].on;
        const auto nearest = std::ranges::min_element(
            marks, {}, [on](const TimelineMark& mark) { return std::abs((mark.on - on).count()); });
        return select(MarkPlace{lane.group, lane.lane, static_cast<std::size_t>(nearest - marks.begin())});
    }
}

void TimelineView::selectLane(std::size_t row)
{
    const PlacedLane lane = m_geometry.lanes[row]; // a copy: selecting may lay out anew
    const auto& marks = marksOf(m_timeline, lane);
    if (marks.empty())
        select(MarkPlace{lane.group, lane.lane == worstLane ? partHeading : lane.lane, laneName});
    else
        select(MarkPlace{lane.group, lane.lane, marks.size() - 1});
}

void TimelineView::selectEnd(bool last)
{
    if (m_selected->lane == partHeading)
        return;
    const auto& marks = laneOf(m_timeline, m_selected->group, m_selected->lane).marks;
    if (!marks.empty())
        select(MarkPlace{m_selected->group, m_selected->lane, last ? marks.size() - 1 : 0});
}

void TimelineView::focusInEvent(QFocusEvent* event)
{
    QAbstractScrollArea::focusInEvent(event);
    const bool byKey = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason
        || event->reason() == Qt::ShortcutFocusReason;
    if (byKey && !m_selected) {
        if (const auto start = startOf(m_timeline, m_geometry))
            select(*start);
    }
    viewport()->update();
}

bool TimelineView::zoomKey(const QKeyEvent& event)
{
    double around = (m_geometry.axis.left + m_geometry.axis.right) / 2;
    if (const PlacedMark* mark = m_selected ? m_geometry.placed(*m_selected) : nullptr)
        around = mark->x;
    switch (event.key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomBy(zoomStep, around);
        break;
    case Qt::Key_Minus:
        zoomBy(1 / zoomStep, around);
        break;
    case Qt::Key_0:
        zoomBy(farOut, around);
        break;
    default:
        return false;
    }
    if (m_selected)
        ensureVisible(*m_selected);
    return true;
}

bool TimelineView::walkKey(const QKeyEvent& event)
{
    const auto step = [&]() -> std::function<void()> {
        const bool control = event.modifiers().testFlag(Qt::ControlModifier);
        switch (event.key()) {
        case Qt::Key_Left:
            return [this] { selectBeside(-1); };
        case Qt::Key_Right:
            return [this] { selectBeside(1); };
        case Qt::Key_Up:
            return [this] { selectAcross(-1); };
        case Qt::Key_Down:
            return [this] { selectAcross(1); };
        case Qt::Key_Home:
            return [this, control] { control ? selectLane(0) : selectEnd(false); };
        case Qt::Key_End:
            return [this, control] { control ? selectLane(m_geometry.lanes.size() - 1) : selectEnd(true); };
        default:
            return {};
        }
    }();
    if (!step)
        return false;
    const bool needsNone = event.modifiers().testFlag(Qt::ControlModifier)
        && (event.key() == Qt::Key_Home || event.key() == Qt::Key_End);
    if (m_selected || needsNone)
        step();
    else if (const auto start = startOf(m_timeline, m_geometry))
        select(*start);
    return true;
}

void TimelineView::keyPressEvent(QKeyEvent* event)
{
    if (m_timeline.groups.empty() || zoomKey(*event) || walkKey(*event))
        return;
    switch (event->key()) {
    case Qt::Key_F:
        if (event->modifiers().testFlag(Qt::ShiftModifier))
            foldAll(m_folded.empty());
        else if (m_selected)
            fold(m_selected->group, !m_folded.contains(m_selected->group));
        return;
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

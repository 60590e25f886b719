// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_view.h"

#include "ui/drawing/theme.h"

#include <QAccessible>
#include <QFontInfo>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr int leastLanes = 4; ///< with fewer to see at a time, a history is no comparison

constexpr double closestDays = 60; ///< the fewest days a view may show

bool hasLane(const Timeline& timeline, const MarkPlace& place)
{
    return place.group < timeline.groups.size()
        && (place.lane < timeline.groups[place.group].lanes.size()
            || (place.lane == worstLane && timeline.groups[place.group].foldable()));
}

const TimelineMark* markIn(const Timeline& timeline, const MarkPlace& place)
{
    if (!hasLane(timeline, place))
        return nullptr;
    const TimelineLane& lane = laneOf(timeline, place.group, place.lane);
    return place.mark < lane.marks.size() ? &lane.marks[place.mark] : nullptr;
}

bool isThere(const Timeline& timeline, const MarkPlace& place)
{
    if (place.mark == laneName)
        return hasLane(timeline, place)
            || (place.lane == partHeading && place.group < timeline.groups.size()
                && timeline.groups[place.group].foldable());
    if (place.mark == outlookMark)
        return hasLane(timeline, place) && laneOf(timeline, place.group, place.lane).outlook.has_value();
    return markIn(timeline, place) != nullptr;
}

/// The same mark in another timeline: same lane, same visit or day.
std::optional<MarkPlace> sameMark(const Timeline& before, const MarkPlace& place, const Timeline& after)
{
    if (place.mark == laneName || place.mark == outlookMark)
        return isThere(after, place) ? std::optional(place) : std::nullopt;
    const TimelineMark* old = markIn(before, place);
    if (!old || !hasLane(after, place))
        return std::nullopt;
    const auto& marks = laneOf(after, place.group, place.lane).marks;
    const auto mark = std::ranges::find_if(
        marks, [old](const TimelineMark& one) { return one.on == old->on && one.visitId == old->visitId; });
    if (mark == marks.end())
        return std::nullopt;
    return MarkPlace{place.group, place.lane, static_cast<std::size_t>(mark - marks.begin())};
}

} // namespace

TimelineView::TimelineView(const Speaker& speaker, const Theme& theme, QWidget* parent)
    : QAbstractScrollArea(parent)
    , m_speaker(speaker)
    , m_theme(theme)
    , m_words(speaker)
{
    setFocusPolicy(Qt::StrongFocus);
    setFrameShape(QFrame::NoFrame);
    viewport()->setMouseTracking(true);
    viewport()->setAutoFillBackground(false);
    setAccessibleName(tr("History timeline"));
    viewport()->setAccessibleName(tr("History timeline, lanes"));
}

void TimelineView::setTimeline(Timeline timeline)
{
    if (timeline.groups.size() != m_timeline.groups.size())
        m_folded.clear();
    m_pointed.reset();
    const auto kept = m_selected ? sameMark(m_timeline, *m_selected, timeline) : std::nullopt;
    m_timeline = std::move(timeline);
    m_selected = kept;
    measureNames();
    updateScrollBars();
    layOutNow();
    describe();
}

void TimelineView::showAll()
{
    m_zoom = 1;
    m_selected.reset();
    m_folded.clear();
    updateScrollBars();
    verticalScrollBar()->setValue(0);
    layOutNow();
    describe();
}

double TimelineView::lanesWidth() const
{
    return std::max(1.0, viewport()->width() - m_sizes.names());
}

void TimelineView::measureNames()
{
    m_names = nameWidths(m_timeline, m_words, font(), QFontInfo(font()).pixelSize());
    fitNames();
}

void TimelineView::fitNames()
{
    m_sizes = sizesFor(m_names, QFontInfo(font()).pixelSize(), viewport()->width());
    setMinimumHeight(static_cast<int>(m_sizes.header + leastLanes * (m_sizes.lane + m_sizes.groupGap)));
}

DaySpan TimelineView::visibleSpan() const
{
    const DaySpan all = wholeSpan(m_timeline);
    const double days = (all.to - all.from) / m_zoom;
    const double perPixel = days / lanesWidth();
    const double from = all.from + horizontalScrollBar()->value() * perPixel;
    return DaySpan{from, from + days};
}

void TimelineView::updateScrollBars()
{
    const double wide = lanesWidth() * m_zoom;
    horizontalScrollBar()->setPageStep(static_cast<int>(lanesWidth()));
    horizontalScrollBar()->setSingleStep(40);
    horizontalScrollBar()->setRange(0, static_cast<int>(std::round(wide - lanesWidth())));
    const double height
        = layOut(m_timeline, m_sizes, m_sizes.names() + lanesWidth(), wholeSpan(m_timeline), m_folded).height;
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(static_cast<int>(m_sizes.lane));
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(std::ceil(height)) - viewport()->height()));
}

void TimelineView::layOutNow()
{
    m_geometry = layOut(m_timeline, m_sizes, m_sizes.names() + lanesWidth(), visibleSpan(), m_folded);
    viewport()->update();
}

void TimelineView::zoomBy(double factor, double x)
{
    const DaySpan all = wholeSpan(m_timeline);
    const double day = m_geometry.axis.dayAt(std::clamp(x, m_sizes.names(), m_geometry.width));
    const double share = std::clamp((x - m_sizes.names()) / lanesWidth(), 0.0, 1.0);
    m_zoom = std::clamp(m_zoom * factor, 1.0, std::max(1.0, (all.to - all.from) / closestDays));
    updateScrollBars();
    // The day under the pointer stays under it.
    const double days = (all.to - all.from) / m_zoom;
    const double from = day - days * share;
    horizontalScrollBar()->setValue(static_cast<int>(std::round((from - all.from) / days * lanesWidth())));
    layOutNow();
}

void TimelineView::paintEvent(QPaintEvent*)
{
    QPainter painter(viewport());
    painter.setFont(font());
    painter.fillRect(viewport()->rect(), m_theme.panel);
    if (m_timeline.groups.empty())
        return;
    const TimelinePicture picture{m_timeline, m_geometry, m_speaker, m_theme, m_selected, m_pictures};
    const double scrolled = verticalScrollBar()->value();
    painter.save();
    painter.setClipRect(QRectF(0, m_sizes.header, viewport()->width(), viewport()->height() - m_sizes.header));
    painter.translate(0, -scrolled);
    paintTimelineLanes(painter, picture);
    paintTimelineNames(painter, picture);
    painter.restore();
    paintTimelineHeader(painter, picture);
    if (m_timeline.groups.front().lanes.front().marks.empty()) {
        painter.setPen(m_theme.softInk);
        const QRectF lanes(m_sizes.names(), m_sizes.header, lanesWidth(), viewport()->height() - m_sizes.header);
        const QString hint = tr("No visits yet. What is seen at the first visit will stand here.");
        constexpr int placed = Qt::AlignCenter | Qt::TextWordWrap;
        const QRectF words = painter.boundingRect(lanes.adjusted(24, 0, -24, 0), placed, hint);
        painter.fillRect(words.adjusted(-10, -6, 10, 6), m_theme.panel); // what may come is drawn already
        painter.drawText(words, placed, hint);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(m_theme.accent, 2));
        painter.drawRect(QRectF(viewport()->rect()).adjusted(1, 1, -1, -1));
    }
}

void TimelineView::resizeEvent(QResizeEvent* event)
{
    QAbstractScrollArea::resizeEvent(event);
    if (m_timeline.groups.empty())
        return;
    fitNames();
    updateScrollBars();
    layOutNow();
    if (m_selected)
        ensureVisible(*m_selected);
}

void TimelineView::changeEvent(QEvent* event)
{
    QAbstractScrollArea::changeEvent(event);
    if (event->type() == QEvent::FontChange && !m_timeline.groups.empty()) {
        measureNames();
        updateScrollBars();
        layOutNow();
    }
}

void TimelineView::scrollContentsBy(int, int)
{
    if (!m_timeline.groups.empty())
        layOutNow();
}

void TimelineView::activate(const MarkPlace& place)
{
    if (place.mark == laneName) {
        const TimelineGroup& group = m_timeline.groups[place.group];
        if (place.lane == partHeading)
            fold(place.group, !m_folded.contains(place.group));
        else if (!group.lanes[place.lane].zones.empty())
            Q_EMIT zoneChosen(group.lanes[place.lane].zones.back());
        return;
    }
    const TimelineMark* mark = markIn(m_timeline, place);
    if (mark && !mark->visitId.isNull())
        Q_EMIT visitActivated(mark->visitId);
}

QString TimelineView::sentenceOf(const MarkPlace& place) const
{
    const TimelineMark* mark = markIn(m_timeline, place);
    if (!mark)
        return m_words.sentence(m_timeline, place);
    QString text = m_words.sentence(m_timeline, place, m_raised ? m_raised(*mark) : std::vector<Sentence>{});
    const PlacedMark* placed = m_geometry.placed(place);
    if (placed && placed->standsFor > 0)
        text += m_words.more(placed->standsFor);
    return text;
}

/// Says what is pointed at, else what is chosen, else what the whole picture shows.
void TimelineView::tell()
{
    const auto& told = m_pointed ? m_pointed : m_selected;
    const QString sentence = told ? sentenceOf(*told) : m_words.summary(m_timeline);
    if (sentence == m_said)
        return;
    m_said = sentence;
    Q_EMIT sentenceChanged(m_said);
}

void TimelineView::describe()
{
    const QString text = m_selected ? sentenceOf(*m_selected) : m_words.summary(m_timeline);
    tell();
    setAccessibleDescription(text);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

void TimelineView::select(const MarkPlace& place)
{
    if (!isThere(m_timeline, place))
        return;
    m_selected = place;
    ensureVisible(place);
    m_pointed.reset();
    describe();
    viewport()->update();
}

void TimelineView::selectZone(ZoneId zone)
{
    for (std::size_t g = 0; g < m_timeline.groups.size(); ++g) {
        const auto& lanes = m_timeline.groups[g].lanes;
        for (std::size_t l = 0; l < lanes.size(); ++l) {
            if (std::ranges::find(lanes[l].zones, zone) == lanes[l].zones.end() || lanes[l].marks.empty())
                continue;
            if (m_folded.contains(g))
                fold(g, false);
            select(MarkPlace{g, l, lanes[l].marks.size() - 1});
        }
    }
}

void TimelineView::fold(std::size_t group, bool folded)
{
    if (group >= m_timeline.groups.size() || !m_timeline.groups[group].foldable())
        return;
    if (folded)
        m_folded.insert(group);
    else
        m_folded.erase(group);
    updateScrollBars();
    layOutNow();
    if (!m_selected || m_selected->group != group || m_selected->lane == partHeading)
        return;
    // The same visit in the lanes that are shown now; else the part's heading.
    const TimelineMark* old = markIn(m_timeline, *m_selected);
    MarkPlace place{group, partHeading, laneName};
    for (const PlacedLane& lane : m_geometry.lanes) {
        if (!old || lane.group != group || place.mark != laneName)
            continue;
        const auto& marks = laneOf(m_timeline, group, lane.lane).marks;
        const auto same = std::ranges::find_if(
            marks, [old](const TimelineMark& one) { return one.on == old->on && one.visitId == old->visitId; });
        if (same != marks.end())
            place = MarkPlace{group, lane.lane, static_cast<std::size_t>(same - marks.begin())};
    }
    select(place);
}

void TimelineView::foldAll(bool folded)
{
    for (std::size_t group = 0; group < m_timeline.groups.size(); ++group)
        fold(group, folded);
    if (m_selected)
        ensureVisible(*m_selected);
}

void TimelineView::ensureVisible(const MarkPlace& place)
{
    const PlacedMark* mark = m_geometry.placed(place);
    const PlacedLane* lane = m_geometry.placedLane(place.group, place.lane);
    const PlacedGroup* group = m_geometry.placedGroup(place.group);
    if (!mark && !lane && !(group && place.lane == partHeading))
        return;
    // Copies: scrolling lays out anew and takes what was placed away.
    const QRectF row = lane ? lane->area : group->heading;
    const bool ahead = place.mark == outlookMark;
    const double x = mark ? mark->x : m_geometry.todayX;
    const double top = row.top() - m_sizes.header - 6;
    const double bottom = row.top() + m_sizes.lane + 6 - viewport()->height();
    if (verticalScrollBar()->value() > top)
        verticalScrollBar()->setValue(static_cast<int>(top));
    else if (verticalScrollBar()->value() < bottom)
        verticalScrollBar()->setValue(static_cast<int>(std::ceil(bottom)));
    if (!mark && !ahead)
        return;
    const double reach = m_sizes.mark + m_sizes.leftMark + 12;
    const double before = x - reach / 2 - m_sizes.names();
    const double after = x + reach - m_geometry.width;
    if (before < 0)
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() + static_cast<int>(std::floor(before)));
    else if (after > 0)
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() + static_cast<int>(std::ceil(after)));
}

} // namespace padside

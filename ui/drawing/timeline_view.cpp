// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_view.h"

#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_painter.h"

#include <QAccessible>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QToolTip>

#include <algorithm>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr double closestDays = 60; ///< the fewest days a view may show
constexpr double wheelStep = 1.25;

const TimelineMark* markIn(const Timeline& timeline, const MarkPlace& place)
{
    if (place.group >= timeline.groups.size() || place.lane >= timeline.groups[place.group].lanes.size()
        || place.mark >= timeline.groups[place.group].lanes[place.lane].marks.size())
        return nullptr;
    return &timeline.groups[place.group].lanes[place.lane].marks[place.mark];
}

/// The same mark in another timeline: same lane, same visit or day.
std::optional<MarkPlace> sameMark(const Timeline& before, const MarkPlace& place, const Timeline& after)
{
    const TimelineMark* old = markIn(before, place);
    if (!old || place.group >= after.groups.size() || place.lane >= after.groups[place.group].lanes.size())
        return std::nullopt;
    const auto& marks = after.groups[place.group].lanes[place.lane].marks;
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
    setMinimumHeight(120);
}

void TimelineView::setTimeline(Timeline timeline)
{
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
    const double text = QFontInfo(font()).pixelSize();
    QFont bold = font();
    bold.setBold(true);
    const QFontMetricsF partMetrics(bold);
    const QFontMetricsF zoneMetrics(font());
    double part = 60;
    double zone = 40;
    for (const TimelineGroup& group : m_timeline.groups) {
        // A name over several lanes may break into two lines.
        const double share = group.lanes.size() > 1 ? 0.62 : 1;
        part = std::max(part, partMetrics.horizontalAdvance(m_words.partName(group)) * share + 16);
        for (const TimelineLane& lane : group.lanes)
            zone = std::max(zone, zoneMetrics.horizontalAdvance(m_words.zoneName(lane)) + 12);
    }
    // Names may take a third, more where there is little room, but never most of it.
    const double width = viewport()->width();
    const double most = std::max(width * 0.34, std::min(width * 0.42, 400.0));
    const double scale = std::min(1.0, most / (part + zone));
    m_sizes = TimelineSizes::forText(text, std::floor(part * scale), std::floor(zone * scale));
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
    const double height = layOut(m_timeline, m_sizes, m_sizes.names() + lanesWidth(), wholeSpan(m_timeline)).height;
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(static_cast<int>(m_sizes.lane));
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(std::ceil(height)) - viewport()->height()));
}

void TimelineView::layOutNow()
{
    m_geometry = layOut(m_timeline, m_sizes, m_sizes.names() + lanesWidth(), visibleSpan());
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
    const TimelinePicture picture{m_timeline, m_geometry, m_speaker, m_theme, m_selected};
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
        painter.drawText(lanes.adjusted(24, 0, -24, 0), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("No visits yet. What is seen at the first visit will stand here."));
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
    measureNames();
    updateScrollBars();
    layOutNow();
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

std::optional<MarkPlace> TimelineView::markUnder(const QPointF& point) const
{
    if (point.x() < m_sizes.names() || point.y() < m_sizes.header)
        return std::nullopt;
    return m_geometry.markAt(point.x(), point.y() + verticalScrollBar()->value());
}

QString TimelineView::nameUnder(const QPointF& point) const
{
    const double y = point.y() + verticalScrollBar()->value();
    if (point.x() >= m_sizes.names() || point.y() < m_sizes.header)
        return {};
    for (const PlacedLane& lane : m_geometry.lanes) {
        if (y < lane.area.top() || y >= lane.area.bottom())
            continue;
        const TimelineGroup& group = m_timeline.groups[lane.group];
        const QString name
            = tr("%1, %2", "part, zone").arg(m_words.partName(group), m_words.zoneName(group.lanes[lane.lane]));
        return group.fitted ? name : tr("%1 (removed)").arg(name);
    }
    return {};
}

void TimelineView::mouseMoveEvent(QMouseEvent* event)
{
    viewport()->setCursor(markUnder(event->position()) ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void TimelineView::mousePressEvent(QMouseEvent* event)
{
    event->accept(); // what counts is where the button is let go
}

void TimelineView::mouseReleaseEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    if (const auto place = markUnder(event->position())) {
        select(*place);
        activate(*place);
    }
}

void TimelineView::wheelEvent(QWheelEvent* event)
{
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        zoomBy(std::pow(wheelStep, event->angleDelta().y() / 120.0), event->position().x());
        event->accept();
    } else {
        QAbstractScrollArea::wheelEvent(event);
    }
}

bool TimelineView::viewportEvent(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QAbstractScrollArea::viewportEvent(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto place = markUnder(help->pos());
    const QString text = place ? m_words.sentence(m_timeline, *place) : nameUnder(help->pos());
    if (text.isEmpty())
        QToolTip::hideText();
    else
        QToolTip::showText(help->globalPos(), u"<p>"_s + text.toHtmlEscaped() + u"</p>"_s, viewport());
    return true;
}

void TimelineView::activate(const MarkPlace& place)
{
    const TimelineMark* mark = markIn(m_timeline, place);
    if (mark && !mark->visitId.isNull())
        Q_EMIT visitActivated(mark->visitId);
}

void TimelineView::describe()
{
    const QString text = m_selected ? m_words.sentence(m_timeline, *m_selected) : m_words.summary(m_timeline);
    setAccessibleDescription(text);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
}

void TimelineView::select(const MarkPlace& place)
{
    if (!markIn(m_timeline, place))
        return;
    m_selected = place;
    ensureVisible(place);
    describe();
    Q_EMIT markSelected(m_words.sentence(m_timeline, place));
    viewport()->update();
}

void TimelineView::selectZone(ZoneId zone)
{
    for (std::size_t g = 0; g < m_timeline.groups.size(); ++g) {
        const auto& lanes = m_timeline.groups[g].lanes;
        for (std::size_t l = 0; l < lanes.size(); ++l) {
            if (std::ranges::find(lanes[l].zones, zone) != lanes[l].zones.end() && !lanes[l].marks.empty())
                select(MarkPlace{g, l, lanes[l].marks.size() - 1});
        }
    }
}

void TimelineView::ensureVisible(const MarkPlace& place)
{
    const PlacedMark* mark = m_geometry.placed(place);
    if (!mark)
        return;
    const QRectF area = mark->area; // a copy: scrolling lays out anew and takes the mark away
    const double top = area.top() - m_sizes.header - 6;
    const double bottom = area.bottom() + 6 - viewport()->height();
    if (verticalScrollBar()->value() > top)
        verticalScrollBar()->setValue(static_cast<int>(top));
    else if (verticalScrollBar()->value() < bottom)
        verticalScrollBar()->setValue(static_cast<int>(std::ceil(bottom)));
    const double before = area.left() - m_sizes.names() - 12;
    const double after = area.right() + 12 - m_geometry.width;
    if (before < 0)
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() + static_cast<int>(std::floor(before)));
    else if (after > 0)
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() + static_cast<int>(std::ceil(after)));
}

} // namespace padside

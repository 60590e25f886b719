// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway_view.h"

#include "ui/drawing/cutaway_accessible.h"
#include "ui/drawing/cutaway_painter.h"
#include "ui/drawing/focus_outline.h"
#include "ui/drawing/theme.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int margin = 6;
constexpr int captionLines = 2;

} // namespace

CutawayView::CutawayView(const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
{
    installCutawayAccessibility();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Drawing of the opened unit"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

CutawayView::~CutawayView() = default;

QSize CutawayView::sizeHint() const
{
    return {520, 420};
}

QSize CutawayView::minimumSizeHint() const
{
    return {260, 210};
}

void CutawayView::setContent(CutawayContent content)
{
    if (m_drawing && content == m_content)
        return;
    const PartId kept = current();
    if (!m_drawing || content.unitKind != m_content.unitKind)
        m_drawing = std::make_unique<CutawayDrawing>(content.unitKind, m_theme);
    m_content = std::move(content);
    m_drawing->tint(m_content);
    m_drawn = QPixmap();
    m_pointedAt.reset();
    m_current.reset();
    layOutNow();
    setCurrent(kept);
    describe();
}

void CutawayView::setCurrent(PartId part)
{
    const auto found = std::ranges::find(m_content.parts, part, &CutawayPart::id);
    if (found == m_content.parts.end())
        m_current.reset();
    else
        m_current = static_cast<std::size_t>(found - m_content.parts.begin());
    describe();
    update();
}

PartId CutawayView::current() const
{
    return m_current ? m_content.parts[*m_current].id : PartId();
}

std::optional<std::size_t> CutawayView::told() const
{
    return m_pointedAt ? m_pointedAt : m_current;
}

QString CutawayView::caption() const
{
    if (const auto part = told())
        return m_content.parts[*part].sentence;
    return tr("Point at a part, or walk there with the arrow keys, to read what was last found of it.");
}

double CutawayView::captionHeight() const
{
    return fontMetrics().lineSpacing() * captionLines + 2;
}

QRectF CutawayView::captionArea() const
{
    return {double(margin), m_geometry.whole.bottom() + margin, double(width() - 2 * margin), captionHeight()};
}

void CutawayView::layOutNow()
{
    if (!m_drawing)
        return;
    const QRectF area(margin, margin, width() - 2 * margin, height() - captionHeight() - 3 * margin);
    m_geometry = layOutCutaway(m_content, *m_drawing, area);
    update();
}

void CutawayView::paintDrawing(QPainter& painter)
{
    // Painted once for each size and screen: pointing about must not paint some hundred shapes each time.
    const QSize pixels = size() * devicePixelRatioF();
    if (m_drawn.size() != pixels) {
        m_drawn = QPixmap(pixels);
        m_drawn.setDevicePixelRatio(devicePixelRatioF());
        m_drawn.fill(m_theme.panel);
        QPainter once(&m_drawn);
        once.setRenderHint(QPainter::Antialiasing);
        m_drawing->paint(once, m_geometry.drawing);
    }
    painter.drawPixmap(0, 0, m_drawn);
}

void CutawayView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme.panel);
    if (!m_drawing)
        return;
    paintDrawing(painter);
    paintCutawayMarks(painter,
                      CutawayPicture{m_content, *m_drawing, m_geometry, m_theme, told(), hasFocus() && !m_pointedAt});
    painter.setPen(told() ? m_theme.ink : m_theme.softInk);
    painter.drawText(captionArea(), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, caption());
    if (hasFocus())
        paintFocusOutline(painter, rect(), palette());
}

void CutawayView::resizeEvent(QResizeEvent*)
{
    m_drawn = QPixmap();
    layOutNow();
}

void CutawayView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::StyleChange && m_drawing) { // the theme may be another one
        m_drawing = std::make_unique<CutawayDrawing>(m_content.unitKind, m_theme);
        m_drawing->tint(m_content);
        m_drawn = QPixmap();
    }
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        layOutNow();
    QWidget::changeEvent(event);
}

bool CutawayView::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    if (const auto part = m_geometry.partAt(help->pos()))
        QToolTip::showText(help->globalPos(), u"<p>"_s + m_content.parts[*part].sentence.toHtmlEscaped() + u"</p>"_s,
                           this);
    else
        QToolTip::hideText();
    return true;
}

void CutawayView::mouseMoveEvent(QMouseEvent* event)
{
    pointAt(m_geometry.partAt(event->position()));
}

void CutawayView::leaveEvent(QEvent*)
{
    pointAt(std::nullopt);
}

void CutawayView::pointAt(std::optional<std::size_t> part)
{
    if (part == m_pointedAt)
        return;
    m_pointedAt = part;
    setCursor(part ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
}

void CutawayView::mouseReleaseEvent(QMouseEvent* event)
{
    const auto part = m_geometry.partAt(event->position());
    if (event->button() != Qt::LeftButton || !part)
        return;
    goTo(part);
    activate(*part);
}

void CutawayView::goTo(std::optional<std::size_t> part)
{
    if (!part)
        return;
    m_current = part;
    m_pointedAt.reset();
    describe();
    update();
}

void CutawayView::activate(std::size_t part)
{
    Q_EMIT partActivated(m_content.parts[part].id, m_content.parts[part].zone);
}

void CutawayView::focusInEvent(QFocusEvent* event)
{
    const bool byKey = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason
        || event->reason() == Qt::ShortcutFocusReason;
    if (byKey && !m_current)
        goTo(firstPart(m_geometry));
    describe();
    update();
}

void CutawayView::focusOutEvent(QFocusEvent*)
{
    update();
}

void CutawayView::keyPressEvent(QKeyEvent* event)
{
    const auto walk = [this](Direction direction) {
        goTo(m_current ? partBeside(m_geometry, *m_current, direction) : firstPart(m_geometry));
    };
    switch (event->key()) {
    case Qt::Key_Left:
        return walk(Direction::left);
    case Qt::Key_Right:
        return walk(Direction::right);
    case Qt::Key_Up:
        return walk(Direction::up);
    case Qt::Key_Down:
        return walk(Direction::down);
    case Qt::Key_Home:
        return goTo(firstPart(m_geometry));
    case Qt::Key_End:
        return goTo(firstPart(m_geometry, true));
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        if (m_current)
            activate(*m_current);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void CutawayView::describe()
{
    setAccessibleDescription(m_current ? m_content.parts[*m_current].sentence : caption());
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
    if (m_current && hasFocus()) {
        QAccessibleEvent focus(this, QAccessible::Focus);
        focus.setChild(static_cast<int>(*m_current));
        QAccessible::updateAccessibility(&focus);
    }
}

} // namespace padside

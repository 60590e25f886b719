// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/fleet_field_view.h"

#include "ui/drawing/fleet_field_accessible.h"
#include "ui/drawing/fleet_field_painter.h"
#include "ui/drawing/focus_outline.h"
#include "ui/drawing/theme.h"

#include <QAccessible>
#include <QFontInfo>
#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr double fieldMargin = 8;
constexpr int tagLetters = 10; ///< longer tags are cut short in the field, never in its sentence
constexpr std::size_t mostNamed = 6; ///< of those gathered

} // namespace

FleetFieldView::FleetFieldView(const Theme& theme, QStringList tollNames, ChanceWriter shownChance, QWidget* parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_tollNames(std::move(tollNames))
    , m_shownChance(std::move(shownChance))
{
    installFleetFieldAccessibility();
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Field of units: worse to the right, likelier above"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

QSize FleetFieldView::sizeHint() const
{
    return {640, 15 * fontMetrics().height()};
}

QSize FleetFieldView::minimumSizeHint() const
{
    return {360, 11 * fontMetrics().height()};
}

std::optional<std::size_t> FleetFieldView::unitAt(const UnitId& unit) const
{
    const auto found = std::ranges::find(m_units, unit, &FieldUnit::id);
    return found == m_units.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - m_units.begin()));
}

std::optional<std::size_t> FleetFieldView::currentMark() const
{
    const auto unit = unitAt(m_chosen);
    return unit ? m_geometry.markOf(*unit) : std::nullopt;
}

FieldSizes FleetFieldView::sizesNow() const
{
    const QFontMetricsF letters(font());
    double tag = letters.horizontalAdvance(u"00000"_s);
    const double most = letters.averageCharWidth() * tagLetters * 1.4;
    const auto longest = std::ranges::max_element(m_units, {}, [](const FieldUnit& unit) { return unit.tag.size(); });
    if (longest != m_units.end())
        tag = std::max(tag, letters.horizontalAdvance(longest->tag) + 4);
    double names = 0;
    const double axis = letters.horizontalAdvance(m_shownChance(1));
    const double column = (width() - 2 * fieldMargin - axis - 10) / static_cast<double>(tollCount) - 8;
    for (const QString& name : m_tollNames) {
        const QRectF room(0, 0, std::max(20.0, column), 1000);
        names = std::max(names, letters.boundingRect(room, Qt::AlignHCenter | Qt::TextWordWrap, name).height());
    }
    return FieldSizes::forText(QFontInfo(font()).pixelSize(), std::min(tag, most), axis, names + 6);
}

void FleetFieldView::setUnits(std::vector<FieldUnit> units)
{
    if (units == m_units)
        return;
    m_units = std::move(units);
    m_pointed.reset();
    if (!unitAt(m_chosen))
        m_chosen = UnitId();
    layOutNow();
    describe();
}

void FleetFieldView::layOutNow()
{
    m_geometry = layOutFleetField(
        m_units, sizesNow(), QRectF(rect()).adjusted(fieldMargin, fieldMargin / 2, -fieldMargin, -fieldMargin / 2));
    update();
}

void FleetFieldView::choose(UnitId unit)
{
    m_chosen = unitAt(unit) ? unit : UnitId();
    describe();
    update();
}

void FleetFieldView::take(std::size_t unit)
{
    m_chosen = m_units[unit].id;
    m_pointed.reset();
    describe();
    update();
    Q_EMIT unitChosen(m_chosen);
}

void FleetFieldView::goTo(std::size_t mark)
{
    const std::vector<std::size_t>& units = m_geometry.marks[mark].units;
    const auto here = std::ranges::find(units, m_chosen, [this](std::size_t unit) { return m_units[unit].id; });
    take(here == units.end() || here + 1 == units.end() ? units.front() : here[1]);
}

void FleetFieldView::step(FieldStep step)
{
    if (m_geometry.marks.empty())
        return;
    const auto mark = currentMark();
    const std::size_t next = mark ? markBeside(m_geometry, *mark, step) : 0;
    if (next != mark)
        take(m_geometry.marks[next].units.front());
}

void FleetFieldView::activate()
{
    if (!m_chosen.isNull())
        Q_EMIT unitActivated(m_chosen);
}

QString FleetFieldView::nameOf(std::size_t mark) const
{
    const FieldMark& one = m_geometry.marks[mark];
    if (!one.gathered())
        return m_units[one.units.front()].tag;
    return tr("%n units gathered", nullptr, static_cast<int>(one.units.size()));
}

QString FleetFieldView::gatheredSentence(std::size_t mark) const
{
    const FieldMark& one = m_geometry.marks[mark];
    QStringList tags;
    for (const std::size_t unit : one.units) {
        if (tags.size() == mostNamed)
            break;
        tags << m_units[unit].tag;
    }
    const auto more = static_cast<int>(one.units.size()) - static_cast<int>(tags.size());
    const QString named
        = more > 0 ? tr("%1 and %2 more", "tags, count").arg(tags.join(u", "_s)).arg(more) : tags.join(u", "_s);
    return tr("%1: %2. Space or a click steps through them.", "how many, tags").arg(nameOf(mark), named);
}

QString FleetFieldView::sentenceOf(std::size_t mark) const
{
    const FieldMark& one = m_geometry.marks[mark];
    const auto chosen = std::ranges::find(one.units, m_chosen, [this](std::size_t unit) { return m_units[unit].id; });
    const std::size_t unit = chosen == one.units.end() ? one.units.front() : *chosen;
    const QString said = m_sentences ? m_sentences(m_units[unit].id) : m_units[unit].tag;
    return one.gathered() ? said + u' ' + gatheredSentence(mark) : said;
}

QString FleetFieldView::sentenceNow() const
{
    const auto mark = m_pointed ? m_pointed : currentMark();
    if (mark)
        return sentenceOf(*mark);
    if (m_units.empty())
        return tr("No unit shown has an outlook yet.");
    return tr("Worse to the right, likelier above. Point at a unit, or walk there with the arrow keys, to read why.");
}

void FleetFieldView::describe()
{
    const QString sentence = sentenceNow();
    setAccessibleDescription(sentence);
    Q_EMIT sentenceChanged(sentence);
    QAccessibleEvent changed(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&changed);
    if (const auto mark = currentMark(); mark && hasFocus()) {
        QAccessibleEvent focus(this, QAccessible::Focus);
        focus.setChild(static_cast<int>(*mark));
        QAccessible::updateAccessibility(&focus);
    }
}

void FleetFieldView::pointAt(std::optional<std::size_t> mark)
{
    if (mark == m_pointed)
        return;
    m_pointed = mark;
    setCursor(mark ? Qt::PointingHandCursor : Qt::ArrowCursor);
    Q_EMIT sentenceChanged(sentenceNow());
    update();
}

bool FleetFieldView::event(QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    if (const auto mark = m_geometry.markAt(help->pos()))
        QToolTip::showText(help->globalPos(), u"<p>"_s + sentenceOf(*mark).toHtmlEscaped() + u"</p>"_s, this);
    else
        QToolTip::hideText();
    return true;
}

void FleetFieldView::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(font());
    painter.fillRect(rect(), m_theme.panel);
    paintFleetField(
        painter,
        FleetFieldPicture{m_units, m_geometry, m_theme, m_tollNames, m_shownChance, unitAt(m_chosen), m_pointed});
    if (hasFocus())
        paintFocusOutline(painter, rect(), palette());
}

void FleetFieldView::resizeEvent(QResizeEvent*)
{
    m_pointed.reset(); // marks gather and part with the room they have
    layOutNow();
    describe();
}

void FleetFieldView::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
        m_pointed.reset();
        layOutNow();
        describe();
    }
}

void FleetFieldView::mouseMoveEvent(QMouseEvent* event)
{
    pointAt(m_geometry.markAt(event->position()));
}

void FleetFieldView::leaveEvent(QEvent*)
{
    pointAt(std::nullopt);
}

void FleetFieldView::mousePressEvent(QMouseEvent* event)
{
    const auto mark = m_geometry.markAt(event->position());
    if (event->button() == Qt::LeftButton && mark)
        goTo(*mark);
}

void FleetFieldView::mouseDoubleClickEvent(QMouseEvent* event)
{
    // The first press of the two has chosen it.
    if (event->button() == Qt::LeftButton && m_geometry.markAt(event->position()))
        activate();
}

void FleetFieldView::focusInEvent(QFocusEvent* event)
{
    const bool byKey = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
    if (byKey && !currentMark() && !m_geometry.marks.empty())
        take(m_geometry.marks.front().units.front());
    describe();
    update();
}

void FleetFieldView::focusOutEvent(QFocusEvent*)
{
    update();
}

void FleetFieldView::keyPressEvent(QKeyEvent* event)
{
    switch (event->key()) {
    case Qt::Key_Left:
        return step(FieldStep::left);
    case Qt::Key_Right:
        return step(FieldStep::right);
    case Qt::Key_Up:
        return step(FieldStep::up);
    case Qt::Key_Down:
        return step(FieldStep::down);
    case Qt::Key_Space:
        if (const auto mark = currentMark())
            goTo(*mark);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return activate();
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/zone_line_delegate.h"

#include "ui/drawing/focus_outline.h"
#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"

#include <QPainter>

namespace padside {

namespace {

constexpr int partHeight = 30;
constexpr int indent = 12;

void paintSight(QPainter& painter, const QRectF& area, int sight, const Theme& theme)
{
    if (sight == ZoneLineDelegate::notSeen)
        paintNotSeen(painter, area, theme);
    else if (const auto grade = gradeFromNumeral(sight))
        paintGrade(painter, area, *grade, theme);
    else
        paintNoFinding(painter, area, theme);
}

} // namespace

ZoneLineDelegate::ZoneLineDelegate(const Theme& theme, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

QSize ZoneLineDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const
{
    return {120, index.data(isPartRole).toBool() ? partHeight : m_theme.size.row};
}

void ZoneLineDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const QRectF area(option.rect);
    const QString text = index.data(Qt::DisplayRole).toString();
    painter->save();
    if (index.data(isPartRole).toBool()) {
        QFont font = option.font;
        font.setBold(true);
        painter->setFont(font);
        painter->setPen(m_theme.softInk);
        const QRectF line = area.adjusted(indent, 6, -indent, 0);
        painter->drawText(line, Qt::AlignVCenter | Qt::AlignLeft,
                          painter->fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(line.width())));
        painter->restore();
        return;
    }
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    if (selected)
        painter->fillRect(area, mixed(m_theme.accent, m_theme.panel, 0.18));
    else if (option.state.testFlag(QStyle::State_MouseOver))
        painter->fillRect(area, mixed(m_theme.accent, m_theme.panel, 0.07));
    if (selected)
        painter->fillRect(QRectF(area.left(), area.top(), 4, area.height()), m_theme.accent);
    if (option.state.testFlag(QStyle::State_HasFocus))
        paintFocusOutline(*painter, area, option.palette);

    const double middle = area.center().y();
    paintSight(*painter, QRectF(area.left() + indent, middle - 12, 28, 24), index.data(todayRole).toInt(), m_theme);
    const QRectF last(area.right() - indent - 20, middle - 8, 20, 16);
    if (index.data(lastRole).toInt() != noFinding)
        paintSight(*painter, last, index.data(lastRole).toInt(), m_theme);

    painter->setFont(option.font);
    painter->setPen(m_theme.ink);
    const QRectF name(area.left() + indent + 38, area.top(), last.left() - 8 - (area.left() + indent + 38),
                      area.height());
    painter->drawText(name, Qt::AlignVCenter | Qt::AlignLeft,
                      painter->fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(name.width())));
    painter->restore();
}

} // namespace padside

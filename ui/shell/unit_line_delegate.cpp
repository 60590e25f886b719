// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/unit_line_delegate.h"

#include "ui/drawing/focus_outline.h"
#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/models/unit_list_model.h"

#include <QPainter>

#include <algorithm>

namespace padside {

namespace {

constexpr int markSize = 20;
constexpr int margin = 10;

QFont sized(const QFont& base, double factor, bool bold)
{
    QFont font = base;
    font.setPointSizeF(base.pointSizeF() * factor);
    font.setBold(bold);
    return font;
}

} // namespace

UnitLineDelegate::UnitLineDelegate(const Theme& theme, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

QSize UnitLineDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const int line = option.fontMetrics.height();
    if (index.parent().isValid())
        return {120, std::max(2 * line + 14, m_theme.size.entry)};
    return {120, line + 16};
}

void UnitLineDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    painter->save();
    if (index.parent().isValid())
        paintUnit(*painter, option, index);
    else
        paintSite(*painter, option, index);
    painter->restore();
}

void UnitLineDelegate::paintSite(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const QRect area = option.rect.adjusted(margin, 8, -margin, -2);
    painter.setFont(sized(option.font, 0.92, true));
    painter.setPen(m_theme.softInk);
    painter.drawText(area, Qt::AlignLeft | Qt::AlignVCenter,
                     painter.fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, area.width()));
}

void UnitLineDelegate::paintUnit(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    if (selected)
        painter.fillRect(option.rect, mixed(m_theme.accent, m_theme.panel, 0.18));
    if (index.data(UnitListModel::openVisitRole).toBool())
        painter.fillRect(QRect(option.rect.left(), option.rect.top() + 3, 4, option.rect.height() - 6), m_theme.accent);
    if (selected && option.state.testFlag(QStyle::State_HasFocus))
        paintFocusOutline(painter, option.rect, option.palette);

    const QRect mark(option.rect.right() - margin - markSize, option.rect.center().y() - markSize / 2, markSize,
                     markSize);
    const bool retired = index.data(UnitListModel::retiredRole).toBool();
    // The grades of a retired unit ask for nothing any more.
    const auto worst = retired ? std::nullopt : gradeFromNumeral(index.data(UnitListModel::worstGradeRole).toInt());
    if (worst)
        paintGrade(painter, mark, *worst, m_theme);
    else
        paintNoFinding(painter, mark, m_theme);

    const QRect text = option.rect.adjusted(margin + 6, 5, -(margin + markSize + 8), -5);
    painter.setFont(sized(option.font, 1.0, true));
    painter.setPen(retired ? m_theme.softInk : m_theme.ink);
    painter.drawText(text, Qt::AlignLeft | Qt::AlignTop,
                     painter.fontMetrics().elidedText(index.data().toString(), Qt::ElideRight, text.width()));
    painter.setFont(sized(option.font, 0.9, false));
    painter.setPen(m_theme.softInk);
    painter.drawText(text, Qt::AlignLeft | Qt::AlignBottom,
                     painter.fontMetrics().elidedText(index.data(UnitListModel::placeRole).toString(), Qt::ElideRight,
                                                      text.width()));
}

} // namespace padside

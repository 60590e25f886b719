// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/fleet/fleet_line_delegate.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/models/fleet_model.h"

#include <algorithm>

namespace padside {

namespace {

constexpr int markSize = 20;

} // namespace

FleetLineDelegate::FleetLineDelegate(const Theme& theme, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

void FleetLineDelegate::initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const
{
    QStyledItemDelegate::initStyleOption(option, index);
    // Soft, so that the marks keep their colours' meaning on it.
    option->palette.setColor(QPalette::Highlight, mixed(m_theme.accent, m_theme.panel, 0.25));
    option->palette.setColor(QPalette::HighlightedText, m_theme.ink);
    if (index.data(FleetModel::retiredRole).toBool())
        option->palette.setColor(QPalette::Text, m_theme.softInk);
}

void FleetLineDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    QStyledItemDelegate::paint(painter, option, index); // text, selection and focus
    if (index.column() != FleetModel::grade)
        return;
    const int side = std::min(markSize, option.rect.height() - 4);
    QRect mark(0, 0, side, side);
    mark.moveCenter(option.rect.center());
    // The grades of a retired unit ask for nothing any more.
    const bool retired = index.data(FleetModel::retiredRole).toBool();
    const auto worst = retired ? std::nullopt : gradeFromNumeral(index.data(FleetModel::gradeRole).toInt());
    if (worst)
        paintGrade(*painter, mark, *worst, m_theme);
    else
        paintNoFinding(*painter, mark, m_theme);
}

} // namespace padside

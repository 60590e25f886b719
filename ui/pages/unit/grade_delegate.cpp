// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/grade_delegate.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/pages/unit/finding_tree_model.h"

#include <QPainter>

#include <algorithm>

namespace padside {

namespace {

constexpr int markInset = 3;

int heightOf(const QStyleOptionViewItem& option)
{
    return option.fontMetrics.height() + 2 * markInset + 2;
}

} // namespace

GradeDelegate::GradeDelegate(const Theme& theme, QObject* parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

void GradeDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    QStyledItemDelegate::paint(painter, option, index); // selection and focus
    // No larger than the letters ask for: rows in field size are high for the finger's sake.
    const int side = std::min(option.rect.height(), heightOf(option)) - 2 * markInset;
    QRectF mark(option.rect.left() + markInset, option.rect.center().y() + 1 - side / 2.0, side, side);
    const QVariant numeral = index.data(FindingTreeModel::gradeRole);
    const auto grade = gradeFromNumeral(numeral.toInt());
    const bool isZone = index.parent().isValid();
    if (grade && !isZone) {
        // A part shows its worst grade, smaller: the zones below it carry the evidence.
        mark.adjust(2, 2, -2, -2);
        paintGrade(*painter, mark, *grade, m_theme);
        return;
    }
    if (grade)
        paintGrade(*painter, mark, *grade, m_theme);
    if (index.data(FindingTreeModel::notSeenRole).toBool()) {
        if (grade)
            mark.translate(side + markInset, 0);
        paintNotSeen(*painter, mark, m_theme);
    } else if (!grade && isZone) {
        paintNoFinding(*painter, mark, m_theme);
    }
}

QSize GradeDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const
{
    const int height = heightOf(option);
    return {2 * height + markInset, std::max(height, m_theme.size.entry)};
}

} // namespace padside

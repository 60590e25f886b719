// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStyledItemDelegate>

namespace padside {

struct Theme;

/// Paints a grade as our mark: filled with its numeral, and beside it the hatching where it was not seen since.
class GradeDelegate : public QStyledItemDelegate
{
    Q_OBJECT
public:
    GradeDelegate(const Theme& theme, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const Theme& m_theme;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStyledItemDelegate>

namespace padside {

struct Theme;

/// Paints one line of the list of units: tag and place, the worst grade at the right, a bar at the left while a visit
/// is open.
class UnitLineDelegate : public QStyledItemDelegate
{
    Q_OBJECT
public:
    UnitLineDelegate(const Theme& theme, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    void paintSite(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) const;
    void paintUnit(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) const;

    const Theme& m_theme;
};

} // namespace padside

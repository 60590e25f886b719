// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStyledItemDelegate>

namespace padside {

struct Theme;

/// Paints one line of the zone list: today's mark, the zone's name, the grade of last time; or the name of a part.
class ZoneLineDelegate : public QStyledItemDelegate
{
    Q_OBJECT
public:
    enum Role { isPartRole = Qt::UserRole, todayRole, lastRole };
    /// Beside 1..5.
    static constexpr int noFinding = 0;
    static constexpr int notSeen = -1;

    ZoneLineDelegate(const Theme& theme, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const Theme& m_theme;
};

} // namespace padside

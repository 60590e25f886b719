// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStyledItemDelegate>

namespace padside {

struct Theme;

/// Paints a cell of the fleet: the worst grade as our mark with its numeral, retired units in softer ink.
class FleetLineDelegate : public QStyledItemDelegate
{
    Q_OBJECT
public:
    FleetLineDelegate(const Theme& theme, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

protected:
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override;

private:
    const Theme& m_theme;
};

} // namespace padside

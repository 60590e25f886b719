// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStyledItemDelegate>

namespace padside {

struct Theme;

/// Sets a row of NextModel as a paragraph: a rule whose weight says how pressing it is, the leading word or dates, the
/// sentence, and its reason below in softer ink. Lines break to the view's width.
class NextDelegate : public QStyledItemDelegate
{
    Q_OBJECT
public:
    NextDelegate(const Theme& theme, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    struct Setting;
    [[nodiscard]] Setting set(const QStyleOptionViewItem& option, const QModelIndex& index, int width) const;

    const Theme& m_theme;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#ifndef Q_MOC_RUN // moc 6.4 stumbles over the concepts in <random>
#include "core/record/id.h"
#endif

#include <QWidget>

#include <optional>

class QAbstractScrollArea;
class QLineEdit;
class QSortFilterProxyModel;
class QTreeView;

namespace padside {

struct Theme;
class RecordBook;
class UnitListModel;

/// All units of the file by site, with a field that narrows the list as it is typed.
class UnitListPanel : public QWidget
{
    Q_OBJECT
public:
    UnitListPanel(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    /// Reads the list again; the selected unit stays selected.
    void reload();
    void select(UnitId unit);
    /// Selects the first unit, if there is one.
    void selectFirst();
    [[nodiscard]] std::optional<UnitId> selected() const;
    [[nodiscard]] bool holds(UnitId unit) const;
    [[nodiscard]] bool isEmpty() const;
    void focusSearch();
    [[nodiscard]] QAbstractScrollArea* list() const; ///< where a context menu is asked for

Q_SIGNALS:
    void unitSelected(const padside::UnitId& unit);

private:
    RecordBook& m_book;
    UnitListModel* m_model;
    QSortFilterProxyModel* m_filter;
    QLineEdit* m_search;
    QTreeView* m_tree;
};

} // namespace padside

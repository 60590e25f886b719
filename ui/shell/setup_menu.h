// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"
#include "ui/models/setup_log.h"
#include "ui/pages/setup/unit_dialog.h"

#include <QObject>

#include <functional>
#include <optional>

class QAbstractScrollArea;
class QAction;
class QMenu;

namespace padside {

class RecordBook;

/// Setting up sites and units: a menu, and the forms it opens. Every change can be undone.
class SetupMenu : public QObject
{
    Q_OBJECT
public:
    /// `selected` tells which unit the menu is about. All outlive it; forms open over `window`.
    SetupMenu(RecordBook& book, QUndoStack& stack, std::function<std::optional<UnitId>()> selected, QWidget* window);

    [[nodiscard]] QMenu* menu() const { return m_menu; }
    /// Opens the menu of a list of units where it was asked for.
    void attachTo(QAbstractScrollArea* list);

    void addSite();
    void addUnit();
    void importUnits();
    void importUnitsFrom(const QString& file); ///< a list that was dropped on the window

Q_SIGNALS:
    void unitKept(const padside::UnitId& unit);
    void said(const QString& sentence); ///< what was done, where it can't be seen at once

private:
    /// Needs a selected unit; the text has room for its tag.
    struct OfUnit
    {
        QAction* action;
        QString text;
    };

    void fill();
    void refresh();
    void changeSite();
    void addUnitAt(SiteId site);
    void openForNew(const UnitDialog::Task& task); ///< the unit that is kept is shown
    void oneLikeThis();
    void changeUnit();
    void retire();
    void bringBack();
    void remove();
    [[nodiscard]] std::optional<UnitRecord> record() const;

    RecordBook& m_book;
    SetupLog m_log;
    std::function<std::optional<UnitId>()> m_selected;
    QWidget* m_window;
    QMenu* m_menu;
    std::vector<OfUnit> m_ofUnit;
    QAction* m_retire = nullptr;
    QAction* m_bringBack = nullptr;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/store/record_reader.h" // before id.h, for moc
#include "ui/models/fleet_filter.h"
#include "ui/models/fleet_model.h"

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;

namespace padside {

struct Theme;
class FleetReviewer;
class FleetWishes;
class RecordBook;

/// All units of the file in a table, the gravest first: where to begin when one has many of them.
class FleetPage : public QWidget
{
    Q_OBJECT
public:
    FleetPage(RecordBook& book, FleetReviewer& fleet, const Theme& theme, QWidget* parent = nullptr);

    /// Brings the page up to date; call it when the page is shown.
    void refresh();

    [[nodiscard]] const FleetFilter& shownUnits() const { return *m_filter; }

Q_SIGNALS:
    void unitRequested(const padside::UnitId& unit);

protected:
    void changeEvent(QEvent* event) override;

private:
    void makeLayout();
    void makeTable();
    void fitTable(); ///< to the letters and sizes that are worn
    void addSortKey(const QKeySequence& key, Qt::SortOrder order);
    void connectParts();
    void noteChange();
    void readLines();
    void takeFleet();
    void takeWish();
    void sayState();
    void sayEmpty();
    [[nodiscard]] QString countSaid() const;
    [[nodiscard]] QString unreadSaid() const;
    void open(const QModelIndex& index);
    [[nodiscard]] std::optional<UnitId> chosen() const;
    void choose(const std::optional<UnitId>& unit);

    RecordBook& m_book;
    FleetReviewer& m_reviewer;
    const Theme& m_theme;
    FleetModel* m_fleet;
    FleetFilter* m_filter;
    bool m_isStale = true; ///< units changed since their lines were read
    FleetWishes* m_wishes;
    QLabel* m_state;
    QProgressBar* m_progress;
    QPushButton* m_stop;
    QTableView* m_table;
    QLabel* m_empty;
};

} // namespace padside

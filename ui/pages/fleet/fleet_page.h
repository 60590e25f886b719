// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/store/record_reader.h" // before id.h, for moc
#include "ui/models/fleet_filter.h"
#include "ui/models/fleet_model.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QSplitter;
class QTableView;

namespace padside {

struct Theme;
class FleetFieldView;
class FleetReviewer;
class FleetWishes;
class RecordBook;

/// All units of the file, in a field of what a failure would cost and how likely it is, and in a table, the gravest
/// first: where to begin when one has many of them. What is chosen in one is chosen in the other.
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
    void resizeEvent(QResizeEvent* event) override;

private:
    void makeLayout();
    void makeTable();
    void makeField();
    [[nodiscard]] QWidget* fieldPanel();
    void fillField(); ///< with the units that the table shows
    [[nodiscard]] QString fieldSentence(const UnitId& unit) const;
    void fitTable(); ///< to the letters and sizes that are worn
    void fitSentence(); ///< room for the lines of the sentence about the field
    void placeField(); ///< beside the table or above it, as there is room
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
    QSplitter* m_both; ///< field and table
    FleetFieldView* m_field;
    QComboBox* m_within; ///< the time looked at
    QLabel* m_fieldSaid;
    QTableView* m_table;
    QLabel* m_empty;
};

} // namespace padside

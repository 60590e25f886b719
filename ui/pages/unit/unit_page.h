// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/visit.h"
#include "ui/pages/unit/unit_snapshot.h"

#include <QWidget>

class QLabel;
class QListView;
class QModelIndex;
class QStackedLayout;
class QTabWidget;
class QUndoStack;

namespace padside {

struct Theme;
class CutawayView;
class FindingTreeModel;
class FindingView;
class FlagActions;
class HistoryPanel;
class MeasuredPanel;
class LedgerPanel;
class NextModel;
class RecordBook;
class UnitHeader;
class VisitActions;
class WorthPanel;

/// One unit: who it is, the opened unit with the condition of its parts, what goes next and why, what was found part by
/// part, and its history.
class UnitPage : public QWidget
{
    Q_OBJECT
public:
    /// `steps` takes what is changed here, so that it can be undone.
    UnitPage(RecordBook& book, QUndoStack& steps, const Theme& theme, QWidget* parent = nullptr);

    /// Reads the unit and shows it. If it can't be read, RecordBook::failed says why and the page says that it shows
    /// nothing.
    void showUnit(padside::UnitId unit);
    [[nodiscard]] UnitId unit() const { return m_unit; }

    /// For a window that is about to open: reading and laying out a unit takes longer than all the rest of it, so until
    /// begin() the page only notes which unit it is to show.
    void putOff();
    void begin();

protected:
    void showEvent(QShowEvent* event) override;

Q_SIGNALS:
    void visitRequested(padside::VisitId visit);
    void startVisitRequested(padside::UnitId unit, padside::VisitReason reason);
    void summaryRequested(padside::VisitId visit);
    void historyPaperRequested(padside::UnitId unit);
    void acknowledged(const padside::Acknowledgement& acknowledgement); ///< a flag, by this person, with a reason
    void acknowledgementTakenBack(const padside::Acknowledgement& acknowledgement);
    void ownerHistoryRequested(padside::UnitId unit);

private:
    void makeWidgets();
    [[nodiscard]] QWidget* drawingPanel(QLabel* heading);
    [[nodiscard]] QWidget* nextPanel();
    [[nodiscard]] QWidget* findingsPanel();
    void connectWidgets();
    [[nodiscard]] bool read(UnitId unit);
    void refresh(UnitId unit);
    void showSnapshot();
    void goToZone(ZoneId zone);
    void zoneChosen(ZoneId zone);
    void takeBack(AcknowledgementId id);

    RecordBook& m_book;
    const Theme& m_theme;
    UnitId m_unit;
    bool m_putOff = false;
    bool m_isStale = false; ///< the unit changed while the page was hidden
    UnitSnapshotPtr m_snapshot;

    QStackedLayout* m_stack;
    QLabel* m_nothing;
    UnitHeader* m_header;
    VisitActions* m_actions;
    CutawayView* m_cutaway;
    NextModel* m_nextModel;
    QListView* m_next;
    FlagActions* m_flagActions = nullptr;
    QTabWidget* m_tabs;
    FindingTreeModel* m_findingModel;
    FindingView* m_findings;
    HistoryPanel* m_history;
    MeasuredPanel* m_measured;
    LedgerPanel* m_ledger;
    WorthPanel* m_worth;
};

} // namespace padside

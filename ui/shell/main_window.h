// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/visit.h"

#include <QMainWindow>

class QAction;
class QStackedWidget;

namespace padside {

struct Look;
struct Theme;
class MessageLine;
class RecordBook;
class SummaryPage;
class UnitListPanel;
class UnitPage;
class VisitPage;

/// The window: the list of units at the left, and beside it a unit's page, an open visit, or a visit's summary.
class MainWindow : public QMainWindow
{
    Q_OBJECT
public:
    MainWindow(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);

    void showUnit(UnitId unit);
    void showVisit(VisitId visit);
    void showSummary(UnitId unit, VisitId visit);
    void startVisit(UnitId unit, VisitReason reason);

Q_SIGNALS:
    void openFileRequested();
    void backupRequested();
    void lookRequested(const padside::Look& look);

private:
    void makeMenus();
    void makeEmptyPage();
    void startVisitOfSelected(VisitReason reason);

    RecordBook& m_book;
    const Theme& m_theme;
    UnitListPanel* m_units;
    QStackedWidget* m_pages;
    UnitPage* m_unitPage;
    VisitPage* m_visitPage;
    SummaryPage* m_summaryPage;
    QWidget* m_emptyPage = nullptr;
    MessageLine* m_message;
};

} // namespace padside

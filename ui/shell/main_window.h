// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/visit.h"
#include "ui/models/long_work.h"
#include "ui/shell/edit_menu.h"
#include "ui/shell/place.h"

#include <QMainWindow>

class QStackedWidget;
class QUndoStack;

namespace padside {

struct Look;
struct Theme;
class MessageLine;
class RecordBook;
class FleetPage;
class FleetReviewer;
class SeasonPage;
class SetupMenu;
class PrintPage;
class TrackPage;
class UnitListPanel;
class UnitPage;
class VisitPage;
class WorkLine;

/// The window: the list of units at the left, and beside it a unit's page, an open visit, or a visit's summary.
class MainWindow : public QMainWindow
{
    Q_OBJECT
public:
    MainWindow(RecordBook& book, const Theme& theme, QWidget* parent = nullptr);
    ~MainWindow() override;

    void showUnit(UnitId unit);
    void showVisit(VisitId visit);
    void showSummary(UnitId unit, VisitId visit);
    void showHistoryPaper(UnitId unit);
    void showOwnerHistory(UnitId unit);
    void showSeason();
    void showFleet();
    void showTrack(bool rates = false); ///< the track record, or the rates beside it
    void startVisit(UnitId unit, VisitReason reason);

    /// Does long work beside the window: shown at its foot while it goes on, with what came of it said at the end.
    void doLongWork(const QString& name, LongWork::Work work);

    [[nodiscard]] QString file() const; ///< the record file shown
    [[nodiscard]] std::optional<Place> place() const; ///< empty where no unit is shown
    /// Goes there again; what is no longer there leaves the window where it is.
    void goTo(const Place& place);

Q_SIGNALS:
    void openFileRequested();
    void sampleRequested();
    void backupRequested();
    void lookRequested(const padside::Look& look);
    void preferencesRequested();
    void catalogueChanged(); ///< kept in the file; the window is to be made anew with it

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void makeMenus();
    [[nodiscard]] EditMenu::Steps stepsOfNoVisit();
    void makeWelcomePage();
    void showWelcome();
    void followUnits(); ///< units came or went
    /// Only the page in front asks for room: a wide one behind it would squeeze the list of units.
    void giveRoom(int pageInFront);
    /// Pages that come later are made when they are first wanted, so that the window opens sooner; that of a visit once
    /// the unit's page is there.
    void makeVisitPage();
    [[nodiscard]] PrintPage& printPage();
    void makeSeasonPage();
    void makeFleetPage();
    void makeTrackPage();
    void leavePaper();
    void startVisitOfSelected(VisitReason reason);

    RecordBook& m_book;
    const Theme& m_theme;
    QUndoStack* m_undo; ///< of all that is no visit: setting up, moving trips, costs; a visit has its own
    UnitListPanel* m_units;
    QStackedWidget* m_pages;
    UnitPage* m_unitPage;
    VisitPage* m_visitPage = nullptr;
    PrintPage* m_printPage = nullptr;
    FleetReviewer* m_fleet;
    EditMenu* m_edit = nullptr;
    SetupMenu* m_setup;
    SeasonPage* m_seasonPage = nullptr;
    FleetPage* m_fleetPage = nullptr;
    TrackPage* m_trackPage = nullptr;
    bool m_begun = false; ///< the first frame is on the screen, or nearly
    bool m_paperOfSeason = false; ///< the paper shown came from the season page
    QWidget* m_welcomePage = nullptr;
    MessageLine* m_message;
    WorkLine* m_work;
};

} // namespace padside

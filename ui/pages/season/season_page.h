// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h" // before id.h, for moc
#include "core/record/visit.h"
#include "ui/drawing/season_board.h"
#ifndef Q_MOC_RUN // moc 6.4 stumbles over the concepts below
#include "ui/pages/season/move_trip_command.h"
#include "ui/pages/season/moved_trips.h"
#include "ui/pages/season/season_plan.h"
#include "ui/pages/season/season_words.h"
#include "ui/paper/sheet.h"
#endif

#include <QPointer>
#include <QUndoStack>
#include <QWidget>

class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QStackedWidget;
class QTextBrowser;
class QUrl;

namespace padside {

struct Theme;
class FleetReviewer;
class RecordBook;
class SeasonBoardView;

/// What is due over the coming year, as trips on a board of weeks; beside it the chosen trip in full. Trips can be
/// moved to another day, seeing what that costs, or kept on theirs; they are where visits start and sheets for the road
/// are printed.
class SeasonPage : public QWidget
{
    Q_OBJECT
public:
    /// Days chosen for trips go to `undo`.
    SeasonPage(RecordBook& book, FleetReviewer& fleet, QUndoStack& undo, const Theme& theme, QWidget* parent = nullptr);
    ~SeasonPage() override; ///< takes its moves off the stack

    /// Brings the page up to date; call it when the page is shown.
    void refresh();

    [[nodiscard]] const SeasonPlan& plan() const { return m_plan; }

Q_SIGNALS:
    void startVisitRequested(const padside::UnitId& unit, padside::VisitReason reason);
    void unitRequested(const padside::UnitId& unit);
    void sheetRequested(const padside::Sheet& sheet);

protected:
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    /// A trip by what it is, not where it stands.
    struct Chosen
    {
        SiteId site;
        Date on{};
    };

    void makeLayout();
    void connectParts();
    void takeFleet();
    void chooseFirst(); ///< of the next trips the one that presses most, so that the page begins with what to do
    void showBoard();
    void sayState();
    void showTrip();
    void showList(QPushButton& wanted, bool on); ///< in place of the trip
    void showOrders();
    void showOverdue();
    void showHtml(const QString& html);
    void choose(const BoardPlace& place);
    void showCost(const QString& said); ///< empty: what the marks mean instead
    void sayCost(const BoardPlace& place, Date to);
    void moveTrip(const BoardPlace& place, Date to);
    void keepOrLetMove(); ///< the chosen trip's day
    void letMove(); ///< its day is worked out again
    void choosePlan(const QString& name, TripMove move); ///< days chosen anew, as a step that can be undone
    bool applyMoves(SiteId site, const std::vector<MovedTrip>& moves, Date on);
    void followLink(const QUrl& url);
    void followListLink(const QUrl& url, UnitId unit);
    [[nodiscard]] bool isListShown() const;
    void requestDaySheet();
    void requestFieldSheet(UnitId unit);
    [[nodiscard]] const SiteSeason& siteIn(std::size_t row) const;
    [[nodiscard]] const SiteSeason* chosenSite() const;
    [[nodiscard]] std::optional<std::size_t> chosenTrip() const;

    RecordBook& m_book;
    FleetReviewer& m_fleet;
    const Theme& m_theme;
    MovedTrips m_moved;
    SeasonPlan m_plan;
    SeasonWords m_words;
    QPointer<QUndoStack> m_undo; ///< a window may drop it before its pages
    std::vector<std::size_t> m_rows; ///< the site in each row of the board
    std::optional<Chosen> m_chosen;
    QString m_shownHtml;
    QLineEdit* m_search;
    QLabel* m_state;
    QProgressBar* m_progress;
    QPushButton* m_stop;
    SeasonBoardView* m_board;
    QLabel* m_empty;
    QLabel* m_cost;
    QStackedWidget* m_underBoard; ///< what the marks mean, or what a move costs
    std::vector<QWidget*> m_aboutBoard; ///< means nothing without a board
    QWidget* m_tripSide;
    QTextBrowser* m_trip;
    QPushButton* m_overdue;
    QPushButton* m_orders;
    QPushButton* m_daySheet;
    QPushButton* m_keep; ///< the day worked out; and the way back
    QPushButton* m_back; ///< from a day moved to
};

} // namespace padside

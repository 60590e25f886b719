// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/move_risk.h"
#include "core/review/overdue_checks.h"
#include "core/review/parts_to_order.h"
#include "core/store/drafts.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/speaker.h"
#include "ui/pages/season/season_board_view.h"
#include "ui/pages/season/season_page.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTextBrowser>
#include <QUndoStack>

#include <algorithm>

namespace padside::test {

namespace {

class SeasonPageTest : public WindowFixture
{
protected:
    SeasonPageTest() { open(); }

    /// A page as after a start of the program.
    void open()
    {
        m_page.reset();
        m_fleet = std::make_unique<FleetReviewer>(*m_book);
        m_page = std::make_unique<SeasonPage>(*m_book, *m_fleet, m_undo, Theme::light());
        m_page->resize(1280, 760);
        m_page->show();
        m_page->refresh();
        EXPECT_TRUE(QTest::qWaitFor([this] { return !m_fleet->isRunning(); }, 30'000));
    }

    [[nodiscard]] SeasonBoardView& board() const { return *m_page->findChild<SeasonBoardView*>(); }
    [[nodiscard]] QString shownTrip() const { return m_page->findChild<QTextBrowser*>()->toPlainText(); }
    [[nodiscard]] QString cost() const { return m_page->findChild<QLabel*>(QStringLiteral("cost"))->text(); }
    [[nodiscard]] QPushButton& keep() const { return *m_page->findChild<QPushButton*>(QStringLiteral("keepDay")); }
    [[nodiscard]] const SiteSeason& siteOf(const BoardPlace& place) const { return m_page->plan().sites()[place.row]; }
    [[nodiscard]] Date chosenDay() const
    {
        const BoardPlace place = board().selected().value();
        return siteOf(place).trips[place.trip].on;
    }

    /// A trip that has checks and isn't due at once.
    void chooseALaterTrip() const
    {
        for (std::size_t row = 0; row < m_page->plan().sites().size(); ++row) {
            const auto& trips = m_page->plan().sites()[row].trips;
            for (std::size_t trip = 0; trip < trips.size(); ++trip) {
                if (trips[trip].on > m_book->today() + std::chrono::days(30))
                    return board().select({row, trip});
            }
        }
        FAIL() << "the sample has no later trip";
    }

    QUndoStack m_undo;
    std::unique_ptr<FleetReviewer> m_fleet;
    std::unique_ptr<SeasonPage> m_page;
};

} // namespace

TEST_F(SeasonPageTest, EverySiteHasALineAndEveryCheckStandsOnOneTrip)
{
    std::size_t onTrips = 0;
    std::size_t inReviews = 0;
    for (const SiteSeason& site : m_page->plan().sites()) {
        for (const SeasonTrip& trip : site.trips)
            onTrips += trip.checks.size();
        for (const auto& unit : site.units)
            inReviews += unit->review.checks.size();
    }
    EXPECT_GT(inReviews, 0);
    EXPECT_EQ(onTrips, inReviews);
    EXPECT_EQ(board().board().rows.size(), m_page->plan().sites().size());
}

TEST_F(SeasonPageTest, BeginsWithTheNextTrip)
{
    ASSERT_TRUE(board().selected());
    const SiteSeason& site = siteOf(*board().selected());
    EXPECT_TRUE(shownTrip().contains(QString::fromStdString(site.site.name)));
    for (const SiteSeason& other : m_page->plan().sites()) {
        for (const SeasonTrip& trip : other.trips)
            EXPECT_GE(trip.on, chosenDay());
    }
}

TEST_F(SeasonPageTest, ChoosingATripShowsItsUnitsChecksAndReasons)
{
    board().setFocus();
    QTest::keyClick(&board(), Qt::Key_Home);
    ASSERT_TRUE(board().selected());
    const SiteSeason& site = siteOf(*board().selected());
    const SeasonTrip& trip = site.trips[board().selected()->trip];
    EXPECT_TRUE(shownTrip().contains(QString::fromStdString(site.site.name)));
    for (const SeasonCheck& check : trip.checks) {
        EXPECT_TRUE(shownTrip().contains(QString::fromStdString(check.unit->unit.tag)));
        EXPECT_TRUE(shownTrip().contains(m_book->speaker().said(check.check().why)));
    }
    EXPECT_TRUE(board().accessibleDescription().startsWith(QString::fromStdString(site.site.name)));
}

TEST_F(SeasonPageTest, KeysMoveATripOnlyWhenItIsPutDownAndSayTheCostBefore)
{
    chooseALaterTrip();
    const Date before = chosenDay();
    QTest::keyClick(&board(), Qt::Key_Right, Qt::AltModifier);
    ASSERT_TRUE(board().move());
    EXPECT_EQ(board().move()->to, before + std::chrono::days(7));
    EXPECT_FALSE(cost().isEmpty());
    EXPECT_EQ(board().accessibleDescription(), cost());
    QTest::keyClick(&board(), Qt::Key_Escape);
    EXPECT_FALSE(board().move());
    EXPECT_TRUE(cost().isEmpty());
    EXPECT_EQ(chosenDay(), before);

    QTest::keyClick(&board(), Qt::Key_Left, Qt::AltModifier | Qt::ShiftModifier);
    QTest::keyClick(&board(), Qt::Key_Return);
    EXPECT_EQ(chosenDay(), before - std::chrono::days(1));
}

TEST_F(SeasonPageTest, AMovedTripIsThereAfterARestartAndCanBeMovedBack)
{
    chooseALaterTrip();
    const Date before = chosenDay();
    const SiteId site = siteOf(*board().selected()).site.id;
    QTest::keyClick(&board(), Qt::Key_Left, Qt::AltModifier | Qt::ShiftModifier);
    QTest::keyClick(&board(), Qt::Key_Return);

    open();
    const SiteSeason* season = m_page->plan().site(site);
    const auto trip = SeasonPlan::tripOn(*season, before - std::chrono::days(1));
    ASSERT_TRUE(trip);
    ASSERT_TRUE(season->trips[*trip].moved);
    EXPECT_EQ(season->trips[*trip].moved->insteadOf, before);

    const auto row = static_cast<std::size_t>(season - m_page->plan().sites().data());
    board().select({row, *trip});
    auto* back = m_page->findChild<QPushButton*>(QStringLiteral("moveBack"));
    ASSERT_TRUE(back->isVisible());
    back->click();
    EXPECT_EQ(chosenDay(), before);
    EXPECT_FALSE(back->isVisible());
    EXPECT_FALSE(m_store->drafts().text(QStringLiteral("season/") + QString::fromStdString(site.text())));
}

TEST_F(SeasonPageTest, ADayIsKeptByKeyStaysAfterARestartAndIsLetGoByButton)
{
    chooseALaterTrip();
    const Date day = chosenDay();
    const SiteId site = siteOf(*board().selected()).site.id;
    const QString file = QStringLiteral("season/") + QString::fromStdString(site.text());
    const std::vector<PlannedTrip> before = m_page->plan().site(site)->planned;
    EXPECT_EQ(keep().text(), QStringLiteral("&Keep this day"));
    QTest::keyClick(&board(), Qt::Key_K);
    EXPECT_EQ(chosenDay(), day);
    EXPECT_EQ(keep().text(), QStringLiteral("Let it &move again"));
    EXPECT_TRUE(shownTrip().contains(QStringLiteral("This day is kept, whatever is found until then.")));
    EXPECT_TRUE(board().accessibleDescription().contains(QStringLiteral("This day is kept")));
    const BoardPlace place = *board().selected();
    EXPECT_TRUE(board().board().rows[place.row].trips[place.trip].moved) << "it has its foot on the board";
    EXPECT_TRUE(m_store->drafts().text(file));

    open();
    const SiteSeason& kept = *m_page->plan().site(site);
    const auto trip = SeasonPlan::tripOn(kept, day);
    ASSERT_TRUE(trip && kept.trips[*trip].moved);
    EXPECT_TRUE(kept.trips[*trip].moved->isKept());
    board().select({static_cast<std::size_t>(&kept - m_page->plan().sites().data()), *trip});
    ASSERT_TRUE(keep().isVisible());
    keep().click();
    EXPECT_EQ(m_page->plan().site(site)->planned, before) << "keeping a day changed no other trip";
    EXPECT_EQ(chosenDay(), day);
    EXPECT_EQ(keep().text(), QStringLiteral("&Keep this day"));
    EXPECT_FALSE(m_store->drafts().text(file));
}

TEST_F(SeasonPageTest, KeepingADayAndLettingItGoAreUndoneByName)
{
    chooseALaterTrip();
    const QString name = QString::fromStdString(siteOf(*board().selected()).site.name);
    const auto isKept = [this] {
        const BoardPlace place = *board().selected();
        return siteOf(place).trips[place.trip].moved.has_value();
    };
    keep().click();
    EXPECT_TRUE(isKept());
    EXPECT_EQ(m_undo.undoText(), QStringLiteral("Keep the day of the trip to %1").arg(name));
    keep().click();
    EXPECT_FALSE(isKept());
    EXPECT_EQ(m_undo.undoText(), QStringLiteral("Let the trip to %1 move again").arg(name));
    m_undo.undo();
    EXPECT_TRUE(isKept());
    m_undo.undo();
    EXPECT_FALSE(isKept());
    m_undo.redo();
    EXPECT_TRUE(isKept());
}

TEST_F(SeasonPageTest, ATripMovedByHandIsSaidToStayAlreadyWhenItIsAskedToBeKept)
{
    chooseALaterTrip();
    QTest::keyClick(&board(), Qt::Key_Left, Qt::AltModifier | Qt::ShiftModifier);
    QTest::keyClick(&board(), Qt::Key_Return);
    EXPECT_FALSE(keep().isVisible()) << "the way back to the day worked out stands there";
    const int steps = m_undo.count();
    QTest::keyClick(&board(), Qt::Key_K);
    EXPECT_EQ(m_undo.count(), steps);
    EXPECT_EQ(cost(), QStringLiteral("This day was chosen by hand, so it stays as it is."));
    EXPECT_EQ(board().accessibleDescription(), cost());
}

TEST_F(SeasonPageTest, TheButtonThatKeepsADayIsReachedByTabFromTheBoard)
{
    chooseALaterTrip();
    m_page->activateWindow();
    board().setFocus();
    for (int i = 0; i < 20 && !keep().hasFocus(); ++i)
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    ASSERT_TRUE(keep().hasFocus());
    QTest::keyClick(&keep(), Qt::Key_Space);
    EXPECT_EQ(keep().text(), QStringLiteral("Let it &move again"));
    EXPECT_TRUE(keep().hasFocus()) << "the way back is under the same finger";
}

TEST_F(SeasonPageTest, UndoAndRedoMoveTheTripAndTheFileFollows)
{
    chooseALaterTrip();
    const Date before = chosenDay();
    const SiteSeason& site = siteOf(*board().selected());
    const QString name = QString::fromStdString(site.site.name);
    const QString key = QStringLiteral("season/") + QString::fromStdString(site.site.id.text());
    QTest::keyClick(&board(), Qt::Key_Left, Qt::AltModifier | Qt::ShiftModifier);
    QTest::keyClick(&board(), Qt::Key_Return);
    const auto kept = m_store->drafts().text(key);
    ASSERT_TRUE(kept);
    EXPECT_EQ(m_undo.undoText(), QStringLiteral("Move trip to %1").arg(name));
    m_undo.undo();
    EXPECT_EQ(chosenDay(), before);
    EXPECT_FALSE(m_store->drafts().text(key));
    m_undo.redo();
    EXPECT_EQ(chosenDay(), before - std::chrono::days(1));
    EXPECT_EQ(m_store->drafts().text(key), kept);
}

TEST_F(SeasonPageTest, ATripIsDraggedWithTheMouse)
{
    chooseALaterTrip();
    const Date before = chosenDay();
    const BoardPlace place = *board().selected();
    const QPoint at = board().markNow(place).center().toPoint();
    const int week = static_cast<int>(board().geometryNow().week);
    QTest::mousePress(board().viewport(), Qt::LeftButton, {}, at);
    QTest::mouseMove(board().viewport(), at - QPoint(2 * week, 0));
    ASSERT_TRUE(board().move());
    EXPECT_FALSE(cost().isEmpty());
    const Date to = board().move()->to;
    EXPECT_LT(to, before - std::chrono::days(7));
    QTest::mouseRelease(board().viewport(), Qt::LeftButton, {}, at - QPoint(2 * week, 0));
    EXPECT_EQ(chosenDay(), to);
}

TEST_F(SeasonPageTest, NoTripGoesToTheDayBeforeToday)
{
    chooseALaterTrip();
    for (int i = 0; i < 60; ++i)
        QTest::keyClick(&board(), Qt::Key_Left, Qt::AltModifier);
    ASSERT_TRUE(board().move());
    EXPECT_EQ(board().move()->to, m_book->today());
}

TEST_F(SeasonPageTest, AVisitIsStartedFromTheTripWithTheReasonItHas)
{
    chooseALaterTrip();
    const BoardPlace place = *board().selected();
    const SeasonTrip& trip = siteOf(place).trips[place.trip];
    const auto unit = trip.units().front();
    QSignalSpy started(m_page.get(), &SeasonPage::startVisitRequested);
    auto* browser = m_page->findChild<QTextBrowser*>();
    Q_EMIT browser->anchorClicked(QUrl(QStringLiteral("start:") + QString::fromStdString(unit->unit.id.text())));
    ASSERT_EQ(started.size(), 1);
    EXPECT_EQ(started[0][0].value<UnitId>(), unit->unit.id);
    EXPECT_EQ(started[0][1].value<VisitReason>(), reasonOnTrip(trip, *unit));
}

TEST_F(SeasonPageTest, TheSheetsOfATripAreAskedForByButtonAndLink)
{
    chooseALaterTrip();
    const BoardPlace place = *board().selected();
    std::vector<Sheet> sheets;
    QObject::connect(m_page.get(), &SeasonPage::sheetRequested, m_page.get(),
                     [&](const Sheet& sheet) { sheets.push_back(sheet); });
    m_page->findChild<QPushButton*>(QStringLiteral("daySheet"))->click();
    const auto unit = siteOf(place).trips[place.trip].units().front();
    Q_EMIT m_page->findChild<QTextBrowser*>()->anchorClicked(
        QUrl(QStringLiteral("sheet:") + QString::fromStdString(unit->unit.id.text())));
    ASSERT_EQ(sheets.size(), 2);
    for (const Sheet& sheet : sheets) {
        EXPECT_TRUE(sheet.fileName.endsWith(QStringLiteral(".pdf")));
        EXPECT_FALSE(sheet.lay(QStringLiteral("Breakwater"), PaperSize::letter).pages.empty());
    }
}

TEST_F(SeasonPageTest, TheSearchNarrowsTheBoardToTheSitesThatMatch)
{
    const QString name = QString::fromStdString(m_page->plan().sites().back().site.name);
    auto* search = m_page->findChild<QLineEdit*>(QStringLiteral("searchSite"));
    search->setText(name);
    for (const BoardRow& row : board().board().rows)
        EXPECT_TRUE(row.site.contains(name));
    EXPECT_FALSE(board().board().rows.empty());
    search->setText(QStringLiteral("no such site"));
    EXPECT_TRUE(board().board().rows.empty());
}

TEST_F(SeasonPageTest, EveryTripIsReachedByKeysInOrderOfDate)
{
    board().setFocus();
    QTest::keyClick(&board(), Qt::Key_Home);
    std::size_t met = 1;
    Date last = chosenDay();
    for (std::size_t i = 1; i < m_page->plan().tripCount(); ++i) {
        const auto before = board().selected();
        QTest::keyClick(&board(), Qt::Key_Right, Qt::ControlModifier);
        met += board().selected() != before ? 1U : 0U;
        EXPECT_GE(chosenDay(), last);
        last = chosenDay();
    }
    EXPECT_EQ(met, m_page->plan().tripCount());
}

TEST_F(SeasonPageTest, StoppedItSaysWhatIsMissing)
{
    m_fleet->start();
    m_fleet->cancel();
    // Nothing of the new review came in, so the old one, which was whole, still stands.
    EXPECT_TRUE(m_fleet->fleet()->isWhole());
    open();
    m_page.reset();
    m_fleet = std::make_unique<FleetReviewer>(*m_book);
    m_page = std::make_unique<SeasonPage>(*m_book, *m_fleet, m_undo, Theme::light());
    m_page->show();
    m_page->refresh();
    auto* stop = m_page->findChild<QPushButton*>(QStringLiteral("stop"));
    EXPECT_TRUE(stop->isVisible());
    EXPECT_EQ(m_page->findChild<QLabel*>(QStringLiteral("state"))->text(), QStringLiteral("Reading the record…"));
    stop->click();
    EXPECT_FALSE(m_fleet->isRunning());
}

TEST_F(SeasonPageTest, MovingATripLaterSaysWhatThatRisksAndTheChosenDayKeepsSayingIt)
{
    std::optional<BoardPlace> risky;
    for (std::size_t row = 0; row < m_page->plan().sites().size() && !risky; ++row) {
        const SiteSeason& site = m_page->plan().sites()[row];
        for (std::size_t trip = 0; trip < site.trips.size() && !risky; ++trip) {
            const Date to = site.trips[trip].on + std::chrono::days(70);
            if (riskOfMove(site, trip, site.costOfMove(trip, to)).worst)
                risky = BoardPlace{row, trip};
        }
    }
    ASSERT_TRUE(risky) << "the sample has units at risk";
    board().select(*risky);
    for (int week = 0; week < 10; ++week)
        QTest::keyClick(&board(), Qt::Key_Right, Qt::AltModifier);
    EXPECT_TRUE(
        cost().contains(QStringLiteral("The chance that something is already spent when you look at it rises from")))
        << cost().toStdString();
    QTest::keyClick(&board(), Qt::Key_Return);
    EXPECT_TRUE(shownTrip().contains(
        QStringLiteral("The chance that something is already spent when you look at it rises from")));
}

TEST_F(SeasonPageTest, ThePartsToOrderStandInPlaceOfTheTripUntilATripIsChosen)
{
    auto* orders = m_page->findChild<QPushButton*>(QStringLiteral("orders"));
    const QString trip = shownTrip();
    orders->click();
    EXPECT_TRUE(shownTrip().startsWith(QStringLiteral("Parts to order")));
    const auto parts = partsToOrder(m_fleet->fleet()->units, m_book->catalogue());
    ASSERT_FALSE(parts.empty()) << "the sample has units at risk";
    for (const PartToOrder& part : parts)
        EXPECT_TRUE(shownTrip().contains(m_book->speaker().said(part.why)));
    QSignalSpy unit(m_page.get(), &SeasonPage::unitRequested);
    Q_EMIT m_page->findChild<QTextBrowser*>()->anchorClicked(
        QUrl(QStringLiteral("unit:") + QString::fromStdString(parts[0].unit->unit.id.text())));
    EXPECT_EQ(unit.size(), 1);
    orders->click();
    EXPECT_EQ(shownTrip(), trip);
    orders->click();
    chooseALaterTrip();
    EXPECT_FALSE(orders->isChecked());
}

TEST_F(SeasonPageTest, WhatIsOverdueIsCountedAndListedByUnitWithTheWayToItsTrip)
{
    const auto fleet = m_fleet->fleet();
    const auto units = overdueUnits(fleet->units, fleet->today);
    ASSERT_FALSE(units.empty()) << "the sample has overdue checks";
    std::size_t checks = 0;
    for (const OverdueUnit& unit : units)
        checks += unit.checks.size();
    EXPECT_EQ(overdueCount(fleet->units, fleet->today).checks, checks);
    EXPECT_TRUE(m_page->findChild<QLabel*>(QStringLiteral("state"))
                    ->text()
                    .contains(QStringLiteral("Overdue: %1 check").arg(checks)));

    auto* overdue = m_page->findChild<QPushButton*>(QStringLiteral("overdue"));
    auto* orders = m_page->findChild<QPushButton*>(QStringLiteral("orders"));
    orders->click();
    overdue->click();
    EXPECT_FALSE(orders->isChecked()) << "one list at a time";
    EXPECT_TRUE(shownTrip().startsWith(QStringLiteral("Overdue checks")));
    int last = 0;
    for (const OverdueUnit& unit : units) {
        const auto at = shownTrip().indexOf(QString::fromStdString(unit.unit->unit.tag));
        EXPECT_GT(at, last) << "what presses most comes first";
        last = static_cast<int>(at);
        EXPECT_TRUE(shownTrip().contains(m_book->speaker().said(unit.checks.front().check().why)));
        for (const SeasonCheck& check : unit.checks)
            EXPECT_TRUE(shownTrip().contains(m_book->speaker().said(check.check().what)));
    }

    m_page->findChild<QLineEdit*>(QStringLiteral("searchSite"))->setText(QStringLiteral("no such site"));
    Q_EMIT m_page->findChild<QTextBrowser*>()->anchorClicked(
        QUrl(QStringLiteral("trip:") + QString::fromStdString(units[0].unit->unit.id.text())));
    EXPECT_FALSE(overdue->isChecked());
    ASSERT_TRUE(board().selected());
    const BoardPlace place = *board().selected();
    const SeasonTrip& trip = siteOf(place).trips[place.trip];
    EXPECT_TRUE(std::ranges::any_of(trip.checks, [&](const SeasonCheck& check) {
        return check.unit == units[0].unit && check.index == units[0].checks[0].index;
    }));
}

TEST_F(SeasonPageTest, OfTheTripsDueAtOnceItBeginsWithTheOneThatPressesMost)
{
    const auto pressure = [this](const SeasonTrip& trip) {
        double most = 0;
        for (const SeasonCheck& check : trip.checks)
            most = std::max(most, pressureOf(check, m_book->today()));
        return most;
    };
    const BoardPlace place = *board().selected();
    const double chosen = pressure(siteOf(place).trips[place.trip]);
    for (const SiteSeason& site : m_page->plan().sites()) {
        for (const SeasonTrip& trip : site.trips)
            EXPECT_TRUE(trip.on > chosenDay() || pressure(trip) <= chosen) << site.site.name;
    }
}

} // namespace padside::test

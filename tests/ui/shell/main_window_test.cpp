// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/visit_book.h"
#include "tests/ui/shell/window_fixture.h"
#include "ui/drawing/theme.h"
#include "ui/pages/fleet/fleet_page.h"
#include "ui/pages/paper/print_page.h"
#include "ui/pages/season/season_page.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/message_line.h"
#include "ui/shell/unit_list_panel.h"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTest>
#include <QThread>

#include <atomic>

namespace padside::test {

namespace {

/// A unit that has no open visit.
UnitId idleUnit(Store& store, const std::vector<UnitId>& units)
{
    for (const UnitId& unit : units) {
        if (!store.visits().openVisitOf(unit))
            return unit;
    }
    throw std::logic_error("every unit has an open visit");
}

} // namespace

class MainWindowTest : public WindowFixture
{
protected:
    MainWindowTest()
        : m_window(*m_book, Theme::light())
    {
        m_window.resize(1280, 800);
        m_window.show();
    }

    MainWindow m_window;
};

TEST_F(MainWindowTest, OpensOnTheFirstUnit)
{
    const auto* page = m_window.findChild<UnitPage*>();
    EXPECT_TRUE(page->isVisible());
    EXPECT_EQ(page->unit(), units().front());
}

TEST_F(MainWindowTest, TheListOfUnitsKeepsItsWidthWhateverPageWasInFront)
{
    const auto* list = m_window.findChild<QWidget*>(QStringLiteral("unitList"));
    const int before = list->width();
    const std::vector<std::function<void()>> elsewhere{
        [this] { m_window.showFleet(); }, [this] { m_window.showSeason(); },
        [this] { m_window.startVisit(units().front(), VisitReason::spring); },
        [this] { m_window.showHistoryPaper(units().front()); }};
    for (const auto& go : elsewhere) {
        go();
        QCoreApplication::processEvents();
        m_window.showUnit(units().front());
        QCoreApplication::processEvents();
        EXPECT_EQ(list->width(), before);
    }
}

TEST_F(MainWindowTest, ThePageOfAVisitIsMadeAheadAndAsksForNoRoomUntilItIsInFront)
{
    EXPECT_EQ(m_window.findChild<VisitPage*>(), nullptr) << "the window opens without it";
    const auto* list = m_window.findChild<QWidget*>(QStringLiteral("unitList"));
    const int before = list->width();
    ASSERT_TRUE(QTest::qWaitFor([this] { return m_window.findChild<VisitPage*>() != nullptr; }));
    QCoreApplication::processEvents();
    EXPECT_EQ(m_window.findChild<VisitPage*>()->sizePolicy().horizontalPolicy(), QSizePolicy::Ignored);
    EXPECT_EQ(m_window.width(), 1280);
    EXPECT_EQ(list->width(), before);
}

TEST_F(MainWindowTest, StartingAVisitShowsItAndItResumesWhenAskedAgain)
{
    const UnitId unit = idleUnit(*m_store, units());
    m_window.startVisit(unit, VisitReason::callOut);
    EXPECT_TRUE(m_window.findChild<VisitPage*>()->isVisible());
    EXPECT_FALSE(m_window.findChild<UnitListPanel*>()->isVisible()) << "the visit needs the room";
    const auto open = m_store->visits().openVisitOf(unit);
    ASSERT_TRUE(open.has_value());

    m_window.showUnit(unit);
    m_window.startVisit(unit, VisitReason::spring);
    EXPECT_EQ(m_store->visits().openVisitOf(unit)->id, open->id);
}

TEST_F(MainWindowTest, LeavingAVisitComesBackToItsUnit)
{
    const UnitId unit = idleUnit(*m_store, units());
    m_window.startVisit(unit, VisitReason::fall);
    Q_EMIT m_window.findChild<VisitPage*>()->leaveRequested(unit);
    EXPECT_TRUE(m_window.findChild<UnitPage*>()->isVisible());
    EXPECT_EQ(m_window.findChild<UnitPage*>()->unit(), unit);
    EXPECT_TRUE(m_window.findChild<UnitListPanel*>()->isVisible());
}

TEST_F(MainWindowTest, ClosingAVisitShowsItsSummary)
{
    const UnitId unit = idleUnit(*m_store, units());
    m_window.startVisit(unit, VisitReason::fall);
    const VisitId visit = m_store->visits().openVisitOf(unit)->id;
    m_store->visits().close(visit, m_book->now());
    Q_EMIT m_window.findChild<VisitPage*>()->closed(visit);
    EXPECT_TRUE(m_window.findChild<PrintPage*>()->isVisible());
    Q_EMIT m_window.findChild<PrintPage*>()->left();
    EXPECT_TRUE(m_window.findChild<UnitPage*>()->isVisible());
}

TEST_F(MainWindowTest, AUnitChosenInTheFleetOpensItsPage)
{
    m_window.showFleet();
    auto& fleet = *m_window.findChild<FleetPage*>();
    EXPECT_TRUE(fleet.isVisible());
    const UnitId wanted = units().back();
    Q_EMIT fleet.unitRequested(wanted);
    EXPECT_FALSE(fleet.isVisible());
    EXPECT_EQ(m_window.findChild<UnitPage*>()->unit(), wanted);
    EXPECT_TRUE(m_window.findChild<UnitListPanel*>()->isVisible());
}

TEST_F(MainWindowTest, AFailureIsSaidInALineAndTheWindowGoesOn)
{
    EXPECT_FALSE(m_book->attempt([] {
        throw StoreError(
            Problem{ProblemKind::cannotWrite, {"The disk is full: “{0}” was not written.", {std::string("note")}}});
    }));
    auto* line = m_window.findChild<MessageLine*>();
    EXPECT_TRUE(line->isVisible());
    EXPECT_EQ(line->text(), QStringLiteral("The disk is full: “note” was not written."));
}

TEST_F(MainWindowTest, LongWorkGoesOnBesideTheWindowAndItsEndIsSaid)
{
    std::atomic<bool> mayEnd = false;
    m_window.doLongWork(QStringLiteral("Backup to spare.padside"), [&](const LongWork::Tell& tell) {
        while (!mayEnd && tell(0.5))
            QThread::msleep(1);
        return true;
    });
    auto* line = m_window.findChild<QWidget*>(QStringLiteral("workLine"));
    ASSERT_TRUE(line->isVisibleTo(&m_window));
    EXPECT_EQ(line->findChild<QProgressBar*>()->accessibleName(), QStringLiteral("Backup to spare.padside"));
    m_window.showUnit(*m_window.findChild<UnitListPanel*>()->selected()); // the window answers meanwhile
    mayEnd = true;
    EXPECT_TRUE(QTest::qWaitFor([&] { return !line->isVisibleTo(&m_window); }, 20000));
    EXPECT_TRUE(m_window.findChild<MessageLine*>()->text().contains(QStringLiteral("Backup to spare.padside: done")));
}

TEST_F(MainWindowTest, CancelledWorkSaysSo)
{
    m_window.doLongWork(QStringLiteral("Backup to spare.padside"), [](const LongWork::Tell& tell) {
        while (tell(0.1))
            QThread::msleep(1);
        return false;
    });
    QTest::mouseClick(m_window.findChild<QPushButton*>(QStringLiteral("cancelWork")), Qt::LeftButton);
    auto* line = m_window.findChild<QWidget*>(QStringLiteral("workLine"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !line->isVisibleTo(&m_window); }, 20000));
    EXPECT_TRUE(m_window.findChild<MessageLine*>()->text().contains(QStringLiteral("nothing was left behind")));
}

TEST_F(MainWindowTest, FromTheSeasonAVisitIsStartedAndASheetIsShownWithTheWayBack)
{
    m_window.showSeason();
    auto* season = m_window.findChild<SeasonPage*>();
    ASSERT_TRUE(season->isVisible());
    EXPECT_FALSE(m_window.findChild<UnitListPanel*>()->isVisible()) << "the board needs the room";

    Sheet sheet;
    sheet.fileName = QStringLiteral("a.pdf");
    sheet.lay = [](const QString&, PaperSize size) { return PaperDocument{QStringLiteral("A"), size, {PaperPage{}}}; };
    Q_EMIT season->sheetRequested(sheet);
    EXPECT_TRUE(m_window.findChild<PrintPage*>()->isVisible());
    Q_EMIT m_window.findChild<PrintPage*>()->left();
    EXPECT_TRUE(season->isVisible());

    const UnitId unit = idleUnit(*m_store, units());
    Q_EMIT season->startVisitRequested(unit, VisitReason::callOut);
    EXPECT_TRUE(m_window.findChild<VisitPage*>()->isVisible());
    EXPECT_EQ(m_store->visits().openVisitOf(unit)->reason, VisitReason::callOut);
}

TEST_F(MainWindowTest, EveryControlThatTakesFocusOnTheSeasonPageHasAName)
{
    m_window.showSeason();
    for (const QWidget* widget : m_window.findChild<SeasonPage*>()->findChildren<QWidget*>()) {
        const bool takesFocus = widget->focusPolicy() != Qt::NoFocus && widget->isVisible();
        if (!takesFocus || widget->inherits("QSplitterHandle") || widget->inherits("QScrollBar"))
            continue;
        const bool named = !widget->accessibleName().isEmpty() || !widget->property("text").toString().isEmpty();
        EXPECT_TRUE(named) << widget->metaObject()->className() << " " << widget->objectName().toStdString();
    }
}

TEST_F(MainWindowTest, EveryControlThatTakesFocusHasAName)
{
    for (const QWidget* widget : m_window.findChildren<QWidget*>()) {
        const bool takesFocus = widget->focusPolicy() != Qt::NoFocus && widget->isVisible();
        if (!takesFocus || widget->inherits("QSplitterHandle") || widget->inherits("QScrollBar"))
            continue;
        const bool named = !widget->accessibleName().isEmpty() || !widget->property("text").toString().isEmpty();
        EXPECT_TRUE(named) << widget->metaObject()->className() << " " << widget->objectName().toStdString();
    }
}

} // namespace padside::test

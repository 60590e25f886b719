// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/shell/main_window.h"

#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "ui/drawing/theme.h"
#include "ui/models/acknowledge_command.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/visit_log.h"
#include "ui/models/work_line.h"
#include "ui/pages/fleet/fleet_page.h"
#include "ui/pages/paper/print_page.h"
#include "ui/pages/season/season_page.h"
#include "ui/pages/setup/welcome_page.h"
#include "ui/pages/track/track_page.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/shell/edit_menu.h"
#include "ui/shell/file_drop.h"
#include "ui/shell/key_sheet.h"
#include "ui/shell/message_line.h"
#include "ui/shell/setup_menu.h"
#include "ui/shell/unit_list_panel.h"
#include "ui/shell/view_menu.h"

#include <QFileInfo>
#include <QMenuBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <QUndoStack>
#include <QVBoxLayout>

#include <utility>

namespace padside {

namespace {

constexpr int unitListWidth = 250;

} // namespace

MainWindow::MainWindow(RecordBook& book, const Theme& theme, QWidget* parent)
    : QMainWindow(parent)
    , m_book(book)
    , m_theme(theme)
    , m_undo(new QUndoStack(this))
    , m_units(new UnitListPanel(book, theme))
    , m_pages(new QStackedWidget)
    , m_unitPage(new UnitPage(book, *m_undo, theme))
    , m_fleet(new FleetReviewer(book, this))
    , m_setup(new SetupMenu(
          book, *m_undo, [this] { return m_units->selected(); }, this))
    , m_message(new MessageLine(theme))
    , m_work(new WorkLine)
{
    setWindowTitle(tr("%1[*] – Padside").arg(QFileInfo(book.store().path()).fileName()));
    m_pages->addWidget(m_unitPage);

    auto* splitter = new QSplitter;
    splitter->setObjectName(QStringLiteral("panes"));
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(m_units);
    splitter->addWidget(m_pages);
    splitter->setSizes({unitListWidth, 1000});
    splitter->setStretchFactor(1, 1);
    auto* centre = new QWidget;
    auto* layout = new QVBoxLayout(centre);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(splitter, 1);
    layout->addWidget(m_work);
    layout->addWidget(m_message);
    setCentralWidget(centre);
    makeMenus();

    connect(m_pages, &QStackedWidget::currentChanged, this, &MainWindow::giveRoom);
    connect(&m_book, &RecordBook::failed, this, [this](const QString& sentence) {
        if (m_pages->currentWidget() != m_visitPage) // a visit says it beside the entry
            m_message->say(sentence);
    });
    connect(m_units, &UnitListPanel::unitSelected, this, &MainWindow::showUnit);
    connect(m_unitPage, &UnitPage::visitRequested, this, &MainWindow::showVisit);
    connect(m_unitPage, &UnitPage::startVisitRequested, this, &MainWindow::startVisit);
    connect(m_unitPage, &UnitPage::summaryRequested, this, [this](const VisitId& visit) {
        if (const auto unit = m_units->selected())
            showSummary(*unit, visit);
    });
    connect(m_unitPage, &UnitPage::acknowledged, this, [this](const Acknowledgement& acknowledgement) {
        m_undo->push(new AcknowledgeCommand(m_book, AcknowledgeCommand::Way::acknowledge, acknowledgement));
    });
    connect(m_unitPage, &UnitPage::acknowledgementTakenBack, this, [this](const Acknowledgement& acknowledgement) {
        m_undo->push(new AcknowledgeCommand(m_book, AcknowledgeCommand::Way::takeBack, acknowledgement));
    });
    connect(m_unitPage, &UnitPage::historyPaperRequested, this, &MainWindow::showHistoryPaper);
    connect(m_unitPage, &UnitPage::ownerHistoryRequested, this, &MainWindow::showOwnerHistory);
    connect(m_fleet, &FleetReviewer::failed, m_message, &MessageLine::say);

    const LongWork& work = m_work->work();
    connect(&work, &LongWork::done, this, [this] { m_message->say(tr("%1: done.").arg(m_work->name())); });
    connect(&work, &LongWork::cancelled, this,
            [this] { m_message->say(tr("%1: cancelled; nothing was left behind.").arg(m_work->name())); });
    connect(&work, &LongWork::failed, this,
            [this](const Sentence& why) { m_message->say(m_book.speaker().said(why)); });

    m_setup->attachTo(m_units->list());
    connect(m_setup, &SetupMenu::unitKept, this, &MainWindow::showUnit);
    connect(m_setup, &SetupMenu::said, m_message, &MessageLine::say);
    if (!m_book.store().isReadOnly()) {
        connect(new FileDrop(*this, QStringLiteral(".csv")), &FileDrop::dropped, m_setup, &SetupMenu::importUnitsFrom,
                Qt::QueuedConnection); // after the drop is over
    }
    connect(&m_book, &RecordBook::sitesChanged, this, &MainWindow::followUnits);

    m_unitPage->putOff(); // until the window is on the screen
    m_units->selectFirst();
    if (m_units->isEmpty())
        showWelcome();
    if (const auto& because = m_book.store().openedReadOnlyBecause())
        m_message->say(m_book.speaker().said(*because));
}

MainWindow::~MainWindow()
{
    // What is being typed is entered while all pages are whole: each of them shows what changed.
    if (QWidget* typing = focusWidget())
        typing->clearFocus();
}

void MainWindow::paintEvent(QPaintEvent* event)
{
    QMainWindow::paintEvent(event);
    if (std::exchange(m_begun, true))
        return;
    QTimer::singleShot(0, this, [this] { // after this frame
        m_unitPage->begin();
        QTimer::singleShot(0, this, [this] { makeVisitPage(); }); // and after that: a visit then begins at once
    });
}

void MainWindow::giveRoom(int pageInFront)
{
    for (int page = 0; page < m_pages->count(); ++page) {
        const auto policy = page == pageInFront ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        m_pages->widget(page)->setSizePolicy(policy, policy);
    }
}

void MainWindow::makeVisitPage()
{
    if (m_visitPage != nullptr)
        return;
    m_visitPage = new VisitPage(m_book, m_theme);
    m_pages->addWidget(m_visitPage);
    giveRoom(m_pages->currentIndex());
    m_edit->follow(*m_visitPage,
                   {m_visitPage->steps(), [this] { m_visitPage->undo(); }, [this] { m_visitPage->redo(); },
                    [this] { return m_visitPage->isClosed(); }});
    connect(m_visitPage, &VisitPage::leaveRequested, this, &MainWindow::showUnit);
    connect(m_visitPage, &VisitPage::closed, this, [this](const VisitId& visit) {
        if (const auto unit = m_units->selected())
            showSummary(*unit, visit);
    });
}

PrintPage& MainWindow::printPage()
{
    if (m_printPage == nullptr) {
        m_printPage = new PrintPage(m_book, m_theme);
        m_pages->addWidget(m_printPage);
        connect(m_printPage, &PrintPage::left, this, &MainWindow::leavePaper);
    }
    return *m_printPage;
}

void MainWindow::makeSeasonPage()
{
    m_seasonPage = new SeasonPage(m_book, *m_fleet, *m_undo, m_theme);
    m_pages->addWidget(m_seasonPage);
    m_edit->follow(*m_seasonPage, stepsOfNoVisit());
    connect(m_seasonPage, &SeasonPage::startVisitRequested, this, &MainWindow::startVisit);
    connect(m_seasonPage, &SeasonPage::unitRequested, this, &MainWindow::showUnit);
    connect(m_seasonPage, &SeasonPage::sheetRequested, this, [this](const Sheet& sheet) {
        m_paperOfSeason = true;
        printPage().showSheet(sheet, tr("&Back to the season"));
        m_pages->setCurrentWidget(m_printPage);
    });
}

void MainWindow::makeFleetPage()
{
    m_fleetPage = new FleetPage(m_book, *m_fleet, m_theme);
    m_pages->addWidget(m_fleetPage);
    m_edit->follow(*m_fleetPage, stepsOfNoVisit());
    connect(m_fleetPage, &FleetPage::unitRequested, this, &MainWindow::showUnit);
}

void MainWindow::makeTrackPage()
{
    m_trackPage = new TrackPage(m_book, m_theme);
    m_pages->addWidget(m_trackPage);
    m_edit->follow(*m_trackPage, stepsOfNoVisit());
    connect(m_trackPage, &TrackPage::unitRequested, this, &MainWindow::showUnit);
    connect(m_trackPage, &TrackPage::catalogueChanged, this, &MainWindow::catalogueChanged);
}

void MainWindow::leavePaper()
{
    if (m_paperOfSeason)
        showSeason();
    else if (const auto unit = m_units->selected())
        showUnit(*unit);
}

void MainWindow::makeWelcomePage()
{
    auto* page = new WelcomePage(!m_book.store().isReadOnly());
    connect(page, &WelcomePage::addRequested, m_setup, &SetupMenu::addUnit);
    connect(page, &WelcomePage::listRequested, m_setup, &SetupMenu::importUnits);
    connect(page, &WelcomePage::sampleRequested, this, &MainWindow::sampleRequested);
    connect(page, &WelcomePage::openFileRequested, this, &MainWindow::openFileRequested);
    m_welcomePage = page;
    m_pages->addWidget(m_welcomePage);
    m_edit->follow(*m_welcomePage, stepsOfNoVisit());
}

EditMenu::Steps MainWindow::stepsOfNoVisit()
{
    return {*m_undo, [this] { m_undo->undo(); }, [this] { m_undo->redo(); }, {}};
}

void MainWindow::makeMenus()
{
    QMenu* file = menuBar()->addMenu(tr("&File"));
    file->addAction(tr("&Open…"), QKeySequence::Open, this, &MainWindow::openFileRequested);
    file->addAction(tr("&Back up to…"), this, &MainWindow::backupRequested);
    file->addSeparator();
    file->addAction(tr("&Quit"), QKeySequence::Quit, this, &QWidget::close);

    m_edit = new EditMenu(this);
    m_edit->follow(*m_unitPage, stepsOfNoVisit());
    m_edit->addSeparator();
    // Ctrl+comma everywhere: not every platform has a usual key for it.
    m_edit->addAction(tr("&Preferences…"), QKeySequence(Qt::CTRL | Qt::Key_Comma), this,
                      &MainWindow::preferencesRequested);
    menuBar()->addMenu(m_edit);

    menuBar()->addMenu(m_setup->menu());

    QMenu* visit = menuBar()->addMenu(tr("&Visit"));
    visit->addAction(tr("Start a &spring visit"), this, [this] { startVisitOfSelected(VisitReason::spring); });
    visit->addAction(tr("Start a &fall visit"), this, [this] { startVisitOfSelected(VisitReason::fall); });
    visit->addAction(tr("Start a &call-out"), this, [this] { startVisitOfSelected(VisitReason::callOut); });

    auto* view = new ViewMenu(m_theme, this);
    menuBar()->addMenu(view);
    view->addSeparator();
    view->addAction(tr("&Unit"), QKeySequence(tr("Ctrl+1")), this, [this] {
        if (const auto unit = m_units->selected())
            showUnit(*unit);
        else if (m_units->isEmpty())
            showWelcome();
    });
    view->addAction(tr("&Season"), QKeySequence(tr("Ctrl+2")), this, &MainWindow::showSeason);
    view->addAction(tr("F&leet"), QKeySequence(tr("Ctrl+3")), this, &MainWindow::showFleet);
    view->addAction(tr("&Track record"), QKeySequence(tr("Ctrl+4")), this, [this] { showTrack(); });
    view->addAction(tr("&Find a unit"), QKeySequence::Find, m_units, &UnitListPanel::focusSearch);
    connect(view, &ViewMenu::lookRequested, this, &MainWindow::lookRequested);
    QMenu* help = menuBar()->addMenu(tr("&Help"));
    help->addAction(tr("&Keys"), this, [this] { KeySheet::showFor(*this); })
        ->setShortcuts({QKeySequence(Qt::Key_F1), QKeySequence(Qt::Key_Question)});
}

void MainWindow::startVisitOfSelected(VisitReason reason)
{
    if (const auto unit = m_units->selected())
        startVisit(*unit, reason);
}

void MainWindow::showUnit(UnitId unit)
{
    m_pages->setCurrentWidget(m_unitPage); // first: a wider page would leave the list too little room
    m_units->show();
    m_units->select(unit);
    m_unitPage->showUnit(unit);
}

void MainWindow::showVisit(VisitId visit)
{
    m_units->hide(); // the visit's own list of zones needs the room
    makeVisitPage();
    m_visitPage->showVisit(visit);
    m_pages->setCurrentWidget(m_visitPage);
}

void MainWindow::showSummary(UnitId unit, VisitId visit)
{
    m_units->hide();
    m_paperOfSeason = false;
    printPage().showVisit(unit, visit);
    m_pages->setCurrentWidget(m_printPage);
}

void MainWindow::doLongWork(const QString& name, LongWork::Work work)
{
    if (!m_work->start(name, std::move(work)))
        m_message->say(tr("%1 is still going on: wait for its end, or cancel it.").arg(m_work->name()));
}

void MainWindow::showHistoryPaper(UnitId unit)
{
    m_units->hide();
    m_paperOfSeason = false;
    printPage().showHistory(unit);
    m_pages->setCurrentWidget(m_printPage);
}

void MainWindow::showOwnerHistory(UnitId unit)
{
    m_units->hide();
    m_paperOfSeason = false;
    printPage().showOwnerHistory(unit);
    m_pages->setCurrentWidget(m_printPage);
}

void MainWindow::showSeason()
{
    if (m_seasonPage == nullptr) // made when it is first wanted, so that the window opens sooner
        makeSeasonPage();
    m_units->hide(); // the board needs the room
    m_pages->setCurrentWidget(m_seasonPage);
    m_seasonPage->refresh();
    m_seasonPage->setFocus();
}

void MainWindow::showFleet()
{
    if (m_fleetPage == nullptr) // made when it is first wanted, as the season
        makeFleetPage();
    m_units->hide(); // the table needs the room, and has its own search
    m_pages->setCurrentWidget(m_fleetPage);
    m_fleetPage->refresh();
    m_fleetPage->setFocus();
}

void MainWindow::showTrack(bool rates)
{
    if (m_trackPage == nullptr) // made when it is first wanted, as the season
        makeTrackPage();
    m_units->hide(); // the tables need the room
    m_pages->setCurrentWidget(m_trackPage);
    m_trackPage->showTab(rates ? TrackPage::Tab::rates : TrackPage::Tab::record);
    m_trackPage->refresh();
    m_trackPage->setFocus();
}

void MainWindow::startVisit(UnitId unit, VisitReason reason)
{
    m_units->select(unit);
    const bool leaves = m_pages->currentWidget() == m_unitPage;
    if (leaves)
        m_unitPage->hide(); // first: what is hidden is not laid out anew for nothing
    const VisitId visit = padside::startVisit(m_book, unit, reason);
    if (!visit.isNull())
        showVisit(visit);
    else if (leaves)
        m_unitPage->show();
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/season/season_page.h"

#include "ui/drawing/theme.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/season/season_board_view.h"
#include "ui/pages/season/season_sheets.h"

#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QStackedWidget>
#include <QTextBrowser>
#include <QUrl>

#include <algorithm>

namespace padside {

SeasonPage::SeasonPage(RecordBook& book, FleetReviewer& fleet, QUndoStack& undo, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_fleet(fleet)
    , m_theme(theme)
    , m_moved(book)
    , m_plan(m_moved)
    , m_words(book.catalogue(), book.speaker(), book.surroundings().locale)
    , m_undo(&undo)
    , m_search(new QLineEdit)
    , m_state(new QLabel)
    , m_progress(new QProgressBar)
    , m_stop(new QPushButton(tr("&Stop")))
    , m_board(new SeasonBoardView(theme, book.surroundings().locale))
    , m_empty(new QLabel)
    , m_cost(new QLabel)
    , m_underBoard(new QStackedWidget)
    , m_tripSide(new QWidget)
    , m_trip(new QTextBrowser)
    , m_overdue(new QPushButton(tr("Ove&rdue checks")))
    , m_orders(new QPushButton(tr("Parts to &order")))
    , m_daySheet(new QPushButton(tr("&Day's sheet")))
    , m_keep(new QPushButton)
    , m_back(new QPushButton(tr("&Back to the day worked out")))
{
    makeLayout();
    connectParts();
}

SeasonPage::~SeasonPage()
{
    if (m_undo)
        m_undo->clear();
}

void SeasonPage::connectParts()
{
    connect(&m_fleet, &FleetReviewer::changed, this, &SeasonPage::takeFleet);
    connect(&m_fleet, &FleetReviewer::started, this, &SeasonPage::sayState);
    connect(&m_fleet, &FleetReviewer::finished, this, &SeasonPage::takeFleet);
    connect(m_stop, &QPushButton::clicked, this, [this] { m_fleet.isRunning() ? m_fleet.cancel() : m_fleet.start(); });
    connect(m_search, &QLineEdit::textChanged, this, &SeasonPage::showBoard);
    connect(m_board, &SeasonBoardView::tripSelected, this, &SeasonPage::choose);
    connect(m_board, &SeasonBoardView::tripActivated, this, [this] { m_trip->setFocus(Qt::OtherFocusReason); });
    connect(m_board, &SeasonBoardView::moveProposed, this, &SeasonPage::sayCost);
    connect(m_board, &SeasonBoardView::movePutDown, this, &SeasonPage::moveTrip);
    connect(m_board, &SeasonBoardView::moveGivenUp, this, [this] { showCost({}); });
    m_board->setWords([this](const BoardPlace& place) { return m_words.trip(siteIn(place.row), place.trip); });
    connect(m_trip, &QTextBrowser::anchorClicked, this, &SeasonPage::followLink);
    for (QPushButton* list : {m_overdue, m_orders})
        connect(list, &QPushButton::toggled, this, [this, list](bool on) { showList(*list, on); });
    connect(m_daySheet, &QPushButton::clicked, this, &SeasonPage::requestDaySheet);
    connect(m_board, &SeasonBoardView::keepAsked, this, &SeasonPage::keepOrLetMove);
    connect(m_keep, &QPushButton::clicked, this, &SeasonPage::keepOrLetMove);
    connect(m_back, &QPushButton::clicked, this, &SeasonPage::letMove);
}

void SeasonPage::focusInEvent(QFocusEvent*)
{
    // Not as a focus proxy: Tab would come round to the board without ever passing the search field.
    m_board->setFocus();
}

void SeasonPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) // its text has the theme's colours
        showTrip();
}

void SeasonPage::refresh()
{
    m_fleet.startIfStale();
    takeFleet();
}

void SeasonPage::takeFleet()
{
    // A hidden page is brought up to date when it is shown; and nothing moves under the person's hand.
    if (isVisible() && !m_board->move()) {
        m_plan.take(*m_fleet.fleet());
        if (!m_chosen && !m_fleet.isRunning())
            chooseFirst();
        showBoard();
    }
    sayState();
}

void SeasonPage::chooseFirst()
{
    double most = 0;
    for (const SiteSeason& site : m_plan.sites()) {
        for (const SeasonTrip& trip : site.trips) {
            double pressure = 0;
            for (const SeasonCheck& check : trip.checks)
                pressure = std::max(pressure, pressureOf(check, site.today));
            if (!m_chosen || trip.on < m_chosen->on || (trip.on == m_chosen->on && pressure > most)) {
                m_chosen = Chosen{site.site.id, trip.on};
                most = pressure;
            }
        }
    }
}

const SiteSeason& SeasonPage::siteIn(std::size_t row) const
{
    return m_plan.sites()[m_rows[row]];
}

const SiteSeason* SeasonPage::chosenSite() const
{
    return m_chosen ? m_plan.site(m_chosen->site) : nullptr;
}

std::optional<std::size_t> SeasonPage::chosenTrip() const
{
    const SiteSeason* site = chosenSite();
    return site != nullptr ? SeasonPlan::tripOn(*site, m_chosen->on) : std::nullopt;
}

void SeasonPage::showBoard()
{
    const QString wanted = m_search->text().trimmed();
    SeasonBoard board;
    board.today = m_fleet.fleet()->today;
    m_rows.clear();
    std::optional<BoardPlace> chosen;
    for (std::size_t i = 0; i < m_plan.sites().size(); ++i) {
        const SiteSeason& site = m_plan.sites()[i];
        if (!shown(site.site.name).contains(wanted, Qt::CaseInsensitive))
            continue;
        if (m_chosen && m_chosen->site == site.site.id) {
            if (const auto trip = SeasonPlan::tripOn(site, m_chosen->on))
                chosen = BoardPlace{m_rows.size(), *trip};
        }
        board.rows.push_back(boardRow(site));
        m_rows.push_back(i);
    }
    m_board->setBoard(std::move(board), chosen);
    showTrip();
}

void SeasonPage::choose(const BoardPlace& place)
{
    m_chosen = Chosen{siteIn(place.row).site.id, siteIn(place.row).trips[place.trip].on};
    m_overdue->setChecked(false);
    m_orders->setChecked(false);
    showCost({});
    showTrip();
}

void SeasonPage::showTrip()
{
    const auto trip = chosenTrip();
    const SiteSeason* site = chosenSite();
    m_daySheet->setEnabled(trip && !site->trips[*trip].checks.empty());
    const bool isMoved = trip && site->trips[*trip].moved;
    const bool isKept = isMoved && site->trips[*trip].moved->isKept();
    m_keep->setVisible(trip && !isListShown() && (!isMoved || isKept));
    m_keep->setText(isKept ? tr("Let it &move again") : tr("&Keep this day"));
    m_back->setVisible(isMoved && !isListShown() && !isKept);
    if (m_overdue->isChecked())
        return showOverdue();
    if (m_orders->isChecked())
        return showOrders();
    m_trip->setAccessibleName(tr("The chosen trip"));
    showHtml(trip           ? m_words.tripHtml(*site, *trip, m_theme)
                 : m_chosen ? tr("<p>This trip is no longer needed.</p>")
                            : tr("<p>Choose a trip to see what is to be looked at, and why.</p>"));
}

void SeasonPage::showList(QPushButton& wanted, bool on)
{
    if (on)
        (&wanted == m_orders ? m_overdue : m_orders)->setChecked(false);
    showTrip();
}

bool SeasonPage::isListShown() const
{
    return m_overdue->isChecked() || m_orders->isChecked();
}

void SeasonPage::showOverdue()
{
    const auto fleet = m_fleet.fleet();
    m_trip->setAccessibleName(tr("Overdue checks"));
    showHtml(m_words.overdueHtml(overdueUnits(fleet->units, fleet->today), overdueCount(fleet->units, fleet->today),
                                 m_theme));
}

void SeasonPage::showOrders()
{
    const auto fleet = m_fleet.fleet();
    m_trip->setAccessibleName(tr("Parts to order"));
    showHtml(m_words.ordersHtml(partsToOrder(fleet->units, m_book.catalogue()), fleet->today, m_theme));
}

void SeasonPage::showHtml(const QString& html)
{
    if (html == m_shownHtml) // a reader's place in it stays
        return;
    m_shownHtml = html;
    m_trip->setHtml(html);
}

void SeasonPage::sayCost(const BoardPlace& place, Date to)
{
    const SiteSeason& site = siteIn(place.row);
    const MoveCost cost = site.costOfMove(place.trip, to);
    const QString said = m_words.cost(site, place.trip, to, cost);
    showCost(said);
    m_board->sayCost(said, !cost.isNothing() || riskOfMove(site, place.trip, cost).worst);
}

void SeasonPage::moveTrip(const BoardPlace& place, Date to)
{
    const SiteSeason& site = siteIn(place.row);
    const Date from = site.trips[place.trip].on;
    choosePlan(tr("Move trip to %1").arg(shown(site.site.name)),
               {site.site.id, site.moves, withMove(site.moves, from, to), from, to});
}

void SeasonPage::keepOrLetMove()
{
    const auto trip = chosenTrip();
    if (!trip)
        return;
    const SiteSeason& site = *chosenSite();
    const SeasonTrip& day = site.trips[*trip];
    if (day.moved && day.moved->isKept())
        return letMove();
    if (day.moved) {
        const QString said = tr("This day was chosen by hand, so it stays as it is.");
        showCost(said);
        return m_board->sayCost(said, false);
    }
    choosePlan(tr("Keep the day of the trip to %1").arg(shown(site.site.name)),
               {site.site.id, site.moves, site.movesWithKept(*trip, m_book.catalogue()), day.on, day.on});
}

void SeasonPage::letMove()
{
    const auto trip = chosenTrip();
    if (!trip || !chosenSite()->trips[*trip].moved)
        return;
    const SiteSeason& site = *chosenSite();
    const SeasonTrip& day = site.trips[*trip];
    const Date to = day.checks.empty() ? day.on : site.costOfChoice(*trip).servedBefore[day.forcedBy];
    choosePlan(tr("Let the trip to %1 move again").arg(shown(site.site.name)),
               {site.site.id, site.moves, withoutChoice(site.moves, day.on), day.on, to});
}

void SeasonPage::choosePlan(const QString& name, TripMove move)
{
    m_undo->push(
        new MoveTripCommand(name, std::move(move), [this](SiteId id, const std::vector<MovedTrip>& moves, Date on) {
            return applyMoves(id, moves, on);
        }));
}

bool SeasonPage::applyMoves(SiteId site, const std::vector<MovedTrip>& moves, Date on)
{
    const bool isKept = m_moved.keep(site, moves);
    if (isKept) {
        m_plan.replan(site);
        m_chosen = Chosen{site, on};
    }
    showCost({});
    m_plan.take(*m_fleet.fleet()); // what came in while the trip was under the hand
    showBoard();
    if (isKept && m_board->selected())
        m_board->select(*m_board->selected()); // into view
    return isKept;
}

void SeasonPage::followLink(const QUrl& url)
{
    if (url.hasFragment())
        return m_trip->scrollToAnchor(url.fragment());
    const auto bytes = parseUuid(url.path().toStdString());
    if (bytes && isListShown())
        return followListLink(url, UnitId(*bytes));
    const auto trip = chosenTrip();
    if (!bytes || !trip || isListShown())
        return;
    const UnitId unit(*bytes);
    const SeasonTrip& day = chosenSite()->trips[*trip];
    const auto units = day.units();
    const auto one = std::ranges::find(units, unit, [](const auto& each) { return each->unit.id; });
    if (one == units.end())
        return;
    if (url.scheme() == QStringLiteral("start"))
        Q_EMIT startVisitRequested(unit, reasonOnTrip(day, **one));
    else if (url.scheme() == QStringLiteral("unit"))
        Q_EMIT unitRequested(unit);
    else
        requestFieldSheet(unit);
}

void SeasonPage::followListLink(const QUrl& url, UnitId unit)
{
    if (url.scheme() != QStringLiteral("trip"))
        return Q_EMIT unitRequested(unit);
    const auto isMeant = [&](const SeasonCheck& check) {
        return check.unit->unit.id == unit && check.check().latest < m_fleet.fleet()->today;
    };
    m_search->clear(); // its site may be hidden
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        const auto& trips = siteIn(row).trips;
        const auto first = std::ranges::find_if(
            trips, [&](const SeasonTrip& trip) { return std::ranges::any_of(trip.checks, isMeant); });
        if (first != trips.end())
            return m_board->select({row, static_cast<std::size_t>(first - trips.begin())});
    }
}

void SeasonPage::requestDaySheet()
{
    if (const auto trip = chosenTrip()) {
        if (const auto sheet = daySheet(m_book, *chosenSite(), *trip))
            Q_EMIT sheetRequested(*sheet);
    }
}

void SeasonPage::requestFieldSheet(UnitId unit)
{
    if (const auto trip = chosenTrip()) {
        if (const auto sheet = fieldSheet(m_book, chosenSite()->trips[*trip], unit))
            Q_EMIT sheetRequested(*sheet);
    }
}

} // namespace padside

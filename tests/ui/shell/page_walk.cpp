// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/shell/page_walk.h"

#include "core/store/record_reader.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "ui/drawing/cutaway_view.h"
#include "ui/drawing/timeline_view.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/language.h"
#include "ui/models/record_book.h"
#include "ui/models/setup_log.h"
#include "ui/pages/fleet/fleet_page.h"
#include "ui/pages/paper/page_preview.h"
#include "ui/pages/paper/print_page.h"
#include "ui/pages/preferences/preferences_dialog.h"
#include "ui/pages/setup/import_dialog.h"
#include "ui/pages/setup/retire_dialog.h"
#include "ui/pages/setup/site_dialog.h"
#include "ui/pages/setup/unit_dialog.h"
#include "ui/pages/setup/welcome_page.h"
#include "ui/pages/track/rates_panel.h"
#include "ui/pages/track/track_panel.h"
#include "ui/pages/unit/acknowledge_dialog.h"
#include "ui/pages/unit/part_costs_dialog.h"
#include "ui/pages/unit/photo_viewer.h"
#include "ui/shell/key_sheet.h"
#include "ui/shell/main_window.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QFile>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBrowser>
#include <QToolButton>
#include <QUndoStack>

#include <algorithm>
#include <array>
#include <stdexcept>

namespace padside::test {

using Qt::Literals::StringLiterals::operator""_s;

namespace {

constexpr int longWait = 60000; // ms; for a slow machine

void waitFor(const std::function<bool()>& there, const char* what)
{
    if (!QTest::qWaitFor(there, longWait))
        throw std::runtime_error(std::string(what) + " did not come");
}

/// A page that folds or comes to the front lays itself out in several turns: waits until nothing moves any more.
void settle(const QWidget& window)
{
    constexpr int turn = 15; // ms
    constexpr int mostTurns = 50;
    std::vector<QRect> before;
    for (int i = 0; i < mostTurns; ++i) {
        QTest::qWait(turn);
        std::vector<QRect> places;
        for (const auto* part : window.findChildren<QWidget*>())
            places.push_back(part->geometry());
        if (places == before)
            return;
        before = std::move(places);
    }
}

template <class Widget> Widget& in(const QWidget& window, const QString& name = {})
{
    auto* found = window.findChild<Widget*>(name);
    if (found == nullptr)
        throw std::runtime_error(window.objectName().toStdString() + " has no " + Widget::staticMetaObject.className()
                                 + " " + name.toStdString());
    return *found;
}

VisitId lastClosedVisit(const UnitRecord& record)
{
    for (auto visit = record.visits.rbegin(); visit != record.visits.rend(); ++visit) {
        if (visit->closedAt)
            return visit->id;
    }
    return {};
}

std::vector<QLineEdit*> linesToFill(const QDialog& form)
{
    std::vector<QLineEdit*> lines;
    for (auto* line : form.findChildren<QLineEdit*>()) {
        if (line->isVisible() && line->isEnabled() && line->objectName() != u"qt_spinbox_lineedit"_s)
            lines.push_back(line);
    }
    return lines;
}

} // namespace

PageWalk::PageWalk(RecordBook& book, const Theme& theme, QSize size, Look look)
    : m_book(book)
    , m_theme(theme)
    , m_size(size)
    , m_look(std::move(look))
{
    // The unit with the longest record: its pages hold most.
    std::size_t visits = 0;
    for (const UnitLine& line : m_book.store().records().unitLines()) {
        const std::size_t count = m_book.record(line.unitId).visits.size();
        if (!m_unit || count > visits) {
            m_unit = line.unitId;
            visits = count;
        }
    }
}

void PageWalk::everything()
{
    pages();
    dialogsOfWindow();
    preferences();
    settingUp();
}

void PageWalk::pages() const
{
    const auto window = open();
    if (!m_unit) {
        look(*window, "no unit yet");
    } else {
        pagesOfUnit(*window, *m_unit);
        visit(*window, *m_unit);
        papers(*window, *m_unit);
    }
    fleet(*window);
    season(*window);
    track(*window);
}

std::unique_ptr<MainWindow> PageWalk::open() const
{
    auto window = std::make_unique<MainWindow>(m_book, m_theme);
    window->resize(m_size);
    window->show();
    if (m_unit) { // the unit's page follows the first frame
        const auto& drawing = in<CutawayView>(*window, u"cutaway"_s);
        waitFor([&drawing] { return drawing.isVisible(); }, "the unit's page");
    }
    return window;
}

void PageWalk::look(QWidget& window, const char* stop) const
{
    settle(window);
    m_look(window, stop);
}

void PageWalk::lookAtTabs(QWidget& window, QTabWidget& tabs, std::span<const char* const> stops) const
{
    if (tabs.count() != static_cast<int>(stops.size()))
        throw std::runtime_error(tabs.objectName().toStdString() + " has other tabs than the walk has stops");
    for (int tab = 0; tab < tabs.count(); ++tab) {
        tabs.setCurrentIndex(tab);
        look(window, stops[static_cast<std::size_t>(tab)]);
    }
}

void PageWalk::pagesOfUnit(MainWindow& window, UnitId unit) const
{
    window.showUnit(unit);
    look(window, "unit");
    auto& nameplate = in<QToolButton>(window, u"unfoldNameplate"_s);
    nameplate.setChecked(true);
    look(window, "unit, nameplate");
    nameplate.setChecked(false);
    evidence(window);
    photographs(window);
}

void PageWalk::evidence(MainWindow& window) const
{
    auto& tabs = in<QTabWidget>(window, u"evidence"_s);
    constexpr std::array stops{"unit, history", "unit, findings", "unit, walls and rust", "unit, refrigerant",
                               "unit, worth"};
    lookAtTabs(window, tabs, stops);
    in<QPushButton>(window, u"partCosts"_s).click();
    auto& costs = in<PartCostsDialog>(window);
    look(costs, "part costs");
    costs.reject();
    tabs.setCurrentIndex(0);
}

void PageWalk::photographs(MainWindow& window) const
{
    auto& years = in<QListView>(window, u"photoYears"_s);
    const UnitRecord record = m_book.record(*m_unit);
    const auto ofZone
        = std::ranges::find_if(record.photos, [](const Photo& photo) { return photo.zoneId.has_value(); });
    if (ofZone == record.photos.end())
        return; // nothing was photographed
    Q_EMIT in<TimelineView>(window, u"timeline"_s).zoneChosen(*ofZone->zoneId);
    waitFor([&years] { return years.isVisible(); }, "the photographs of a zone");
    QTest::qWait(500); // pictures are read beside the window
    look(window, "unit, photographs");
    Q_EMIT years.activated(years.model()->index(0, 0));
    auto& viewer = in<PhotoViewer>(window);
    QTest::qWait(500);
    look(viewer, "photograph");
    viewer.reject();
}

void PageWalk::visit(MainWindow& window, UnitId unit) const
{
    window.startVisit(unit, VisitReason::fall);
    look(window, "visit");
    auto& side = in<QTabWidget>(window, u"side"_s);
    constexpr std::array stops{"visit, readings", "visit, work", "visit, refrigerant", "visit, finish",
                               "visit, drawing"};
    // On a wide screen the drawing stands below the tabs.
    lookAtTabs(window, side, std::span(stops).first(std::min(stops.size(), static_cast<std::size_t>(side.count()))));
}

void PageWalk::papers(MainWindow& window, UnitId unit) const
{
    window.showUnit(unit);
    window.showSummary(unit, lastClosedVisit(m_book.record(unit)));
    lookAtPaper(window, "paper, summary");
    window.showHistoryPaper(unit);
    lookAtPaper(window, "paper, timeline");
    window.showOwnerHistory(unit);
    lookAtPaper(window, "paper, owner's history");
}

void PageWalk::lookAtPaper(MainWindow& window, const char* stop) const
{
    const auto& preview = in<PagePreview>(in<PrintPage>(window));
    waitFor([&preview] { return preview.isVisible() && preview.isComplete(); }, stop);
    look(window, stop);
}

void PageWalk::fleet(MainWindow& window) const
{
    window.showFleet();
    const auto& reviewer = in<FleetReviewer>(window);
    waitFor([&reviewer] { return !reviewer.isRunning(); }, "the fleet");
    look(window, "fleet");
    auto& search = in<QLineEdit>(in<FleetPage>(window), u"fleetSearch"_s);
    search.setText(u"no such unit"_s);
    look(window, "fleet, nothing found");
    search.clear();
}

void PageWalk::season(MainWindow& window) const
{
    window.showSeason();
    const auto& reviewer = in<FleetReviewer>(window);
    waitFor([&reviewer] { return !reviewer.isRunning(); }, "the season");
    look(window, "season");
    if (!m_unit)
        return;
    sheets(window);
    window.showSeason();
    in<QPushButton>(window, u"orders"_s).click();
    look(window, "season, parts to order");
    in<QPushButton>(window, u"overdue"_s).click();
    look(window, "season, overdue checks");
}

void PageWalk::sheets(MainWindow& window) const
{
    auto& trip = in<QTextBrowser>(window, u"trip"_s);
    const auto sheet = QRegularExpression(u"href=\"(sheet:[^\"]+)\""_s).match(trip.toHtml());
    if (!sheet.hasMatch())
        throw std::runtime_error("the trip offers no field sheet");
    in<QPushButton>(window, u"daySheet"_s).click();
    lookAtPaper(window, "paper, day's sheet");
    window.showSeason();
    Q_EMIT trip.anchorClicked(QUrl(sheet.captured(1)));
    lookAtPaper(window, "paper, field sheet");
}

void PageWalk::track(MainWindow& window) const
{
    window.showTrack();
    const auto& record = in<TrackPanel>(window);
    waitFor([&record] { return record.summary() != nullptr; }, "the track record");
    look(window, "track record");
    window.showTrack(true);
    const auto& rates = in<RatesPanel>(window);
    look(window, "how long parts last");
    auto& learn = in<QPushButton>(rates, u"learn"_s);
    if (!learn.isEnabled())
        return;
    bool learnt = false;
    QObject::connect(&rates, &RatesPanel::learnt, &rates, [&learnt] { learnt = true; });
    learn.click();
    look(window, "how long parts last, while they are learned");
    waitFor([&learnt] { return learnt; }, "what was learned");
    look(window, "how long parts last, learned");
}

void PageWalk::dialogsOfWindow() const
{
    const auto window = open();
    KeySheet::showFor(*window);
    look(in<KeySheet>(*window), "keys");
    in<KeySheet>(*window).close();
    auto& next = in<QAbstractItemView>(*window, u"nextList"_s);
    auto& acknowledge = in<QPushButton>(*window, u"acknowledge"_s);
    for (int row = 0; row < next.model()->rowCount() && !acknowledge.isEnabled(); ++row)
        next.setCurrentIndex(next.model()->index(row, 0)); // only of a flag it can be said
    if (!acknowledge.isEnabled())
        return;
    acknowledge.click();
    if (auto* dialog = window->findChild<AcknowledgeDialog*>()) { // else it took one back
        look(*dialog, "acknowledge a flag");
        dialog->reject();
    }
}

void PageWalk::preferences() const
{
    PreferencesDialog dialog(
        m_book, {},
        {languagesIn({QString::fromStdString(shippedTranslations())}), UnitSystem::metric, shippedCatalogue()});
    dialog.show();
    auto& tabs = in<QTabWidget>(dialog, u"preference-tabs"_s);
    constexpr std::array stops{"preferences, you", "preferences, units", "preferences, seasons",
                               "preferences, catalogue"};
    lookAtTabs(dialog, tabs, stops);
}

void PageWalk::settingUp() const
{
    WelcomePage welcome(true);
    welcome.resize(m_size);
    welcome.show();
    look(welcome, "welcome");
    QUndoStack stack;
    SetupLog log(m_book, stack);
    form(std::make_unique<SiteDialog>(m_book, log, std::nullopt), "new site");
    form(std::make_unique<UnitDialog>(m_book, log, UnitDialog::newAt({}, m_book)), "new unit");
    if (m_unit) {
        const UnitRecord record = m_book.record(*m_unit);
        form(std::make_unique<SiteDialog>(m_book, log, record.site), "site");
        form(std::make_unique<UnitDialog>(m_book, log, UnitDialog::oneLike({record.unit, record.parts}, m_book)),
             "unit like another");
        form(std::make_unique<UnitDialog>(m_book, log, UnitDialog::change(record.unit)), "change a unit");
        form(std::make_unique<RetireDialog>(m_book, log, record.unit), "retire a unit");
    }
    list(log);
}

// As it opens, and with what it says of fields left empty or filled with what can't be understood.
void PageWalk::form(std::unique_ptr<QDialog> form, const char* stop) const
{
    form->setAttribute(Qt::WA_DeleteOnClose, false);
    form->show();
    look(*form, stop);
    for (QLineEdit* line : linesToFill(*form))
        line->clear();
    form->accept();
    look(*form, (std::string(stop) + ", empty").c_str());
    for (QLineEdit* line : linesToFill(*form))
        line->setText(u"14/6/08"_s);
    form->accept();
    look(*form, (std::string(stop) + ", not understood").c_str());
}

void PageWalk::list(SetupLog& log) const
{
    const QTemporaryDir folder;
    QFile list(folder.filePath(u"units.csv"_s));
    if (!list.open(QIODevice::WriteOnly))
        throw std::runtime_error("no list can be written");
    list.write("site,tag,kind\nQuay 4,RT-901,heat-pump\nQuay 4,RT-902,windmill\nQuay 4,,heat-pump\n");
    list.close();
    ImportDialog dialog(m_book, log);
    dialog.setAttribute(Qt::WA_DeleteOnClose, false);
    dialog.show();
    look(dialog, "import, no list yet");
    dialog.read(list.fileName());
    const auto& add = in<QPushButton>(dialog, u"import-add"_s);
    waitFor([&add] { return add.isEnabled(); }, "the list");
    look(dialog, "import, bad rows");
}

} // namespace padside::test

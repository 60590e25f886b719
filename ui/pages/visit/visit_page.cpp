// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/visit_page.h"

#include "ui/drawing/cutaway_view.h"
#include "ui/drawing/theme.h"
#include "ui/models/photo_intake.h"
#include "ui/models/record_book.h"
#include "ui/pages/visit/charge_panel.h"
#include "ui/pages/visit/closing_panel.h"
#include "ui/pages/visit/conditions_bar.h"
#include "ui/pages/visit/follow_up_panel.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/photo_strip.h"
#include "ui/pages/visit/readings_panel.h"
#include "ui/pages/visit/treatment_panel.h"
#include "ui/pages/visit/zone_list.h"
#include "ui/pages/visit/zone_panel.h"

#include <QApplication>
#include <QDragEnterEvent>
#include <QHBoxLayout>
#include <QScrollArea>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int listWidth = 262;

/// A hairline in the theme's colour of lines.
QWidget* line(Qt::Orientation orientation)
{
    auto* made = new QWidget;
    made->setAutoFillBackground(true);
    made->setBackgroundRole(QPalette::Mid);
    orientation == Qt::Horizontal ? made->setFixedHeight(1) : made->setFixedWidth(1);
    return made;
}

QScrollArea* scrolling(QWidget* content)
{
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(content);
    return scroll;
}

} // namespace

VisitPage::VisitPage(RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_theme(theme)
    , m_log(book)
    , m_conditions(new ConditionsBar(book, m_log))
    , m_list(new ZoneList(book, theme))
    , m_progress(quietLabel())
    , m_lastColumn(quietLabel(tr("last time")))
    , m_zoneArea(new QWidget)
    , m_zone(new ZonePanel(book, m_log, theme))
    , m_side(new QTabWidget)
    , m_sideColumn(new QVBoxLayout)
    , m_cutaway(new CutawayView(theme))
    , m_readings(new ReadingsPanel(book, m_log))
    , m_work(new TreatmentPanel(book, m_log))
    , m_followUps(new FollowUpPanel(book, m_log))
    , m_charges(new ChargePanel(book, m_log))
    , m_closing(new ClosingPanel(book, m_log))
    , m_message(new QLabel)
    , m_keys(quietLabel())
{
    setObjectName(u"visitPage"_s);
    setAcceptDrops(true);
    m_progress->setObjectName(u"progress"_s);
    m_progress->setContentsMargins(12, 8, 0, 4);
    m_lastColumn->setContentsMargins(0, 8, 12, 4);
    m_lastColumn->setWordWrap(false);
    m_message->setObjectName(u"visitMessage"_s);
    m_message->setWordWrap(true);
    m_message->setTextFormat(Qt::PlainText);
    m_message->setContentsMargins(16, 6, 16, 6);
    m_message->setAutoFillBackground(true);
    m_message->hide();
    m_keys->setText(tr("1–5 grade   N not seen   D M W dry damp wet   S same as last time   Enter next   O next not "
                       "looked at   ↑ back   T note   P photo   F3–F6 tabs   Ctrl+Z undo   F1 all keys"));
    m_keys->setContentsMargins(16, 4, 16, 6);

    auto* zones = new QHBoxLayout(m_zoneArea);
    zones->setContentsMargins(0, 0, 0, 0);
    zones->setSpacing(0);
    auto* left = new QVBoxLayout;
    left->setSpacing(0);
    auto* columns = new QHBoxLayout;
    columns->addWidget(m_progress, 1);
    columns->addWidget(m_lastColumn);
    left->addLayout(columns);
    left->addWidget(m_list, 1);
    zones->addLayout(left);
    zones->addWidget(line(Qt::Vertical));
    zones->addWidget(m_zone, 1);
    auto* middle = new QHBoxLayout;
    middle->setSpacing(0);
    middle->addWidget(m_zoneArea, 1);
    middle->addWidget(line(Qt::Vertical));
    m_sideColumn->addWidget(makeSide(), 1);
    middle->addLayout(m_sideColumn);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_conditions);
    layout->addWidget(line(Qt::Horizontal));
    layout->addLayout(middle, 1);
    layout->addWidget(m_message);
    layout->addWidget(line(Qt::Horizontal));
    layout->addWidget(m_keys);
    makeKeys();
    makeDrawing();
    fit();

    connect(m_conditions, &ConditionsBar::leaveRequested, this, [this] {
        if (m_zone->keepNote())
            Q_EMIT leaveRequested(m_sheet.visit.unitId);
    });
    connect(m_list, &ZoneList::zonePicked, this, [this](ZoneId zone) {
        const auto found
            = std::ranges::find_if(m_sheet.zones, [&](const ZoneLine& one) { return one.zone.id == zone; });
        goTo(static_cast<std::size_t>(found - m_sheet.zones.begin()));
    });
    connect(m_zone, &ZonePanel::nextRequested, this, [this] { step(1); });
    connect(m_zone, &ZonePanel::refused, this, &VisitPage::say);
    connect(m_zone, &ZonePanel::nothingToDo, this, &VisitPage::hint);
    connect(m_work, &TreatmentPanel::refused, this, &VisitPage::say);
    connect(m_work, &TreatmentPanel::lookOverWanted, m_followUps,
            [this] { m_followUps->suggest(tr("look over the coating")); });
    connect(m_followUps, &FollowUpPanel::refused, this, &VisitPage::say);
    connect(m_charges, &ChargePanel::refused, this, &VisitPage::say);
    connect(m_readings, &ReadingsPanel::phaseChosen, this, &VisitPage::reload);
    connect(m_closing, &ClosingPanel::closeConfirmed, this, &VisitPage::closeVisit);
    connect(m_closing, &ClosingPanel::nextOpenZoneRequested, this, &VisitPage::goToNextOpenZone);
    connect(m_closing, &ClosingPanel::correctingChanged, this, &VisitPage::reload);
    connect(&m_book, &RecordBook::failed, this, &VisitPage::say);
    connect(&m_book, &RecordBook::unitChanged, this, [this](const UnitId& unit) {
        if (unit == m_log.visit().unitId && !m_log.visit().id.isNull()) {
            m_message->hide(); // what was wrong before has been overtaken by an entry that went well
            reload();
        }
    });
}

VisitPage::~VisitPage()
{
    // What is being typed is entered while everything is still here; afterwards no part may call back.
    if (QWidget* typing = focusWidget())
        typing->clearFocus();
    m_book.disconnect(this);
    m_log.steps().disconnect();
    for (QWidget* part : findChildren<QWidget*>())
        part->blockSignals(true);
}

QWidget* VisitPage::makeSide()
{
    m_side->setObjectName(u"side"_s);
    m_side->setDocumentMode(true);
    auto* work = new QWidget;
    auto* workLayout = new QVBoxLayout(work);
    workLayout->setContentsMargins(0, 0, 0, 0);
    workLayout->addWidget(m_work);
    workLayout->addWidget(m_followUps);
    workLayout->addStretch(1);
    const auto add = [this](QWidget* part, const QString& name, const QString& key) {
        const int tab = m_side->addTab(part, name);
        m_side->setTabToolTip(tab, name + u"  "_s + key);
        m_side->tabBar()->setTabData(tab, name);
    };
    add(m_readings, tr("Readings"), u"F3"_s);
    add(scrolling(work), tr("Work"), u"F4"_s);
    add(scrolling(m_charges), tr("Refrigerant"), u"F5"_s);
    add(m_closing, tr("Finish"), u"F6"_s);
    m_side->tabBar()->setAccessibleName(tr("Beside the zone"));
    m_side->tabBar()->setExpanding(true);
    m_side->setUsesScrollButtons(false); // a long word is cut instead, and stands whole in its tool tip
    m_side->setElideMode(Qt::ElideRight);
    connect(m_side, &QTabWidget::currentChanged, this, [this](int tab) {
        if (tab == closingSide)
            m_closing->showSheet(m_sheet, unfinished());
    });
    return m_side;
}

std::optional<ZoneId> VisitPage::zone() const
{
    if (m_index >= m_sheet.zones.size())
        return std::nullopt;
    return m_sheet.zones[m_index].zone.id;
}

void VisitPage::showVisit(VisitId visit)
{
    m_message->hide();
    if (!m_log.turnTo(visit))
        return;
    m_index = 0;
    reload();
    const auto open
        = std::ranges::find_if(m_sheet.zones, [](const ZoneLine& one) { return !one.found && !one.fittedToday; });
    if (m_sheet.visit.isOpen() && open != m_sheet.zones.end())
        m_index = static_cast<std::size_t>(open - m_sheet.zones.begin());
    showZone();
    m_side->setCurrentIndex(m_sheet.visit.isOpen() ? readingsSide : closingSide);
    m_zone->setFocus();
}

void VisitPage::reload()
{
    const std::optional<ZoneId> kept = zone();
    if (!m_book.attempt([this] {
            m_sheet = visitSheet(m_book.record(m_log.visit().unitId), m_log.visit().id, m_book.catalogue());
        }))
        return;
    const auto same = std::ranges::find_if(m_sheet.zones, [&](const ZoneLine& one) { return one.zone.id == kept; });
    m_index = same == m_sheet.zones.end() ? 0 : static_cast<std::size_t>(same - m_sheet.zones.begin());
    const bool mayWrite = m_log.mayWrite();
    m_conditions->showSheet(m_sheet);
    m_list->showSheet(m_sheet);
    m_progress->setText(tr("%1 of %2 zones").arg(m_sheet.zonesLookedAt()).arg(m_sheet.zonesToLookAt()));
    m_readings->showSheet(m_sheet, mayWrite);
    m_charges->showSheet(m_sheet, mayWrite);
    fillDrawing();
    showZone();
    if (m_side->currentIndex() == closingSide)
        m_closing->showSheet(m_sheet, unfinished());
}

void VisitPage::showZone()
{
    if (m_sheet.zones.empty()) {
        m_zone->showEmpty();
        return;
    }
    const ZoneLine& line = m_sheet.zones[m_index];
    const bool mayWrite = m_log.mayWrite();
    m_zone->showLine(line, tr("zone %1 of %2").arg(m_index + 1).arg(m_sheet.zones.size()), mayWrite);
    m_work->showLine(line, m_sheet, mayWrite);
    m_followUps->showLine(line, m_sheet, mayWrite);
    m_readings->showZone(line.zone.id);
    m_list->select(line.zone.id);
    m_cutaway->setCurrent(line.part.id);
}

void VisitPage::fit()
{
    m_list->setFixedWidth(m_theme.size.wide(listWidth));
    fitSide();
    m_keys->setHidden(m_theme.size == Size::field()); // for hands; F1 still lists the keys
    QPalette colours = QApplication::palette(m_message);
    colours.setColor(QPalette::Window, mixed(m_theme.fill(Grade::marked), m_theme.ground, 0.3));
    m_message->setPalette(colours);
}

void VisitPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        fit();
}

QStringList VisitPage::unfinished() const
{
    QStringList names = m_conditions->unfinished() + m_readings->unfinished();
    if (m_charges->hasUnfinished())
        names << tr("an amount of refrigerant");
    for (const ZoneLine& line : m_sheet.zones) {
        for (const Phase phase : {Phase::asFound, Phase::asLeft}) {
            const VisitLog::Look look = line.look(phase);
            const QString where = partTitle(m_book, line.part) + u", "_s + zoneTitle(m_book, line.part, line.zone);
            if (m_log.waitingNote(look))
                names << (look.standing ? tr("a note on %1").arg(where)
                                        : tr("a note on %1, which has no grade yet").arg(where));
            else if (!look.standing && m_log.waitingWetness(look))
                names << tr("wet or dry of %1, which has no grade yet").arg(where);
        }
    }
    return names;
}

void VisitPage::closeVisit()
{
    if (!m_zone->keepNote() || !m_log.close())
        return;
    Q_EMIT closed(m_sheet.visit.id);
}

void VisitPage::say(const QString& sentence)
{
    if (!isVisibleTo(window()))
        return;
    m_messageIsHint = false;
    m_message->setText(sentence);
    m_message->setAccessibleName(sentence);
    m_message->show();
}

void VisitPage::hint(const QString& sentence)
{
    say(sentence);
    m_messageIsHint = true;
}

void VisitPage::dragEnterEvent(QDragEnterEvent* event)
{
    if (m_log.mayWrite() && event->mimeData() && holdsPhotos(*event->mimeData()))
        event->acceptProposedAction();
}

void VisitPage::dropEvent(QDropEvent* event)
{
    if (!event->mimeData())
        return;
    event->setDropAction(Qt::CopyAction);
    event->accept();
    m_zone->photos().take(*event->mimeData());
}

} // namespace padside

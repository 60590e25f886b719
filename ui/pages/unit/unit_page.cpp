// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/unit_page.h"

#include "core/store/store.h"
#include "ui/drawing/cutaway_view.h"
#include "ui/drawing/level_labels.h"
#include "ui/drawing/page_area.h"
#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/unit/finding_tree_model.h"
#include "ui/pages/unit/finding_view.h"
#include "ui/pages/unit/flag_actions.h"
#include "ui/pages/unit/history_panel.h"
#include "ui/pages/unit/ledger_panel.h"
#include "ui/pages/unit/measured_panel.h"
#include "ui/pages/unit/next_delegate.h"
#include "ui/pages/unit/next_model.h"
#include "ui/pages/unit/unit_header.h"
#include "ui/pages/unit/visit_actions.h"
#include "ui/pages/unit/worth_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedLayout>
#include <QTabWidget>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

QLabel* title(const QString& text, QWidget* buddy)
{
    auto* label = new QLabel(text);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    label->setBuddy(buddy);
    return label;
}

QVBoxLayout* columnIn(QWidget* panel)
{
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    return column;
}

} // namespace

UnitPage::UnitPage(RecordBook& book, QUndoStack& steps, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_theme(theme)
    , m_stack(new QStackedLayout(this))
    , m_nothing(new QLabel(tr("No unit is shown.")))
    , m_header(new UnitHeader(book.catalogue(), book.speaker()))
    , m_actions(new VisitActions(book.speaker()))
    , m_cutaway(new CutawayView(theme))
    , m_nextModel(new NextModel(book.catalogue(), book.speaker(), this))
    , m_next(new QListView)
    , m_tabs(new QTabWidget)
    , m_findingModel(new FindingTreeModel(book.catalogue(), book.speaker(), this))
    , m_findings(new FindingView(theme))
    , m_history(new HistoryPanel(book, theme))
    , m_measured(new MeasuredPanel(book, theme))
    , m_ledger(new LedgerPanel(book))
    , m_worth(new WorthPanel(book, steps, theme))
{
    makeWidgets();
    connectWidgets();
}

void UnitPage::makeWidgets()
{
    auto* upper = new QSplitter(Qt::Horizontal);
    upper->setObjectName(u"upperSplitter"_s);
    QLabel* drawing = title(tr("The uni&t, opened"), m_cutaway);
    upper->addWidget(drawingPanel(drawing));
    upper->addWidget(nextPanel());
    levelLabel(*drawing, *m_flagActions->button()); // both headings, and what they head, begin at the same height
    upper->setStretchFactor(0, 1);
    upper->setStretchFactor(1, 1);
    upper->setSizes({550, 450});
    m_tabs->setObjectName(u"evidence"_s);
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(m_history, tr("Histor&y"));
    m_tabs->addTab(findingsPanel(), tr("Findin&gs by part and zone"));
    m_tabs->addTab(m_measured, tr("Walls an&d rust"));
    m_tabs->addTab(m_ledger, tr("Refr&igerant"));
    m_tabs->addTab(m_worth, tr("W&orth"));
    m_tabs->setAccessibleName(tr("What the record holds"));
    m_tabs->tabBar()->setAccessibleName(tr("What the record holds"));
    auto* whole = new QSplitter(Qt::Vertical);
    whole->setObjectName(u"wholeSplitter"_s);
    whole->addWidget(upper);
    whole->addWidget(m_tabs);
    whole->setStretchFactor(0, 1);
    whole->setStretchFactor(1, 1);
    whole->setSizes({560, 440});
    for (QSplitter* splitter : {upper, whole}) {
        splitter->setChildrenCollapsible(false);
        splitter->setHandleWidth(9);
    }

    auto* content = new QWidget;
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(12, 8, 12, 8);
    column->setSpacing(6);
    column->addWidget(m_header);
    column->addWidget(m_actions);
    column->addWidget(whole, 1);
    m_nothing->setAlignment(Qt::AlignCenter);
    m_nothing->setWordWrap(true);
    m_stack->addWidget(m_nothing);
    m_stack->addWidget(new PageArea(content)); // the nameplate, unfolded, needs more than a small screen has
}

QWidget* UnitPage::drawingPanel(QLabel* heading)
{
    auto* panel = new QWidget;
    m_cutaway->setObjectName(u"cutaway"_s);
    QVBoxLayout* column = columnIn(panel);
    column->addWidget(heading);
    column->addWidget(m_cutaway, 1);
    return panel;
}

QWidget* UnitPage::nextPanel()
{
    auto* panel = new QWidget;
    m_next->setObjectName(u"nextList"_s);
    m_next->setAccessibleName(tr("What goes next and why"));
    m_next->setModel(m_nextModel);
    m_next->setItemDelegate(new NextDelegate(m_theme, m_next));
    m_next->setWordWrap(true); // lays the rows out anew when the width changes
    m_next->setResizeMode(QListView::Adjust);
    m_next->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_next->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_next->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_next->setTabKeyNavigation(false);
    m_next->setMinimumWidth(260);
    m_flagActions = new FlagActions(*m_nextModel, *m_next);
    auto* head = new QHBoxLayout;
    head->addWidget(title(tr("What goes ne&xt and why"), m_next), 1);
    head->addWidget(m_flagActions->button());
    QVBoxLayout* column = columnIn(panel);
    column->addLayout(head);
    column->addWidget(m_next, 1);
    return panel;
}

QWidget* UnitPage::findingsPanel()
{
    auto* panel = new QWidget;
    m_findings->setObjectName(u"findingTree"_s);
    m_findings->setAccessibleName(tr("Findings by part and zone"));
    m_findings->setModel(m_findingModel);
    QVBoxLayout* column = columnIn(panel);
    column->addWidget(m_findings, 1);
    return panel;
}

void UnitPage::connectWidgets()
{
    connect(&m_book, &RecordBook::unitChanged, this, &UnitPage::refresh);
    connect(m_actions, &VisitActions::startRequested, this,
            [this](VisitReason reason) { Q_EMIT startVisitRequested(m_unit, reason); });
    connect(m_actions, &VisitActions::resumeRequested, this, &UnitPage::visitRequested);
    connect(m_actions, &VisitActions::summaryRequested, this, &UnitPage::summaryRequested);
    connect(m_history, &HistoryPanel::visitRequested, this, &UnitPage::visitRequested);
    connect(m_history, &HistoryPanel::printRequested, this, [this] { Q_EMIT historyPaperRequested(m_unit); });
    connect(m_history, &HistoryPanel::ownerHistoryRequested, this, [this] { Q_EMIT ownerHistoryRequested(m_unit); });
    connect(m_next, &QListView::activated, this, [this](const QModelIndex& index) {
        if (const auto zone = m_nextModel->zoneAt(index))
            goToZone(*zone);
    });
    connect(m_next->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& index) {
        if (const auto zone = m_nextModel->zoneAt(index))
            goToZone(*zone);
    });
    connect(m_flagActions, &FlagActions::acknowledged, this, [this](Acknowledgement acknowledgement) {
        acknowledgement.technician = m_book.surroundings().technician.toStdString();
        Q_EMIT acknowledged(acknowledgement);
    });
    connect(m_flagActions, &FlagActions::takenBack, this, &UnitPage::takeBack);
    connect(m_findings->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& index) {
        if (const auto zone = m_findingModel->zoneAt(index))
            zoneChosen(*zone);
    });
    connect(m_cutaway, &CutawayView::partActivated, this, [this](PartId, ZoneId zone) { goToZone(zone); });
    connect(m_tabs, &QTabWidget::currentChanged, this, [this] {
        // What was chosen while the other was in front is brought into view now that it has its size.
        if (const auto zone = m_findingModel->zoneAt(m_findings->currentIndex()))
            zoneChosen(*zone);
    });
    connect(m_findings, &QTreeView::activated, this, [this](const QModelIndex& index) {
        const auto zone = m_findingModel->zoneAt(index);
        const VisitId visit = zone ? m_findingModel->lastVisitOf(*zone) : VisitId{};
        if (!visit.isNull())
            Q_EMIT visitRequested(visit);
    });
    QWidget* before = m_header->nameplateButton();
    const auto then = [&before](QWidget* next) {
        setTabOrder(before, next);
        before = next;
    };
    for (QPushButton* button : m_actions->buttons())
        then(button);
    // The tabs as a whole: what stands on them follows their bar by itself.
    for (QWidget* next : {static_cast<QWidget*>(m_cutaway), static_cast<QWidget*>(m_flagActions->button()),
                          static_cast<QWidget*>(m_next), static_cast<QWidget*>(m_tabs)})
        then(next);
}

bool UnitPage::read(UnitId unit)
{
    UnitSnapshotPtr snapshot;
    const bool well = m_book.attempt([&] {
        const Catalogue& catalogue = m_book.catalogue();
        UnitRecord record = m_book.record(unit);
        KnownUnit known = m_book.known(record);
        UnitReview reviewed = review(known, catalogue);
        UnitForecast forecast = unitForecast(known, catalogue);
        snapshot = std::make_shared<const UnitSnapshot>(
            UnitSnapshot{std::move(record), std::move(reviewed), std::move(forecast), std::move(known)});
    });
    if (well) {
        m_snapshot = snapshot;
        m_isStale = false;
    }
    return well;
}

void UnitPage::putOff()
{
    m_putOff = true;
    m_nothing->clear();
}

void UnitPage::begin()
{
    m_putOff = false;
    m_nothing->setText(tr("No unit is shown."));
    if (isVisible() && !m_unit.isNull()) // who comes here later names the unit
        showUnit(m_unit);
}

void UnitPage::showUnit(UnitId unit)
{
    const bool another = unit != m_unit || !m_snapshot;
    m_unit = unit;
    if (m_putOff)
        return;
    if (!read(unit)) {
        m_snapshot.reset();
        m_nothing->setText(tr("This unit could not be read."));
        m_stack->setCurrentIndex(0);
        return;
    }
    showSnapshot();
    if (another) {
        m_cutaway->setCurrent(PartId());
        m_history->showAll();
        m_next->scrollToTop();
        m_findings->scrollToTop();
    }
    m_stack->setCurrentIndex(1);
}

void UnitPage::refresh(UnitId unit)
{
    if (unit != m_unit || !m_snapshot)
        return;
    m_isStale = !isVisible(); // a visit changes the unit at every key: a hidden page waits until it is shown
    if (!m_isStale && read(unit))
        showSnapshot();
}

void UnitPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    // In a turn of its own: whoever shows the page mostly names the unit next, which brings it up to date as well.
    if (m_isStale) {
        QTimer::singleShot(0, this, [this] {
            if (m_isStale)
                refresh(m_unit);
        });
    }
}

void UnitPage::showSnapshot()
{
    const auto zone = m_findingModel->zoneAt(m_findings->currentIndex());
    const int findingsAt = m_findings->verticalScrollBar()->value();
    const int nextAt = m_next->verticalScrollBar()->value();
    const bool nothingNext = m_nextModel->rowCount() == 0;
    const int rowsBefore = m_findingModel->rowCount();
    m_header->setSnapshot(*m_snapshot);
    m_actions->setSnapshot(*m_snapshot, !m_book.store().isReadOnly());
    m_cutaway->setContent(cutawayOf(m_snapshot->record, m_snapshot->review, m_book.catalogue(), m_book.speaker()));
    m_nextModel->setSnapshot(m_snapshot);
    m_flagActions->refresh(!m_book.store().isReadOnly());
    m_findingModel->setSnapshot(m_snapshot);
    m_history->setSnapshot(m_snapshot);
    m_measured->setSnapshot(m_snapshot);
    m_ledger->setSnapshot(*m_snapshot);
    m_worth->setSnapshot(m_snapshot);
    // A model that had to start again lost what was open and chosen.
    const bool reset = zone && !m_findings->currentIndex().isValid();
    if (reset || rowsBefore != m_findingModel->rowCount() || rowsBefore == 0
        || !m_findings->isExpanded(m_findingModel->index(0, 0)))
        m_findings->expandAll();
    if (reset) {
        const QModelIndex again = m_findingModel->indexOf(*zone);
        if (again.isValid())
            m_findings->setCurrentIndex(again);
    }
    m_findings->shareWidth();
    m_findings->verticalScrollBar()->setValue(findingsAt);
    if (nothingNext) // nothing to keep; the list lays itself out when it has its size
        return;
    m_next->doItemsLayout();
    m_next->verticalScrollBar()->setValue(nextAt);
}

void UnitPage::goToZone(ZoneId zone)
{
    const QModelIndex index = m_findingModel->indexOf(zone);
    if (index.isValid())
        m_findings->setCurrentIndex(index);
}

void UnitPage::takeBack(AcknowledgementId id)
{
    const auto& all = m_snapshot->record.acknowledgements;
    const auto found = std::ranges::find(all, id, &Acknowledgement::id);
    if (found != all.end())
        Q_EMIT acknowledgementTakenBack(*found);
}

void UnitPage::zoneChosen(ZoneId zone)
{
    if (const Part* part = partOfZone(m_snapshot->record, zone))
        m_cutaway->setCurrent(part->id);
    m_history->selectZone(zone);
    m_findings->scrollTo(m_findings->currentIndex());
}

} // namespace padside

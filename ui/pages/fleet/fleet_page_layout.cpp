// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// How the fleet page is laid out, and what it says of its own state.

#include "ui/drawing/theme.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/fleet/fleet_line_delegate.h"
#include "ui/pages/fleet/fleet_page.h"
#include "ui/pages/fleet/fleet_wishes.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <array>

namespace padside {

namespace {

constexpr int headerMargin = 22; ///< beside a heading, for the arrow of the order

/// Letters each column shows; the flag's sentence gets what is left.
constexpr std::array<int, FleetModel::columns> letters{11, 20, 19, 21, 5, 5, 5, 0, 12, 33};

} // namespace

void FleetPage::makeLayout()
{
    m_state->setObjectName(QStringLiteral("state"));
    m_state->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_state->setWordWrap(true);
    m_progress->setMaximumWidth(160);
    m_progress->setTextVisible(false);
    m_progress->setAccessibleName(tr("Units reviewed"));
    m_stop->setObjectName(QStringLiteral("stop"));
    m_empty->setObjectName(QStringLiteral("empty"));
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_both->setOrientation(Qt::Vertical); // the room of texts depends on it
    makeTable();

    auto* state = new QHBoxLayout;
    state->setContentsMargins(10, 2, 10, 8);
    state->addWidget(m_state, 1);
    state->addWidget(m_progress);
    state->addWidget(m_stop);

    auto* legend = new QLabel(tr("Enter or a double click opens a unit · Alt+↑ and Alt+↓ put the units in the order of "
                                 "the column you are in, as a click on its heading does"));
    legend->setWordWrap(true);
    legend->setContentsMargins(2, 6, 2, 6);
    legend->setForegroundRole(QPalette::PlaceholderText); // second-rank text in every theme

    m_both->setObjectName(QStringLiteral("fleetSplitter"));
    m_both->addWidget(fieldPanel());
    auto* table = new QWidget; // keeps the table off the window's edges, as what stands above it
    auto* margins = new QVBoxLayout(table);
    margins->setContentsMargins(8, 0, 8, 0);
    margins->setSpacing(0);
    margins->addWidget(m_table);
    margins->addWidget(legend); // goes with the table where there are no units
    m_both->addWidget(table);
    m_both->setHandleWidth(9);
    m_both->setStretchFactor(0, 9);
    m_both->setStretchFactor(1, 11);
    m_both->setSizes({270, 330}); // pixels of a small screen; larger ones share alike
    m_both->setCollapsible(1, false);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(m_wishes);
    layout->addLayout(state);
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_both, 1);
    setFocusProxy(m_table);
}

void FleetPage::makeTable()
{
    m_table->setObjectName(QStringLiteral("fleet"));
    m_table->setAccessibleName(tr("Units of the fleet"));
    m_table->setModel(m_filter);
    m_table->setItemDelegate(new FleetLineDelegate(m_theme, m_table));
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_table->setTabKeyNavigation(false); // Tab leaves the table
    m_table->setShowGrid(false);
    m_table->setWordWrap(false);
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->verticalHeader()->hide();
    fitTable();
    m_table->setSortingEnabled(true);
    m_table->sortByColumn(FleetModel::grade, Qt::DescendingOrder);
    addSortKey(QKeySequence(Qt::ALT | Qt::Key_Up), Qt::AscendingOrder);
    addSortKey(QKeySequence(Qt::ALT | Qt::Key_Down), Qt::DescendingOrder);
}

void FleetPage::fitTable()
{
    m_table->verticalHeader()->setDefaultSectionSize(std::max(fontMetrics().height() + 12, m_theme.size.entry));
    fitSentence();
    QHeaderView* header = m_table->horizontalHeader();
    header->setHighlightSections(false);
    for (int column = 0; column < FleetModel::columns; ++column) {
        const int wanted = fontMetrics().averageCharWidth() * letters[static_cast<std::size_t>(column)] + 12;
        header->resizeSection(column, std::max(wanted, header->sectionSizeHint(column) + headerMargin));
    }
    header->setSectionResizeMode(FleetModel::worstFlag, QHeaderView::Stretch);
}

void FleetPage::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) {
        fitTable();
        placeField();
    }
}

void FleetPage::addSortKey(const QKeySequence& key, Qt::SortOrder order)
{
    auto* action = new QAction(m_table);
    action->setShortcut(key);
    action->setShortcutContext(Qt::WidgetShortcut);
    connect(action, &QAction::triggered, this, [this, order] {
        if (m_table->currentIndex().isValid())
            m_table->sortByColumn(m_table->currentIndex().column(), order);
        m_table->scrollTo(m_table->currentIndex());
    });
    m_table->addAction(action);
}

void FleetPage::sayState()
{
    const auto fleet = m_reviewer.fleet();
    const auto done = static_cast<int>(fleet->units.size() + fleet->unread.size());
    const auto count = static_cast<int>(fleet->count);
    const bool isRunning = m_reviewer.isRunning();
    QStringList said{countSaid()};
    if (isRunning)
        said << tr("Flags and checks: %1 of %2 units reviewed.").arg(done).arg(std::max(count, m_fleet->rowCount()));
    else if (!fleet->isWhole())
        said << tr("Stopped: flags and checks of %1 of %2 units are known.").arg(done).arg(count);
    if (!fleet->unread.empty())
        said << unreadSaid();
    m_state->setText(said.join(QLatin1Char(' ')));
    m_progress->setVisible(isRunning);
    m_progress->setRange(0, count);
    m_progress->setValue(done);
    m_stop->setVisible(isRunning || !fleet->isWhole());
    m_stop->setText(isRunning ? tr("&Stop") : tr("&Go on"));
    sayEmpty();
}

QString FleetPage::countSaid() const
{
    const int shownCount = m_filter->rowCount();
    const int all = m_fleet->rowCount();
    if (shownCount == all)
        return all == 1 ? tr("One unit.") : tr("%n units.", nullptr, all);
    return tr("%1 of %2 units are shown.").arg(shownCount).arg(all);
}

QString FleetPage::unreadSaid() const
{
    const auto& unread = m_reviewer.fleet()->unread;
    QString first = tr("Could not be read: %1 (%2).")
                        .arg(shown(unread.front().tag), m_book.speaker().said(unread.front().because));
    if (unread.size() == 1)
        return first;
    return first + QLatin1Char(' ') + tr("And %n more.", nullptr, static_cast<int>(unread.size()) - 1);
}

void FleetPage::sayEmpty()
{
    const bool isEmpty = m_filter->rowCount() == 0;
    m_empty->setVisible(isEmpty);
    m_both->setVisible(!isEmpty);
    if (m_fleet->rowCount() == 0)
        m_empty->setText(tr("<h3>This file has no units yet.</h3><p>They will stand here, the gravest first.</p>"));
    else
        m_empty->setText(tr("<h3>No unit is like that.</h3><p>Ask for less, or choose <i>Show all</i>. Retired units "
                            "are shown when you ask for them.</p>"));
}

} // namespace padside

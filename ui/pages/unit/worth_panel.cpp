// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/worth_panel.h"

#include "core/review/unit_worth.h"
#include "core/store/store.h"
#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/models/worth_figures.h"
#include "ui/models/worth_log.h"
#include "ui/pages/setup/form_area.h"
#include "ui/pages/unit/part_costs_dialog.h"
#include "ui/pages/unit/worth_comparison.h"
#include "ui/pages/unit/worth_figures_form.h"
#include "ui/pages/unit/worth_parts.h"

#include <QScrollBar>
#include <QSplitter>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

WorthPanel::WorthPanel(RecordBook& book, QUndoStack& steps, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_theme(theme)
    , m_log(new WorthLog(book, steps, this))
{
    connect(m_log, &WorthLog::costsChanged, this, [this] {
        m_costs.reset();
        reckonAgain();
    });
    connect(m_log, &WorthLog::unitAssumed, this, [this](const UnitId& unit) {
        if (m_snapshot && m_snapshot->record.unit.id == unit)
            readAssumptions();
    });
}

void WorthPanel::makeWidgets()
{
    m_parts = new WorthParts(m_book);
    m_comparison = new WorthComparison(m_book, m_theme);
    m_figures = new WorthFiguresForm(m_book, *m_log);
    auto* right = new QWidget;
    auto* rightColumn = new QVBoxLayout(right);
    rightColumn->setContentsMargins(8, 4, 8, 4);
    rightColumn->addWidget(m_comparison);
    rightColumn->addWidget(m_figures);
    rightColumn->addStretch();
    m_scroll = new FormArea(right);
    m_scroll->setObjectName(u"worthScroll"_s);
    m_scroll->setAccessibleName(tr("Carry on or replace"));
    auto* both = new QSplitter(Qt::Horizontal);
    both->setObjectName(u"worthSplitter"_s);
    both->setChildrenCollapsible(false);
    both->setHandleWidth(9);
    both->addWidget(m_parts);
    both->addWidget(m_scroll);
    both->setStretchFactor(0, 3);
    both->setStretchFactor(1, 2);
    both->setSizes({565, 435}); // on a small screen the figures then stand beside their names
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(both, 1);
    both->show(); // the panel is on the screen already
    connect(m_parts, &WorthParts::costsRequested, this, &WorthPanel::askForCosts);
}

void WorthPanel::setSnapshot(UnitSnapshotPtr snapshot)
{
    const bool another = m_snapshot && snapshot && m_snapshot->record.unit.id != snapshot->record.unit.id;
    m_snapshot = std::move(snapshot);
    if (another && m_scroll)
        m_scroll->verticalScrollBar()->setValue(0); // its answer first, not the figures of the one before
    reckonAgain();
}

void WorthPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_snapshot && !m_reckoned)
        reckon();
}

/// What is assumed has changed; what was found, and what is believed of it, has not.
void WorthPanel::readAssumptions()
{
    m_book.attempt([&] {
        UnitSnapshot again = *m_snapshot;
        again.record.assumptions = m_book.record(m_snapshot->record.unit.id).assumptions;
        again.known.record.assumptions = again.record.assumptions;
        m_snapshot = std::make_shared<const UnitSnapshot>(std::move(again));
    });
    reckonAgain();
}

void WorthPanel::reckonAgain()
{
    m_reckoned = false;
    if (m_snapshot && isVisible())
        reckon();
}

void WorthPanel::reckon()
{
    if (m_parts == nullptr)
        makeWidgets();
    if (!m_costs && !m_book.attempt([&] { m_costs = costsIn(m_book.store()); }))
        return;
    const UnitRecord& record = m_snapshot->record;
    const UnitWorth worth = unitWorth(m_snapshot->known, m_book.catalogue(), *m_costs, *m_book.outlookModel());
    const bool mayWrite = !m_book.store().isReadOnly();
    m_parts->show(record, worth, mayWrite);
    m_comparison->show(record, worth);
    m_figures->show(record, mayWrite);
    // The figures' names are not cut; the parts can do with less.
    m_scroll->setMinimumWidth(m_scroll->widget()->minimumSizeHint().width()
                              + m_scroll->verticalScrollBar()->sizeHint().width());
    m_reckoned = true;
}

void WorthPanel::askForCosts(const QString& partKind, const QString& name)
{
    auto* dialog = new PartCostsDialog(m_book, *m_log, partKind.toStdString(), name,
                                       m_snapshot->record.unit.refrigerant, window());
    dialog->open();
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/fleet/fleet_page.h"

#include "core/store/store.h"
#include "ui/drawing/fleet_field_view.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/record_book.h"
#include "ui/pages/fleet/field_words.h"
#include "ui/pages/fleet/fleet_wishes.h"

#include <QComboBox>
#include <QItemSelectionModel>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>

namespace padside {

FleetPage::FleetPage(RecordBook& book, FleetReviewer& fleet, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_reviewer(fleet)
    , m_theme(theme)
    , m_fleet(new FleetModel(book.catalogue(), book.speaker(), book.today(), this))
    , m_filter(new FleetFilter(*m_fleet, this))
    , m_wishes(new FleetWishes)
    , m_state(new QLabel)
    , m_progress(new QProgressBar)
    , m_stop(new QPushButton)
    , m_both(new QSplitter)
    , m_field(new FleetFieldView(theme, tollNames(book.speaker()),
                                 [this](double chance) { return m_book.speaker().shownChance(chance); }))
    , m_within(new QComboBox)
    , m_fieldSaid(new QLabel)
    , m_table(new QTableView)
    , m_empty(new QLabel)
{
    makeLayout();
    connectParts();
}

void FleetPage::connectParts()
{
    connect(&m_reviewer, &FleetReviewer::changed, this, &FleetPage::takeFleet);
    connect(&m_reviewer, &FleetReviewer::started, this, &FleetPage::sayState);
    connect(&m_reviewer, &FleetReviewer::finished, this, &FleetPage::sayState);
    connect(&m_book, &RecordBook::unitChanged, this, &FleetPage::noteChange);
    connect(&m_book, &RecordBook::sitesChanged, this, &FleetPage::noteChange);
    connect(m_stop, &QPushButton::clicked, this,
            [this] { m_reviewer.isRunning() ? m_reviewer.cancel() : m_reviewer.start(); });
    connect(m_wishes, &FleetWishes::changed, this, &FleetPage::takeWish);
    connect(&m_wishes->search(), &QLineEdit::returnPressed, this, [this] {
        if (!m_table->currentIndex().isValid())
            m_table->setCurrentIndex(m_filter->index(0, 0));
        m_table->setFocus(Qt::OtherFocusReason);
    });
    connect(m_table, &QTableView::activated, this, &FleetPage::open);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { m_field->choose(chosen().value_or(UnitId())); });
    connect(m_within, &QComboBox::currentIndexChanged, this, &FleetPage::fillField);
    connect(m_field, &FleetFieldView::unitChosen, this, [this](const UnitId& unit) { choose(unit); });
    connect(m_field, &FleetFieldView::unitActivated, this, &FleetPage::unitRequested);
    connect(m_field, &FleetFieldView::sentenceChanged, this, [this](const QString& sentence) {
        m_fieldSaid->setText(sentence);
        m_fieldSaid->setToolTip(sentence); // for what is longer than the lines there
    });
}

void FleetPage::noteChange()
{
    m_isStale = true;
    if (isVisible())
        readLines();
}

void FleetPage::refresh()
{
    m_fleet->setToday(m_book.today());
    if (m_isStale)
        readLines();
    m_reviewer.startIfStale();
    takeFleet();
}

void FleetPage::readLines()
{
    const auto before = chosen();
    m_isStale = !m_book.attempt([this] { m_fleet->setLines(m_book.store().records().unitLines()); });
    m_wishes->offer(*m_fleet);
    choose(before);
    fillField();
    sayState();
}

void FleetPage::takeFleet()
{
    if (!isVisible()) // brought up to date when it is shown
        return;
    m_fleet->setReviewed(m_reviewer.fleet());
    fillField();
    sayState();
}

void FleetPage::takeWish()
{
    m_filter->setWish(m_wishes->wish());
    if (const auto unit = chosen())
        choose(unit); // into view
    fillField();
    sayState();
}

void FleetPage::open(const QModelIndex& index)
{
    if (index.isValid())
        Q_EMIT unitRequested(m_fleet->line(m_filter->mapToSource(index).row()).unit.unitId);
}

std::optional<UnitId> FleetPage::chosen() const
{
    const QModelIndex current = m_table->currentIndex();
    if (!current.isValid())
        return std::nullopt;
    return m_fleet->line(m_filter->mapToSource(current).row()).unit.unitId;
}

void FleetPage::choose(const std::optional<UnitId>& unit)
{
    const int row = unit ? m_fleet->rowOf(*unit) : -1;
    const int column = std::max(0, m_table->currentIndex().column());
    const QModelIndex there = row < 0 ? QModelIndex() : m_filter->mapFromSource(m_fleet->index(row, column));
    m_table->setCurrentIndex(there.isValid() ? there : m_filter->index(0, column));
}

} // namespace padside

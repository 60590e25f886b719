// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// How the panel of the track record is laid out.

#include "core/track/track_words.h"
#include "ui/drawing/reliability_plot_view.h"
#include "ui/drawing/spread_columns.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/work_line.h"
#include "ui/pages/track/horizon_model.h"
#include "ui/pages/track/track_panel.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QTableView>
#include <QVBoxLayout>

namespace padside {

namespace {

constexpr double verdictLetters = 1.3; ///< times the others
constexpr int leastMisses = 4; ///< lines of text that stay in sight

void letWrap(QLabel& label)
{
    label.setWordWrap(true);
    label.setTextInteractionFlags(Qt::TextSelectableByMouse);
}

QLabel* boldTitle(const QString& text, QWidget* buddy)
{
    auto* label = new QLabel(text);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    label->setBuddy(buddy);
    return label;
}

} // namespace

void TrackPanel::makeLayout()
{
    m_verdict->setObjectName(QStringLiteral("verdict"));
    m_beside->setObjectName(QStringLiteral("beside"));
    m_reasons->setObjectName(QStringLiteral("reasons"));
    m_since->setObjectName(QStringLiteral("since"));
    m_since->setForegroundRole(QPalette::PlaceholderText); // second-rank text in every theme
    m_ranges->setObjectName(QStringLiteral("ranges"));
    for (QLabel* label : {m_verdict, m_beside, m_reasons, m_since, m_ranges, m_plotHint, m_noMisses})
        letWrap(*label);
    m_beside->hide();
    m_reasons->hide();

    m_table->setObjectName(QStringLiteral("horizons"));
    m_table->setAccessibleName(tr("Scores of old forecasts"));
    m_table->setModel(m_horizons);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setTabKeyNavigation(false); // Tab leaves the table
    m_table->setShowGrid(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setHighlightSections(false);
    m_table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_table->setSizeAdjustPolicy(QAbstractScrollArea::AdjustToContents);
    m_table->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);

    auto* sides = new QHBoxLayout;
    sides->setSpacing(16);
    sides->addWidget(plotSide(), 2);
    sides->addWidget(missSide(), 3);
    auto* evidence = new QVBoxLayout(m_evidence);
    evidence->setContentsMargins(0, 0, 0, 0);
    evidence->addWidget(setRow());
    evidence->addWidget(m_table);
    evidence->addWidget(m_ranges);
    evidence->addLayout(sides, 1);
    m_evidence->hide();
    fitLetters();

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 8, 10, 8);
    column->addWidget(m_verdict);
    column->addWidget(m_beside);
    column->addWidget(m_reasons);
    column->addWidget(m_since);
    column->addWidget(m_work);
    column->addWidget(m_evidence, 1);
    column->addStretch(0);
    setFocusProxy(m_table);
}

void TrackPanel::fitLetters()
{
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * verdictLetters);
    large.setBold(true);
    m_verdict->setFont(large);
    m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 8);
    m_columns->fit();
    m_misses->setMinimumHeight(leastMisses * fontMetrics().height());
}

void TrackPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange)
        fitLetters();
}

QWidget* TrackPanel::setRow()
{
    m_set->setObjectName(QStringLiteral("set"));
    m_set->setAccessibleName(tr("Forecasts shown below"));
    auto* row = new QHBoxLayout(m_setRow);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(boldTitle(tr("Forecasts &shown below:"), m_set));
    row->addWidget(m_set);
    row->addStretch(1);
    m_setRow->hide();
    return m_setRow;
}

QWidget* TrackPanel::plotSide()
{
    m_horizon->setObjectName(QStringLiteral("horizon"));
    m_horizon->setAccessibleName(tr("Forecasts within"));
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon)
        m_horizon->addItem(shown(m_book.speaker().translate(horizonWord(horizon).english)));
    m_plot->setObjectName(QStringLiteral("plot"));
    m_plot->setAccessibleName(tr("What was said against what came"));
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    auto* head = new QHBoxLayout;
    head->addWidget(boldTitle(tr("What was sai&d, and what came, within"), m_horizon));
    head->addWidget(m_horizon);
    head->addStretch(1);
    column->addLayout(head);
    column->addWidget(m_plot, 1);
    column->addWidget(m_plotHint);
    return side;
}

QWidget* TrackPanel::missSide()
{
    m_misses->setObjectName(QStringLiteral("misses"));
    m_misses->setAccessibleName(tr("The largest misses; Enter opens the unit"));
    m_misses->setWordWrap(true);
    m_misses->setResizeMode(QListView::Adjust);
    m_misses->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_noMisses->setText(tr("None: no settled forecast leaned the wrong way."));
    m_noMisses->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    QLabel* title = boldTitle(tr("Largest &misses (Enter or a double click opens the unit)"), m_misses);
    title->setMinimumHeight(m_horizon->sizeHint().height()); // on a line with the title of the plot
    column->addWidget(title);
    column->addWidget(m_misses, 1);
    column->addWidget(m_noMisses, 1);
    return side;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// How the season page is laid out, and what it says of its own state.

#include "ui/drawing/theme.h"
#include "ui/models/fleet_reviewer.h"
#include "ui/models/record_book.h"
#include "ui/pages/season/season_board_view.h"
#include "ui/pages/season/season_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QTextBrowser>

namespace padside {

namespace {

constexpr int sideWidth = 370;

} // namespace

void SeasonPage::makeLayout()
{
    m_search->setObjectName(QStringLiteral("searchSite"));
    m_search->setPlaceholderText(tr("Find a site"));
    m_search->setAccessibleName(tr("Find a site"));
    m_search->setClearButtonEnabled(true);
    m_search->setFixedWidth(220);
    m_state->setObjectName(QStringLiteral("state"));
    m_state->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_state->setWordWrap(true);
    m_progress->setMaximumWidth(160);
    m_progress->setTextVisible(false);
    m_progress->setAccessibleName(tr("Units reviewed"));
    m_stop->setObjectName(QStringLiteral("stop"));
    m_board->setObjectName(QStringLiteral("board"));
    m_empty->setObjectName(QStringLiteral("empty"));
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    m_cost->setObjectName(QStringLiteral("cost"));
    m_cost->setWordWrap(true);
    m_cost->setMargin(6);
    m_cost->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_cost->setMinimumHeight(fontMetrics().lineSpacing() * 4 + 12);
    m_trip->setObjectName(QStringLiteral("trip"));
    m_trip->setAccessibleName(tr("The chosen trip"));
    m_trip->setOpenLinks(false);
    m_trip->setFrameShape(QFrame::NoFrame);
    m_trip->document()->setDocumentMargin(12);
    m_overdue->setObjectName(QStringLiteral("overdue"));
    m_overdue->setCheckable(true);
    m_overdue->setAccessibleName(tr("Show what is overdue instead of the trip"));
    m_orders->setObjectName(QStringLiteral("orders"));
    m_orders->setCheckable(true);
    m_orders->setAccessibleName(tr("Show the parts to order instead of the trip"));
    m_daySheet->setObjectName(QStringLiteral("daySheet"));
    m_daySheet->setEnabled(false);
    m_keep->setObjectName(QStringLiteral("keepDay"));
    m_keep->setToolTip(tr("A day that is kept stays, whatever is found until then. Key: K"));
    m_keep->hide();
    m_back->setObjectName(QStringLiteral("moveBack"));
    m_back->hide();

    auto* bar = new QHBoxLayout;
    bar->setContentsMargins(10, 8, 10, 8);
    bar->setSpacing(6);
    bar->addWidget(m_search);
    bar->addSpacing(8);
    bar->addWidget(m_state, 1);
    bar->addWidget(m_progress);
    bar->addWidget(m_overdue);
    bar->addWidget(m_orders);
    bar->addWidget(m_stop);

    const auto secondRank = [](const QString& text) {
        auto* label = new QLabel(text);
        label->setWordWrap(true);
        label->setMargin(6);
        label->setForegroundRole(QPalette::PlaceholderText); // second-rank text in every theme
        return label;
    };
    auto* legend = secondRank(
        tr("Number: checks of the trip · filled: overdue or late · foot: the day stays, kept or moved by hand · "
           "shaded: the site's spring and fall weeks"));
    legend->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* keys
        = secondRank(tr("K keeps a trip's day; Alt+←/→ moves it by a week, with Shift by a day; Enter puts it down, "
                        "Esc gives up"));
    m_underBoard->addWidget(legend);
    m_underBoard->addWidget(m_cost);
    m_underBoard->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);

    auto* boardSide = new QWidget;
    auto* left = new QVBoxLayout(boardSide);
    left->setContentsMargins(0, 0, 0, 0);
    left->setSpacing(0);
    left->addWidget(m_empty, 1);
    left->addWidget(m_board, 1);
    left->addWidget(keys);
    left->addWidget(m_underBoard); // last: a cost may need more lines than what the marks mean

    auto* right = new QVBoxLayout(m_tripSide);
    right->setContentsMargins(0, 0, 0, 0);
    right->addWidget(m_trip, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setContentsMargins(10, 4, 10, 8);
    buttons->addWidget(m_keep);
    buttons->addWidget(m_back);
    buttons->addStretch(1);
    buttons->addWidget(m_daySheet);
    right->addLayout(buttons);

    auto* splitter = new QSplitter;
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(boardSide);
    splitter->addWidget(m_tripSide);
    splitter->setStretchFactor(0, 1);
    splitter->setSizes({1280 - sideWidth, sideWidth});

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addLayout(bar);
    layout->addWidget(splitter, 1);
    m_aboutBoard = {m_underBoard, keys};
    showTrip();
}

void SeasonPage::showCost(const QString& said)
{
    m_cost->setText(said);
    m_underBoard->setCurrentIndex(said.isEmpty() ? 0 : 1);
}

void SeasonPage::sayState()
{
    const auto fleet = m_fleet.fleet();
    const auto done = static_cast<int>(fleet->units.size() + fleet->unread.size());
    const auto count = static_cast<int>(fleet->count);
    const bool isRunning = m_fleet.isRunning();
    const auto trips = static_cast<int>(m_plan.tripCount());
    QStringList said;
    if (isRunning && count == 0)
        said << tr("Reading the record…");
    else if (isRunning)
        said << tr("%1 of %2 units reviewed, %3 trips so far.").arg(done).arg(count).arg(trips);
    else if (!fleet->isWhole())
        said << tr("Stopped: %1 of %2 units are reviewed. Trips of the others are missing here.").arg(done).arg(count);
    else if (trips == 0)
        said << tr("No trips in the coming year.");
    else
        said << (trips == 1 ? tr("One trip in the coming year.") : tr("%n trips in the coming year.", nullptr, trips));
    if (trips > 0)
        said << m_words.overdue(overdueCount(fleet->units, fleet->today));
    if (!fleet->unread.empty())
        said << tr("Could not be read: %1 (%2).")
                    .arg(QString::fromStdString(fleet->unread.front().tag),
                         m_words.said(fleet->unread.front().because));
    if (fleet->unread.size() > 1)
        said << tr("And %n more.", nullptr, static_cast<int>(fleet->unread.size()) - 1);
    m_state->setText(said.join(QLatin1Char(' ')));
    m_progress->setVisible(isRunning);
    m_progress->setRange(0, count);
    m_progress->setValue(done);
    m_stop->setVisible(isRunning || !fleet->isWhole());
    m_stop->setText(isRunning ? tr("&Stop") : tr("&Go on"));

    const bool isEmpty = trips == 0 && !isRunning;
    m_empty->setVisible(isEmpty);
    m_board->setVisible(!isEmpty);
    for (QWidget* about : m_aboutBoard)
        about->setVisible(!isEmpty);
    m_tripSide->setVisible(fleet->count > 0 || isRunning);
    m_overdue->setVisible(fleet->count > 0 || isRunning);
    m_orders->setVisible(fleet->count > 0 || isRunning);
    if (fleet->count == 0)
        m_empty->setText(tr("<h3>This file has no units yet.</h3><p>Trips will stand here once there are units.</p>"));
    else
        m_empty->setText(tr("<h3>Nothing is due in the coming year.</h3>"
                            "<p>Checks follow from visits: log one, and what is to be looked at again will stand "
                            "here.</p>"));
}

} // namespace padside

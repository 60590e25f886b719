// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/ledger_panel.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QTreeWidget>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

#include <algorithm>

namespace padside {

LedgerPanel::LedgerPanel(RecordBook& book, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_says(new QLabel)
    , m_days(new QTreeWidget)
{
    m_says->setObjectName(u"ledgerSays"_s);
    m_says->setWordWrap(true);
    m_says->setTextFormat(Qt::PlainText);
    m_says->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_days->setObjectName(u"ledgerDays"_s);
    m_days->setAccessibleName(tr("Refrigerant day by day"));
    m_days->setColumnCount(columns);
    m_days->setHeaderLabels({tr("Day"), tr("In"), tr("Recovered"), tr("Lost"), tr("For a leak"), tr("Annualizing"),
                             tr("Rolling"), tr("Cylinder, reason")});
    m_days->headerItem()->setToolTip(topUp, tr("Of what went in: what made up for a leak, not a charge put back"));
    m_days->headerItem()->setToolTip(annualizing, tr("Leak rate a year by the annualizing method"));
    m_days->headerItem()->setToolTip(rolling, tr("Leak rate a year by the rolling average method"));
    m_days->setRootIsDecorated(false);
    m_days->setAllColumnsShowFocus(true);
    m_days->setTabKeyNavigation(false);
    m_days->setTextElideMode(Qt::ElideRight);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 8, 4, 4);
    column->setSpacing(4);
    column->addWidget(m_says);
    column->addWidget(m_days, 1);
    column->addStretch(0); // the sentences stay at the top where there is no table
}

QString LedgerPanel::massText(double kilograms) const
{
    return kilograms > 0 ? shown(m_book.speaker().amount(Amount{kilograms, QuantityKind::mass})) : QString();
}

QString LedgerPanel::rateText(const std::optional<double>& rate) const
{
    return rate ? shown(m_book.speaker().amount(Amount{*rate, QuantityKind::ratio})) : QString();
}

void LedgerPanel::addDay(const LedgerDay& one)
{
    QStringList words;
    for (const std::string& cylinder : one.cylinders)
        words << shown(cylinder);
    for (const std::string& reason : one.reasons)
        words << shown(m_book.speaker().translate(reason));
    const QString detail = words.join(u", "_s);
    auto* item = new QTreeWidgetItem(m_days);
    item->setText(day, m_book.speaker().shownDate(one.on));
    item->setText(added, massText(one.addedKg));
    item->setText(recovered, massText(one.recoveredKg));
    item->setText(lost, massText(one.lostKg));
    item->setText(topUp, massText(one.topUpKg));
    item->setText(annualizing, rateText(one.annualized));
    item->setText(rolling, rateText(one.rolling));
    item->setText(details, detail);
    item->setToolTip(details, detail);
    for (int number = added; number <= rolling; ++number)
        item->setTextAlignment(number, Qt::AlignRight | Qt::AlignVCenter);
}

void LedgerPanel::setSnapshot(const UnitSnapshot& snapshot)
{
    const UnitLedger ledger = unitLedger(snapshot.record, m_book.catalogue(), snapshot.review.today);
    QStringList says;
    for (const Sentence& sentence : ledgerSentences(ledger))
        says << m_book.speaker().said(sentence);
    if (ledger.lastTopUp())
        says << m_book.speaker().said(leakReckoning());
    m_says->setText(says.join(u' '));
    m_days->clear();
    std::for_each(ledger.days.rbegin(), ledger.days.rend(), // the newest is what people look for
                  [this](const LedgerDay& one) { addDay(one); });
    m_days->setVisible(!ledger.days.empty());
    for (int column = day; column < details; ++column)
        m_days->resizeColumnToContents(column);
}

} // namespace padside

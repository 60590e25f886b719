// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/person_panel.h"

#include "core/quantity/currency.h"
#include "ui/drawing/level_labels.h"
#include "ui/models/preferences.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

PersonPanel::PersonPanel(const RecordBook& book, const Preferences& preferences, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_technician(new QLineEdit(preferences.technician))
    , m_contractor(new QLineEdit(preferences.contractor))
    , m_paper(new QComboBox)
    , m_currency(new QLineEdit(preferences.currency))
{
    m_technician->setObjectName(u"technician"_s);
    m_technician->setPlaceholderText(tr("Signs every visit that is begun here"));
    m_contractor->setObjectName(u"contractor"_s);
    m_contractor->setPlaceholderText(tr("Stands at the head of each page"));
    m_paper->setObjectName(u"paper"_s);
    m_paper->addItem(tr("As usual where this computer is"), QString());
    m_paper->addItem(tr("A4"), u"a4"_s);
    m_paper->addItem(tr("Letter"), u"letter"_s);
    m_paper->setCurrentIndex(std::max(0, m_paper->findData(preferences.paperSize)));
    m_currency->setObjectName(u"currency"_s);
    m_currency->setPlaceholderText(tr("EUR, $, kr, … (empty: plain numbers)"));

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(makeWho());
    column->addWidget(makePaper());
}

QWidget* PersonPanel::makeWho()
{
    auto* box = new QGroupBox(tr("You and your firm"));
    auto* form = new QFormLayout(box);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Technician"), m_technician);
    form->addRow(tr("&Contractor on paper"), m_contractor);
    levelLabels(*form);
    m_technician->setAccessibleName(tr("Technician"));
    m_contractor->setAccessibleName(tr("Contractor on paper"));
    return box;
}

QWidget* PersonPanel::makePaper()
{
    auto* box = new QGroupBox(tr("Paper and money"));
    auto* form = new QFormLayout(box);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Paper size"), m_paper);
    form->addRow(tr("Cu&rrency"), m_currency);
    auto* hint
        = new QLabel(tr("The currency's name stands beside every amount of money, on screen and on paper. Amounts "
                        "stay as they were typed; nothing is converted."));
    hint->setWordWrap(true);
    form->addRow(hint);
    levelLabels(*form);
    m_paper->setAccessibleName(tr("Paper size"));
    m_currency->setAccessibleName(tr("Currency"));
    return box;
}

QString PersonPanel::problem() const
{
    const auto currency = parseCurrency(m_currency->text().toStdString());
    return currency ? QString() : m_book.speaker().said(currency.error().what);
}

void PersonPanel::writeTo(Preferences& preferences) const
{
    preferences.technician = m_technician->text().trimmed();
    preferences.contractor = m_contractor->text().trimmed();
    preferences.paperSize = m_paper->currentData().toString();
    preferences.currency = m_currency->text().trimmed();
}

} // namespace padside

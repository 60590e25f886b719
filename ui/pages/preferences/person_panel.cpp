// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/person_panel.h"

#include "ui/drawing/level_labels.h"
#include "ui/models/preferences.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLineEdit>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

PersonPanel::PersonPanel(const Preferences& preferences, QWidget* parent)
    : QWidget(parent)
    , m_technician(new QLineEdit(preferences.technician))
    , m_contractor(new QLineEdit(preferences.contractor))
    , m_paper(new QComboBox)
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

    auto* form = new QFormLayout(this);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Technician"), m_technician);
    form->addRow(tr("&Contractor on paper"), m_contractor);
    form->addRow(tr("&Paper size"), m_paper);
    levelLabels(*form);
    m_technician->setAccessibleName(tr("Technician"));
    m_contractor->setAccessibleName(tr("Contractor on paper"));
    m_paper->setAccessibleName(tr("Paper size"));
}

void PersonPanel::writeTo(Preferences& preferences) const
{
    preferences.technician = m_technician->text().trimmed();
    preferences.contractor = m_contractor->text().trimmed();
    preferences.paperSize = m_paper->currentData().toString();
}

} // namespace padside

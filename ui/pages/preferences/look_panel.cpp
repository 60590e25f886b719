// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/look_panel.h"

#include "ui/drawing/level_labels.h"
#include "ui/models/preferences.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

LookPanel::LookPanel(const Preferences& preferences, const std::vector<Language>& languages, QWidget* parent)
    : QWidget(parent)
    , m_language(new QComboBox)
    , m_theme(new QComboBox)
    , m_fieldSize(new QCheckBox(tr("&Field size (touch and gloves)")))
{
    m_language->setObjectName(u"language"_s);
    m_language->addItem(tr("As this computer is set"), QString());
    for (const Language& language : languages)
        m_language->addItem(language.name, language.code);
    if (!preferences.language.isEmpty() && m_language->findData(preferences.language) < 0)
        m_language->addItem(tr("%1 (its translation is missing)").arg(preferences.language), preferences.language);
    m_language->setCurrentIndex(std::max(0, m_language->findData(preferences.language)));

    m_theme->setObjectName(u"theme"_s);
    m_theme->addItem(tr("As this computer is set"), QString());
    m_theme->addItem(tr("Light"), u"light"_s);
    m_theme->addItem(tr("Dark"), u"dark"_s);
    m_theme->addItem(tr("Sunlight (strong contrast)"), u"sunlight"_s);
    m_theme->setCurrentIndex(std::max(0, m_theme->findData(preferences.theme)));

    m_fieldSize->setObjectName(u"fieldSize"_s);
    m_fieldSize->setChecked(preferences.fieldSize);

    auto* hint = new QLabel(tr("What you have written down stays as it was written. "
                               "The command line speaks English."));
    hint->setWordWrap(true);
    auto* box = new QGroupBox(tr("Language and colours"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(box);
    auto* form = new QFormLayout(box);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form->addRow(tr("&Language"), m_language);
    form->addRow(tr("C&olours"), m_theme);
    form->addRow(QString(), m_fieldSize);
    form->addRow(hint);
    levelLabels(*form);
    m_language->setAccessibleName(tr("Language"));
    m_theme->setAccessibleName(tr("Colours"));
}

void LookPanel::writeTo(Preferences& preferences) const
{
    preferences.language = m_language->currentData().toString();
    preferences.theme = m_theme->currentData().toString();
    preferences.fieldSize = m_fieldSize->isChecked();
}

} // namespace padside

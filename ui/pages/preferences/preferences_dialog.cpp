// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/preferences/preferences_dialog.h"

#include "ui/drawing/level_labels.h"
#include "ui/drawing/page_area.h"
#include "ui/models/record_book.h"
#include "ui/pages/preferences/look_panel.h"
#include "ui/pages/preferences/own_catalogue_panel.h"
#include "ui/pages/preferences/person_panel.h"
#include "ui/pages/preferences/season_panel.h"
#include "ui/pages/preferences/units_panel.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr QSize usualSize{960, 640};
constexpr int widestForm = 760;
constexpr int betweenGroups = 12;

} // namespace

PreferencesDialog::PreferencesDialog(RecordBook& book, const Preferences& preferences, const Offered& offered,
                                     QWidget* parent)
    : QDialog(parent)
    , m_before(preferences)
    , m_tabs(new QTabWidget)
    , m_person(new PersonPanel(book, preferences))
    , m_units(new UnitsPanel(book, preferences, offered.usualUnits))
    , m_look(new LookPanel(preferences, offered.languages))
    , m_seasons(new SeasonPanel(book))
    , m_catalogue(new OwnCataloguePanel(book, offered.shippedCatalogue))
    , m_said(new QLabel)
{
    setObjectName(u"preferences"_s);
    setWindowTitle(tr("Preferences"));
    m_tabs->setObjectName(u"preference-tabs"_s);
    m_tabs->setAccessibleName(tr("Kinds of preferences"));
    m_tabs->tabBar()->setAccessibleName(tr("Kinds of preferences"));
    m_tabs->addTab(makeYours(), tr("&You on this computer"));
    m_tabs->addTab(new PageArea(m_units), tr("U&nits"));
    m_tabs->addTab(m_seasons, tr("&Seasons in this file"));
    m_tabs->addTab(m_catalogue, tr("Your c&atalogue in this file"));

    m_said->setObjectName(u"preferences-said"_s);
    m_said->setWordWrap(true);
    QFont bold = m_said->font();
    bold.setBold(true);
    m_said->setFont(bold);
    m_said->hide();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    connect(buttons, &QDialogButtonBox::accepted, this, &PreferencesDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &PreferencesDialog::reject);
    connect(&book, &RecordBook::failed, this,
            [this](const QString& sentence) { stay(m_tabs->currentWidget(), sentence); });
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_tabs, 1);
    layout->addWidget(m_said);
    layout->addWidget(buttons);
    resize(usualSize);
}

/// The person's own choices under one another, no wider than can be read in one go.
QWidget* PreferencesDialog::makeYours()
{
    auto* yours = new QWidget;
    yours->setMaximumWidth(widestForm);
    auto* column = new QVBoxLayout(yours);
    column->setSpacing(betweenGroups);
    auto* hint = new QLabel(tr("Kept on this computer, whichever file is open. It takes effect when you choose OK."));
    hint->setWordWrap(true);
    column->addWidget(hint);
    column->addWidget(m_person);
    column->addWidget(m_look);
    column->addStretch(1);
    shareLabelWidth(*yours);
    m_yours = new PageArea(yours);
    return m_yours;
}

bool PreferencesDialog::stay(QWidget* panel, const QString& why)
{
    m_said->setText(why);
    m_said->setAccessibleName(why);
    m_said->setVisible(!why.isEmpty());
    if (why.isEmpty())
        return false;
    m_tabs->setCurrentWidget(panel);
    return true;
}

void PreferencesDialog::accept()
{
    if (stay(m_yours, m_person->problem()) || stay(m_seasons, m_seasons->problem())
        || stay(m_catalogue, m_catalogue->problem()))
        return;
    const bool catalogueChanged = m_catalogue->differs();
    if (!m_seasons->keep() || !m_catalogue->keep())
        return; // failed() has said why
    Preferences now = m_before;
    m_person->writeTo(now);
    m_units->writeTo(now);
    m_look->writeTo(now);
    QDialog::accept();
    Q_EMIT chosen(now, catalogueChanged);
}

} // namespace padside

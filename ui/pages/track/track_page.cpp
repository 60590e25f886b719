// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/track/track_page.h"

#include "ui/drawing/page_area.h"
#include "ui/pages/track/rates_panel.h"
#include "ui/pages/track/track_panel.h"

#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

namespace padside {

TrackPage::TrackPage(RecordBook& book, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_tabs(new QTabWidget)
    , m_record(new TrackPanel(book, theme))
    , m_rates(new RatesPanel(book, theme))
{
    m_tabs->setObjectName(QStringLiteral("track"));
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(new PageArea(m_record), tr("Track &record"));
    m_tabs->addTab(new PageArea(m_rates), tr("How long parts &last"));
    m_tabs->setAccessibleName(tr("Looking back"));
    m_tabs->tabBar()->setAccessibleName(tr("Looking back"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_tabs);
    setFocusProxy(m_tabs);
    connect(m_record, &TrackPanel::unitRequested, this, &TrackPage::unitRequested);
    connect(m_rates, &RatesPanel::catalogueChanged, this, &TrackPage::catalogueChanged);
}

void TrackPage::refresh()
{
    m_record->refresh();
}

void TrackPage::showTab(Tab tab)
{
    m_tabs->setCurrentIndex(static_cast<int>(tab));
    setFocusProxy(tab == Tab::rates ? static_cast<QWidget*>(m_rates) : m_tabs);
}

TrackPage::Tab TrackPage::tab() const
{
    return static_cast<Tab>(m_tabs->currentIndex());
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/store/store.h"
#include "core/store/visit_book.h"
#include "ui/models/record_book.h"
#include "ui/pages/fleet/fleet_page.h"
#include "ui/pages/paper/print_page.h"
#include "ui/pages/season/season_page.h"
#include "ui/pages/track/track_page.h"
#include "ui/pages/unit/unit_page.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/shell/main_window.h"
#include "ui/shell/unit_list_panel.h"

#include <QStackedWidget>

namespace padside {

QString MainWindow::file() const
{
    return m_book.store().path();
}

std::optional<Place> MainWindow::place() const
{
    const auto unit = m_units->selected();
    if (!unit)
        return std::nullopt;
    const QWidget* page = m_pages->currentWidget();
    if (page == m_seasonPage || (page == m_printPage && m_paperOfSeason))
        return Place{Place::Page::season, *unit, {}};
    if (page == m_fleetPage)
        return Place{Place::Page::fleet, *unit, {}};
    if (page == m_trackPage)
        return Place{m_trackPage->tab() == TrackPage::Tab::rates ? Place::Page::rates : Place::Page::track, *unit, {}};
    if (page == m_visitPage)
        return Place{Place::Page::visit, *unit, m_visitPage->sheet().visit.id};
    if (page == m_printPage && !m_printPage->visit().isNull())
        return Place{Place::Page::summary, *unit, m_printPage->visit()};
    return Place{Place::Page::unit, *unit, {}};
}

void MainWindow::goTo(const Place& place)
{
    if (!m_units->holds(place.unit)) // another file of the same name, perhaps
        return;
    showUnit(place.unit);
    if (place.page == Place::Page::season)
        showSeason();
    else if (place.page == Place::Page::fleet)
        showFleet();
    else if (place.page == Place::Page::track || place.page == Place::Page::rates)
        showTrack(place.page == Place::Page::rates);
    if (place.visit.isNull())
        return;
    std::optional<Visit> visit;
    m_book.attempt([&] { visit = m_book.store().visits().visit(place.visit); });
    if (!visit || visit->unitId != place.unit) // the open visit was discarded since
        return;
    if (place.page == Place::Page::visit)
        showVisit(place.visit);
    else
        showSummary(place.unit, place.visit);
}

void MainWindow::followUnits()
{
    const QWidget* shown = m_pages->currentWidget();
    if (m_units->isEmpty()) {
        showWelcome();
        return;
    }
    if (shown != m_welcomePage && shown != m_unitPage)
        return;
    if (shown == m_welcomePage || !m_units->holds(m_unitPage->unit()))
        m_units->selectFirst();
    if (const auto unit = m_units->selected())
        showUnit(*unit);
}

void MainWindow::showWelcome()
{
    if (m_welcomePage == nullptr) // most files never need it, and its long texts take time to lay out, shown or not
        makeWelcomePage();
    m_units->hide(); // there is nothing to list yet
    m_pages->setCurrentWidget(m_welcomePage);
    m_welcomePage->setFocus();
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Where on the visit page the person is, and how they get to another place: zone by zone, by undo, to the side.

#include "ui/pages/visit/charge_panel.h"
#include "ui/pages/visit/closing_panel.h"
#include "ui/pages/visit/conditions_bar.h"
#include "ui/pages/visit/readings_panel.h"
#include "ui/pages/visit/treatment_panel.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/pages/visit/zone_list.h"
#include "ui/pages/visit/zone_panel.h"

#include <QLabel>
#include <QTabWidget>

#include <algorithm>

namespace padside {

void VisitPage::goTo(std::size_t index)
{
    if (index >= m_sheet.zones.size() || !m_zone->keepNote()) {
        if (const auto stay = zone())
            m_list->select(*stay);
        return;
    }
    if (m_messageIsHint)
        m_message->hide(); // it was about the zone before
    m_index = index;
    showZone();
    m_zone->scrollToTop();
}

void VisitPage::step(int by)
{
    const auto target = static_cast<std::ptrdiff_t>(m_index) + by;
    if (target >= 0 && target < static_cast<std::ptrdiff_t>(m_sheet.zones.size()))
        goTo(static_cast<std::size_t>(target));
    else
        hint(by > 0 ? tr("This is the last zone. O goes to the next one not looked at, F6 finishes the visit.")
                    : tr("This is the first zone."));
    m_zone->setFocus();
}

void VisitPage::goToNextOpenZone()
{
    for (std::size_t offset = 1; offset <= m_sheet.zones.size(); ++offset) {
        const std::size_t index = (m_index + offset) % m_sheet.zones.size();
        if (!m_sheet.zones[index].found && !m_sheet.zones[index].fittedToday) {
            goTo(index);
            m_zone->setFocus();
            return;
        }
    }
    hint(tr("Every zone was looked at. F6 finishes the visit."));
}

void VisitPage::openSide(Side side)
{
    m_side->setCurrentIndex(side);
    switch (side) {
    case readingsSide:
        m_readings->focusFirst();
        break;
    case workSide:
        m_work->focusFirst();
        break;
    case chargeSide:
        m_charges->focusFirst();
        break;
    case closingSide:
        m_closing->focusFirst();
        break;
    }
}

void VisitPage::undo()
{
    if (const auto place = m_zone->keepNote() ? m_log.undo() : std::nullopt)
        goToPlace(*place);
}

void VisitPage::redo()
{
    if (const auto place = m_zone->keepNote() ? m_log.redo() : std::nullopt)
        goToPlace(*place);
}

void VisitPage::goToPlace(const VisitPlace& place)
{
    const auto line = std::ranges::find_if(
        m_sheet.zones, [&](const ZoneLine& one) { return place.zone && one.zone.id == *place.zone; });
    if (line != m_sheet.zones.end())
        goTo(static_cast<std::size_t>(line - m_sheet.zones.begin()));
    switch (place.part) {
    case VisitPlace::Part::zone:
        m_zone->setPhase(place.phase);
        m_zone->setFocus();
        break;
    case VisitPlace::Part::head:
        m_conditions->focusFirst();
        break;
    case VisitPlace::Part::readings:
        m_side->setCurrentIndex(readingsSide);
        m_readings->focusReading(place.reading, place.phase);
        break;
    case VisitPlace::Part::work:
        openSide(workSide);
        break;
    case VisitPlace::Part::refrigerant:
        openSide(chargeSide);
        break;
    case VisitPlace::Part::finish:
        openSide(closingSide);
        break;
    }
}

} // namespace padside

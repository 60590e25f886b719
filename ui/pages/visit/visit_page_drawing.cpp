// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// The drawing of the opened unit at a visit: it fills in as zones are looked at and leads to those that are not.

#include "ui/drawing/cutaway_view.h"
#include "ui/drawing/theme.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/visit_page.h"
#include "ui/pages/visit/zone_panel.h"

#include <QBoxLayout>
#include <QResizeEvent>
#include <QTabBar>
#include <QTabWidget>

#include <algorithm>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int heightForBoth = 900; ///< of the page: from here on the drawing stands beneath the side's tabs
constexpr int widthForWideSide = 1500;
constexpr int narrowSide = 356;
constexpr int wideSide = 470;

} // namespace

void VisitPage::makeDrawing()
{
    m_cutaway->setObjectName(u"cutaway"_s);
    connect(m_cutaway, &CutawayView::partActivated, this, [this](PartId, ZoneId zone) {
        const auto line = std::ranges::find_if(m_sheet.zones, [&](const ZoneLine& one) { return one.zone.id == zone; });
        if (line == m_sheet.zones.end())
            return;
        goTo(static_cast<std::size_t>(line - m_sheet.zones.begin()));
        m_zone->setFocus();
    });
}

void VisitPage::fillDrawing()
{
    m_cutaway->setContent(cutawayOfVisit(m_sheet.record, m_sheet.visit.id, m_book.catalogue(), m_book.speaker()));
}

void VisitPage::placeDrawing(bool beneath)
{
    const int tab = m_side->indexOf(m_cutaway);
    const bool stands = m_sideColumn->indexOf(m_cutaway) >= 0;
    if (beneath && !stands) {
        if (tab >= 0)
            m_side->removeTab(tab);
        m_sideColumn->addWidget(m_cutaway);
        m_sideColumn->setStretch(0, 3);
        m_sideColumn->setStretch(1, 2);
        m_cutaway->show();
    } else if (!beneath && tab < 0) {
        m_sideColumn->removeWidget(m_cutaway);
        m_side->addTab(m_cutaway, tr("Unit"));
    }
}

void VisitPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitSide();
}

void VisitPage::fitSide()
{
    const Size& size = m_theme.size;
    const bool wide = width() >= size.wide(widthForWideSide);
    m_side->setFixedWidth(size.wide(wide ? wideSide : narrowSide));
    for (int tab = readingsSide; tab <= closingSide; ++tab) // with its key where there is room for both
        m_side->setTabText(tab, wide ? m_side->tabToolTip(tab) : m_side->tabBar()->tabData(tab).toString());
    m_cutaway->setMaximumWidth(m_side->maximumWidth());
    placeDrawing(height() >= size.wide(heightForBoth));
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/pages/visit/visit_fixture.h"
#include "ui/drawing/cutaway_view.h"

#include <QTabWidget>
#include <QTest>

#include <algorithm>

namespace padside::test {

namespace {

const CutawayPart& vesselIn(const CutawayView& view)
{
    return *std::ranges::find(view.content().parts, std::string("suction-accumulator"), &CutawayPart::kind);
}

} // namespace

TEST_F(VisitPageTest, TheDrawingFillsInWithTodaysGradesAndFollowsTheZoneAtHand)
{
    open();
    start();
    const auto* view = find<CutawayView>("cutaway");
    ASSERT_EQ(view->content().parts.size(), 3U);
    for (const CutawayPart& part : view->content().parts)
        EXPECT_FALSE(part.grade.has_value()) << "last year's grades are not today's";
    goTo("crown");
    EXPECT_EQ(view->current(), vesselIn(*view).id);
    key(Qt::Key_4);
    EXPECT_EQ(vesselIn(*view).grade, Grade::poor);
}

TEST_F(VisitPageTest, APartOfTheDrawingLeadsToItsFirstZoneNotLookedAt)
{
    open();
    start();
    goTo("crown");
    key(Qt::Key_2);
    auto* view = find<CutawayView>("cutaway");
    const ZoneId next = vesselIn(*view).zone;
    EXPECT_NE(next, zoneId("crown"));
    const auto part = std::ranges::find(view->content().parts, vesselIn(*view).id, &CutawayPart::id);
    view->activate(static_cast<std::size_t>(part - view->content().parts.begin()));
    EXPECT_EQ(m_page->zone(), next);
}

TEST_F(VisitPageTest, TheDrawingStandsBesideTheZoneWhereThereIsRoomAndIsATabWhereThereIsNot)
{
    open();
    start();
    auto* side = find<QTabWidget>("side");
    auto* view = find<CutawayView>("cutaway");
    m_page->resize(1280, 740);
    EXPECT_GE(side->indexOf(view), 0);
    EXPECT_EQ(side->count(), 5);
    m_page->resize(1600, 1000);
    EXPECT_EQ(side->indexOf(view), -1);
    EXPECT_TRUE(view->isVisible());
    EXPECT_GE(view->width(), 420);
    m_page->resize(1280, 740);
    EXPECT_GE(side->indexOf(view), 0);
}

} // namespace padside::test

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "tests/ui/drawing/small_timeline.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_view.h"

#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace padside {

using test::aUnit;
using test::day;
using test::smallCatalogue;

namespace {

/// Visits of three springs; bottom seen at each, crown at the first only.
UnitRecord threeSprings(bool another = false)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"});
    builder.visit("2022-04-10").graded("bottom", 2).graded("crown", 1);
    builder.visit("2023-04-10").graded("bottom", 2);
    builder.visit("2024-04-10").graded("bottom", 3);
    if (another)
        builder.visit("2024-10-10").graded("bottom", 4);
    return builder.build();
}

/// The view, shown and focused.
struct Shown
{
    UnitRecord record = threeSprings();
    TimelineView view{plainEnglish(), Theme::light()};
    QSignalSpy activated{&view, &TimelineView::visitActivated};

    Shown()
    {
        view.resize(900, 300);
        view.setTimeline(test::timelineTo2024(record));
        view.show();
        view.setFocus();
    }

    void press(std::initializer_list<Qt::Key> keys)
    {
        for (const Qt::Key key : keys)
            QTest::keyClick(&view, key);
    }
};

} // namespace

TEST(TimelineView, ArrowKeysWalkFromMarkToMarkAndEnterOpensTheVisit)
{
    Shown shown;
    shown.press({Qt::Key_Left}); // the first key takes the latest visit
    ASSERT_EQ(shown.view.selected(), (MarkPlace{0, 0, 2}));
    shown.press({Qt::Key_Left});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{0, 0, 1}));
    shown.press({Qt::Key_Down, Qt::Key_Down});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{1, 1, 0})) << "through crown, whose only mark is the first";
    shown.press({Qt::Key_End, Qt::Key_Return});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{1, 1, 2}));
    ASSERT_EQ(shown.activated.count(), 1);
    EXPECT_EQ(shown.activated.at(0).at(0).value<VisitId>(), shown.record.visits[2].id);
}

TEST(TimelineView, WalkingStopsAtTheEnds)
{
    Shown shown;
    shown.press({Qt::Key_Home, Qt::Key_Home, Qt::Key_Up});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{0, 0, 0}));
    shown.press({Qt::Key_Down, Qt::Key_Down, Qt::Key_Down, Qt::Key_Down});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{1, 1, 0}));
    shown.press({Qt::Key_End, Qt::Key_Right});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{1, 1, 2}));
}

TEST(TimelineView, AClickOnAMarkOpensItsVisit)
{
    Shown shown;
    const PlacedMark* mark = shown.view.geometryNow().placed(MarkPlace{1, 1, 1});
    ASSERT_NE(mark, nullptr);
    QTest::mouseClick(shown.view.viewport(), Qt::LeftButton, {}, mark->found.center().toPoint());
    ASSERT_EQ(shown.activated.count(), 1);
    EXPECT_EQ(shown.activated.at(0).at(0).value<VisitId>(), shown.record.visits[1].id);
    QTest::mouseClick(shown.view.viewport(), Qt::LeftButton, {}, QPoint(5, 5));
    EXPECT_EQ(shown.activated.count(), 1) << "beside the marks there is nothing to open";
}

TEST(TimelineView, PlusZoomsInMinusOutAndZeroShowsAllYears)
{
    Shown shown;
    const double all = shown.view.geometryNow().axis.pixelsPerDay();
    shown.press({Qt::Key_Plus, Qt::Key_Plus});
    EXPECT_GT(shown.view.geometryNow().axis.pixelsPerDay(), all * 1.4);
    EXPECT_GT(shown.view.horizontalScrollBar()->maximum(), 0);
    shown.press({Qt::Key_Minus});
    EXPECT_NEAR(shown.view.geometryNow().axis.pixelsPerDay(), all * 1.25, all * 0.02);
    shown.press({Qt::Key_0});
    EXPECT_NEAR(shown.view.geometryNow().axis.pixelsPerDay(), all, all * 0.001);
    shown.press({Qt::Key_Minus});
    EXPECT_NEAR(shown.view.geometryNow().axis.pixelsPerDay(), all, all * 0.001) << "no further out than all years";
}

TEST(TimelineView, ZoomingKeepsTheDayUnderThePointer)
{
    Shown shown;
    const double x = 600;
    const double before = shown.view.geometryNow().axis.dayAt(x);
    shown.view.zoomBy(3, x);
    EXPECT_NEAR(shown.view.geometryNow().axis.dayAt(x), before, 1.0);
}

TEST(TimelineView, ASelectedMarkIsBroughtIntoView)
{
    Shown shown;
    shown.view.zoomBy(6, 880);
    shown.view.resize(900, 125);
    shown.view.select(MarkPlace{1, 1, 0});
    const PlacedMark* mark = shown.view.geometryNow().placed(MarkPlace{1, 1, 0});
    ASSERT_NE(mark, nullptr);
    EXPECT_GE(mark->area.left(), shown.view.geometryNow().sizes.names());
    EXPECT_LE(mark->area.right(), shown.view.viewport()->width());
    EXPECT_LE(mark->area.bottom() - shown.view.verticalScrollBar()->value(), shown.view.viewport()->height());
}

TEST(TimelineView, NewEntriesKeepTheSelection)
{
    Shown shown;
    shown.view.select(MarkPlace{1, 1, 1});
    shown.view.setTimeline(test::timelineTo2024(threeSprings(true)));
    EXPECT_EQ(shown.view.selected(), (MarkPlace{1, 1, 1}));
}

TEST(TimelineView, IsNamedAndDescribedForAScreenReader)
{
    Shown shown;
    EXPECT_FALSE(shown.view.accessibleName().isEmpty());
    EXPECT_FALSE(shown.view.viewport()->accessibleName().isEmpty());
    EXPECT_TRUE(shown.view.accessibleDescription().contains(QStringLiteral("2022-04-10")))
        << "a summary while nothing is chosen";
    shown.view.select(MarkPlace{1, 1, 2});
    EXPECT_TRUE(shown.view.accessibleDescription().startsWith(QStringLiteral("2024-04-10 spring")));
}

TEST(TimelineView, AZoneIsChosenByItsLatestMark)
{
    Shown shown;
    shown.view.selectZone(shown.record.parts[0].zones[1].id);
    EXPECT_EQ(shown.view.selected(), (MarkPlace{1, 1, 2}));
}

TEST(TimelineView, AUnitWithoutVisitsTakesKeysWithoutHarm)
{
    Shown shown;
    shown.view.setTimeline(test::timelineTo2024(aUnit("HB-02").build()));
    shown.press({Qt::Key_Left, Qt::Key_Return, Qt::Key_Plus, Qt::Key_Down});
    EXPECT_FALSE(shown.view.selected().has_value());
    EXPECT_EQ(shown.activated.count(), 0);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/drawing/shown_timeline.h"

#include <gtest/gtest.h>

namespace padside {

using test::ShownTimeline;

TEST(TimelineFold, LeftOfTheFirstMarkAreTheNamesAndAnotherLeftFolds)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    shown.view.select(MarkPlace{part, 1, 0});
    shown.press({Qt::Key_Left});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{part, 1, laneName}));
    shown.press({Qt::Key_Left});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{part, partHeading, laneName}));
    shown.press({Qt::Key_Left});
    EXPECT_EQ(shown.view.folded(), FoldedGroups{part});
    EXPECT_EQ(shown.view.geometryNow().lanes.size(), 3U) << "visits, the folded part, the other part";
    shown.press({Qt::Key_Right});
    EXPECT_TRUE(shown.view.folded().empty());
    shown.press({Qt::Key_Right, Qt::Key_Right});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{part, 0, 0})) << "back over the first lane's name to its mark";
}

TEST(TimelineFold, EnterOnAHeadingFoldsAndShowsAgain)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    shown.view.select(MarkPlace{part, partHeading, laneName});
    shown.press({Qt::Key_Return});
    EXPECT_TRUE(shown.view.folded().contains(part));
    shown.press({Qt::Key_Return});
    EXPECT_TRUE(shown.view.folded().empty());
}

TEST(TimelineFold, FKeepsTheVisitThatWasChosen)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    shown.view.select(MarkPlace{part, 0, 1}); // crown, 2023
    shown.press({Qt::Key_F});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{part, worstLane, 1}));
    EXPECT_TRUE(shown.view.sentenceNow().contains(QStringLiteral("3 marked (crown)")))
        << shown.view.sentenceNow().toStdString();
    shown.press({Qt::Key_F});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{part, 0, 1}));
}

TEST(TimelineFold, ShiftFFoldsAllPartsThatCanBeAndShowsThemAgain)
{
    ShownTimeline shown;
    shown.press({Qt::Key_F}, Qt::ShiftModifier);
    EXPECT_EQ(shown.view.folded(), FoldedGroups{shown.accumulator()});
    shown.press({Qt::Key_F}, Qt::ShiftModifier);
    EXPECT_TRUE(shown.view.folded().empty());
}

TEST(TimelineFold, APressOnAPartsNameFoldsIt)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    QTest::mouseClick(shown.view.viewport(), Qt::LeftButton, {}, shown.headingOf(part));
    EXPECT_TRUE(shown.view.folded().contains(part));
    QTest::mouseClick(shown.view.viewport(), Qt::LeftButton, {}, shown.headingOf(part));
    EXPECT_TRUE(shown.view.folded().empty());
    EXPECT_EQ(shown.activated.count(), 0);
}

TEST(TimelineFold, ChoosingAZoneElsewhereShowsItsLane)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    shown.view.fold(part, true);
    shown.view.selectZone(shown.timeline.groups[part].lanes[1].zones[0]);
    EXPECT_TRUE(shown.view.folded().empty());
    EXPECT_EQ(shown.view.selected(), (MarkPlace{part, 1, 2}));
}

TEST(TimelineFold, AFoldedPartsMarksOpenTheirVisit)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    shown.view.fold(part, true);
    shown.view.select(MarkPlace{part, worstLane, 2});
    shown.press({Qt::Key_Return});
    ASSERT_EQ(shown.activated.count(), 1);
    EXPECT_EQ(shown.activated.at(0).at(0).value<VisitId>(), shown.timeline.groups[0].lanes[0].marks[2].visitId);
}

TEST(TimelineFold, UpAndDownGoFromHeadingToHeadingAndFromNameToName)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    shown.view.select(MarkPlace{part, 0, laneName});
    shown.press({Qt::Key_Down});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{part, 1, laneName}));
    shown.press({Qt::Key_Up});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{part, 0, laneName}));
}

TEST(TimelineFold, NewEntriesKeepWhatIsFolded)
{
    ShownTimeline shown;
    shown.view.fold(shown.accumulator(), true);
    shown.view.setTimeline(shown.timeline);
    EXPECT_TRUE(shown.view.folded().contains(shown.accumulator()));
    shown.view.showAll();
    EXPECT_TRUE(shown.view.folded().empty()) << "another unit begins anew";
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/drawing/timeline_geometry.h"

#include <gtest/gtest.h>

namespace padside {

using test::aUnit;
using test::day;
using test::smallCatalogue;

namespace {

Timeline someTimeline()
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"crown", "bottom"}).withPart("fan-blade", {"root"});
    builder.visit("2023-04-10").graded("bottom", 2).graded("root", 1);
    builder.visit("2024-04-10")
        .graded("bottom", 4)
        .graded("bottom", 2, Phase::asLeft)
        .notSeen("root", NotSeenReason::covered);
    return timelineOf(builder.build(), smallCatalogue(), day("2024-12-31"));
}

const TimelineSizes usualSizes = TimelineSizes::forText(12, 100, 80);

} // namespace

TEST(TimelineGeometry, AMarkStandsInTheMiddleOfItsLaneAtItsDate)
{
    const Timeline timeline = someTimeline();
    const TimelineGeometry geometry = layOut(timeline, usualSizes, 1000, wholeSpan(timeline));
    for (const PlacedMark& mark : geometry.marks) {
        const TimelineMark& content = timeline.groups[mark.place.group].lanes[mark.place.lane].marks[mark.place.mark];
        const double anchor = mark.area.left() + usualSizes.mark / 2;
        EXPECT_NEAR(anchor, geometry.axis.x(content.on), 0.5);
        for (const PlacedLane& lane : geometry.lanes) {
            if (lane.group == mark.place.group && lane.lane == mark.place.lane) {
                EXPECT_TRUE(lane.area.adjusted(-20, 0, 20, 0).contains(mark.area));
            }
        }
    }
}

TEST(TimelineGeometry, TheGradeAsLeftStandsSmallerAtTheRight)
{
    const Timeline timeline = someTimeline();
    const TimelineGeometry geometry = layOut(timeline, usualSizes, 1000, wholeSpan(timeline));
    int both = 0;
    for (const PlacedMark& mark : geometry.marks) {
        if (mark.left.isEmpty())
            continue;
        ++both;
        EXPECT_GT(mark.left.left(), mark.found.right());
        EXPECT_LT(mark.left.height(), mark.found.height());
        EXPECT_TRUE(mark.area.contains(mark.left));
    }
    EXPECT_EQ(both, 1);
}

TEST(TimelineGeometry, LanesFollowOneAnotherWithoutOverlapAndFillTheHeight)
{
    const Timeline timeline = someTimeline();
    const TimelineGeometry geometry = layOut(timeline, usualSizes, 1000, wholeSpan(timeline));
    ASSERT_EQ(geometry.lanes.size(), 4U); // visits, crown, bottom, root
    for (std::size_t i = 1; i < geometry.lanes.size(); ++i)
        EXPECT_GE(geometry.lanes[i].area.top(), geometry.lanes[i - 1].area.bottom());
    EXPECT_GE(geometry.lanes.front().area.top(), usualSizes.header);
    EXPECT_DOUBLE_EQ(geometry.height, usualSizes.header + 4 * usualSizes.lane + 3 * usualSizes.groupGap);
    EXPECT_DOUBLE_EQ(geometry.lanes.front().area.left(), usualSizes.names());
}

TEST(TimelineGeometry, TheWholeSpanLeavesRoomAfterToday)
{
    const Timeline timeline = someTimeline();
    const TimelineGeometry geometry = layOut(timeline, usualSizes, 1000, wholeSpan(timeline));
    EXPECT_LT(geometry.todayX, 1000 - 15);
    EXPECT_GT(geometry.todayX, 1000 - 120) << "but only a short margin";
}

TEST(TimelineGeometry, ZoomedInBandsAreCutAtTheEdges)
{
    const Timeline timeline = someTimeline();
    const DaySpan span{dayNumber(day("2023-06-01")), dayNumber(day("2023-09-01"))};
    const TimelineGeometry geometry = layOut(timeline, usualSizes, 1000, span);
    ASSERT_FALSE(geometry.bands.empty());
    for (const PlacedBand& band : geometry.bands) {
        EXPECT_GE(band.area.left(), geometry.axis.left);
        EXPECT_LE(band.area.right(), geometry.axis.right);
    }
}

TEST(TimelineGeometry, AWorseGradeIsAThickerBand)
{
    const Timeline timeline = someTimeline();
    const TimelineGeometry geometry = layOut(timeline, usualSizes, 1000, wholeSpan(timeline));
    double sound = 0;
    double worn = 0;
    for (const PlacedBand& band : geometry.bands)
        (band.grade == Grade::sound ? sound : worn) = band.area.height();
    EXPECT_GT(sound, 0);
    EXPECT_GE(worn, sound);
}

TEST(TimelineGeometry, APointFindsItsMarkAndEmptyGroundFindsNone)
{
    const Timeline timeline = someTimeline();
    const TimelineGeometry geometry = layOut(timeline, usualSizes, 1000, wholeSpan(timeline));
    for (const PlacedMark& mark : geometry.marks)
        EXPECT_EQ(geometry.markAt(mark.area.center().x(), mark.area.center().y()), mark.place);
    EXPECT_FALSE(geometry.markAt(geometry.todayX + 10, usualSizes.header + 5).has_value());
    EXPECT_EQ(geometry.placed(MarkPlace{9, 9, 9}), nullptr);
}

TEST(TimelineGeometry, EightYearsOfFortyLanesFitSideBySideAt1280)
{
    auto builder = aUnit("HB-01");
    for (int part = 0; part < 20; ++part)
        builder.withPart("suction-accumulator", {"crown", "bottom"}, {}, std::to_string(part));
    for (int year = 2017; year <= 2024; ++year) {
        builder.visit(std::to_string(year) + "-04-10").graded("bottom", 2);
        builder.visit(std::to_string(year) + "-10-10").graded("bottom", 2);
    }
    const Timeline timeline = timelineOf(builder.build(), smallCatalogue(), day("2024-12-31"));
    const TimelineGeometry geometry = layOut(timeline, TimelineSizes::forText(12, 150, 110), 1280, wholeSpan(timeline));
    ASSERT_EQ(geometry.lanes.size(), 41U);
    for (std::size_t i = 1; i < geometry.marks.size(); ++i) {
        const PlacedMark& before = geometry.marks[i - 1];
        const PlacedMark& mark = geometry.marks[i];
        if (before.place.lane == mark.place.lane && before.place.group == mark.place.group) {
            EXPECT_GT(mark.area.left(), before.area.right());
        }
    }
}

} // namespace padside

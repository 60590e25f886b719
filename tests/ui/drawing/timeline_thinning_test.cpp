// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "tests/ui/drawing/small_timeline.h"
#include "tests/ui/drawing/twenty_years.h"
#include "ui/drawing/timeline_thinning.h"

#include <gtest/gtest.h>
#include <map>

namespace padside {

using test::aUnit;
using test::day;
using test::smallCatalogue;

namespace {

using Detail = PlacedMark::Detail;

const Timeline& longHistory()
{
    static const Timeline timeline = test::timelineTo2024(test::twentyYears());
    return timeline;
}

TimelineGeometry longLaidOut(double width, const FoldedGroups& folded = {})
{
    return layOut(longHistory(), TimelineSizes::forText(12, 150, 90), width, wholeSpan(longHistory()), folded);
}

bool hasNews(const Timeline& timeline, const PlacedMark& mark)
{
    return newsOf(laneOf(timeline, mark.place.group, mark.place.lane), mark.place.mark) > 0;
}

/// The marks of the zone's lane, laid out over some pixels a year.
std::vector<PlacedMark> marksAt(const Timeline& timeline, double pixelsPerYear)
{
    TimelineSizes sizes = TimelineSizes::forText(12, 100, 80);
    const DaySpan all = wholeSpan(timeline);
    const double width = sizes.names() + (all.to - all.from) / 365.25 * pixelsPerYear;
    std::vector<PlacedMark> marks;
    for (const PlacedMark& mark : layOut(timeline, sizes, width, all).marks) {
        if (mark.place.group == 1)
            marks.push_back(mark);
    }
    return marks;
}

std::vector<Detail> detailsAt(const Timeline& timeline, double pixelsPerYear)
{
    std::vector<Detail> details;
    for (const PlacedMark& mark : marksAt(timeline, pixelsPerYear))
        details.push_back(mark.detail);
    return details;
}

class TwentyYearsAt : public testing::TestWithParam<int>
{
};

} // namespace

TEST_P(TwentyYearsAt, NothingPaintedOverlapsInAnyLane)
{
    const FoldedGroups someFolded{3, 4, 12};
    for (const FoldedGroups& folded : {FoldedGroups{}, someFolded}) {
        const TimelineGeometry geometry = longLaidOut(GetParam(), folded);
        ASSERT_EQ(geometry.lanes.size(), 42U - folded.size()) << "visits, refrigerant and 40 zones";
        std::map<std::pair<std::size_t, std::size_t>, std::vector<QRectF>> lanes;
        for (const PlacedMark& mark : geometry.marks) {
            if (mark.painted())
                lanes[{mark.place.group, mark.place.lane}].push_back(mark.area);
        }
        int compared = 0;
        for (const auto& [lane, areas] : lanes) {
            for (std::size_t i = 0; i < areas.size(); ++i) {
                for (std::size_t j = i + 1; j < areas.size(); ++j, ++compared)
                    ASSERT_FALSE(areas[i].intersects(areas[j])) << lane.first << ", " << lane.second;
            }
        }
        EXPECT_GT(compared, 1000);
    }
}

TEST_P(TwentyYearsAt, WhatHasNewsAndNoRoomIsCountedByTheMarksThatAreShown)
{
    const TimelineGeometry geometry = longLaidOut(GetParam());
    int hidden = 0;
    int counted = 0;
    for (const PlacedMark& mark : geometry.marks) {
        hidden += !mark.painted() && hasNews(longHistory(), mark) ? 1 : 0;
        counted += mark.standsFor;
        EXPECT_TRUE(mark.standsFor == 0 || mark.detail == Detail::full);
    }
    EXPECT_EQ(counted, hidden);
}

TEST_P(TwentyYearsAt, TheLatestMarkOfEachLaneKeepsItsNumeral)
{
    const TimelineGeometry geometry = longLaidOut(GetParam());
    for (const PlacedLane& lane : geometry.lanes) {
        const std::size_t count = laneOf(longHistory(), lane.group, lane.lane).marks.size();
        const PlacedMark* last = geometry.placed(MarkPlace{lane.group, lane.lane, count - 1});
        ASSERT_NE(last, nullptr);
        EXPECT_EQ(last->detail, Detail::full);
    }
}

INSTANTIATE_TEST_SUITE_P(Widths, TwentyYearsAt, testing::Values(620, 800, 1000, 1280, 1600, 1920, 5000));

TEST(TimelineThinning, EqualGradesBecomeARunWithItsNumeralAtTheChanges)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    for (const auto& [date, grade] : {std::pair("2020-04-10", 2),
                                      {"2020-10-10", 2},
                                      {"2021-04-10", 2},
                                      {"2021-10-10", 3},
                                      {"2022-04-10", 3},
                                      {"2022-10-10", 3},
                                      {"2023-04-10", 3}})
        builder.visit(date).graded("bottom", grade);
    const Timeline timeline = test::timelineTo2024(builder.build());
    EXPECT_EQ(detailsAt(timeline, 30),
              (std::vector{Detail::full, Detail::tick, Detail::tick, Detail::full, Detail::tick, Detail::tick,
                           Detail::full}));
    EXPECT_EQ(detailsAt(timeline, 100), std::vector(7, Detail::full)) << "with room every grade has its numeral";
}

TEST(TimelineThinning, OfChangesTooCloseTogetherTheWorstStaysAndCountsTheOther)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    builder.visit("2016-04-10").graded("bottom", 1);
    builder.visit("2020-04-10").graded("bottom", 4);
    builder.visit("2020-04-20").graded("bottom", 3);
    builder.visit("2024-04-10").graded("bottom", 3);
    const auto marks = marksAt(test::timelineTo2024(builder.build()), 60);
    EXPECT_EQ(marks.at(1).detail, Detail::full);
    EXPECT_EQ(marks.at(1).standsFor, 1);
    EXPECT_EQ(marks.at(2).detail, Detail::hidden);
}

TEST(TimelineThinning, NumeralsComeBeforeWhatWasLeftAndSigns)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    for (const std::string year : {"2021", "2022", "2023"}) {
        builder.visit(year + "-04-10").graded("bottom", 4).treated("bottom", TreatmentKind::brushAndCoat, "primer");
        builder.graded("bottom", 2, Phase::asLeft);
    }
    const Timeline timeline = test::timelineTo2024(builder.build());
    const auto narrow = marksAt(timeline, 22);
    EXPECT_FALSE(narrow.at(0).found.isEmpty());
    EXPECT_TRUE(narrow.at(0).left.isEmpty());
    const auto wider = marksAt(timeline, 34);
    EXPECT_FALSE(wider.at(0).left.isEmpty());
    EXPECT_TRUE(wider.at(0).signs.isEmpty());
    const auto wide = marksAt(timeline, 60);
    EXPECT_FALSE(wide.at(0).signs.isEmpty());
    EXPECT_GT(wide.at(0).signs.left(), wide.at(0).left.right());
}

TEST(TimelineThinning, APictureHasRoomOnlyWhereItRunsIntoNothing)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    builder.visit("2022-04-10").graded("bottom", 2);
    builder.visit("2022-10-10").graded("bottom", 2);
    UnitRecord record = builder.build();
    Photo photo;
    photo.id = PhotoId(UuidBytes{1});
    photo.visitId = record.visits[0].id;
    photo.on = record.visits[0].on;
    photo.zoneId = record.parts[0].zones[0].id;
    record.photos.push_back(photo);
    const Timeline timeline = test::timelineTo2024(record);
    EXPECT_TRUE(marksAt(timeline, 60).at(0).picture.isEmpty());
    const auto wide = marksAt(timeline, 200);
    EXPECT_FALSE(wide.at(0).picture.isEmpty());
    EXPECT_TRUE(wide.at(1).picture.isEmpty()) << "nothing was photographed then";
}

TEST(TimelineThinning, TheChosenMarkCanBeHadInFullWhereverItIs)
{
    const TimelineGeometry geometry = longLaidOut(800);
    for (const PlacedMark& mark : geometry.marks) {
        if (mark.painted() || mark.place.group == 0)
            continue;
        const PlacedMark full = inFull(longHistory(), geometry, mark);
        const TimelineMark& content = laneOf(longHistory(), mark.place.group, mark.place.lane).marks[mark.place.mark];
        EXPECT_EQ(full.found.isEmpty(), !content.found && !content.notSeen);
        EXPECT_FALSE(full.area.isEmpty());
    }
}

TEST(TimelineThinning, ARunThatBeganOutOfSightHasItsNumeralAtTheEdge)
{
    auto builder = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    builder.visit("2020-04-10").graded("bottom", 3);
    builder.visit("2024-04-10").graded("bottom", 3);
    const Timeline timeline = test::timelineTo2024(builder.build());
    const DaySpan span{dayNumber(day("2021-01-01")), dayNumber(day("2022-01-01"))};
    const TimelineGeometry geometry = layOut(timeline, TimelineSizes::forText(12, 100, 80), 1000, span);
    ASSERT_EQ(geometry.runs.size(), 1U);
    EXPECT_EQ(geometry.runs[0].grade, Grade::marked);
    EXPECT_GE(geometry.runs[0].area.left(), geometry.axis.left);
}

} // namespace padside

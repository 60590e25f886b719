// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/drawing/shown_timeline.h"
#include "tests/ui/drawing/twenty_years.h"
#include "ui/drawing/timeline_legend.h"
#include "ui/drawing/timeline_outlook.h"
#include "ui/drawing/timeline_outlook_painter.h"

#include <QImage>
#include <QPainter>
#include <QScrollBar>

#include <cmath>
#include <gtest/gtest.h>
#include <numeric>

namespace padside::test {

namespace {

/// A timeline up to the end of 2024 that runs on into what may come.
Timeline withOutlook(const UnitRecord& record)
{
    const Catalogue catalogue = smallCatalogue();
    const OutlookModel model(catalogue);
    const Date today = day("2024-12-31");
    Timeline timeline = timelineOf(record, catalogue, today);
    addOutlook(timeline, unitForecast(record, catalogue, model, today),
               zoneCourses(record, catalogue, model, today, yearsAhead(timeline.first, today)));
    return timeline;
}

/// Shown with its outlook, focused.
struct ShownOutlook : ShownTimeline
{
    ShownOutlook()
    {
        timeline = withOutlook(twoParts());
        view.setTimeline(timeline);
    }

    [[nodiscard]] const TimelineLane& bottom() const { return timeline.groups.at(accumulator()).lanes.at(1); }
};

double total(const GradeChances& chances)
{
    return std::accumulate(chances.begin(), chances.end(), 0.0);
}

} // namespace

TEST(TimelineOutlook, EachLaneOfAFittedZoneRunsOnFromToday)
{
    const Timeline timeline = withOutlook(ShownTimeline::twoParts());
    ASSERT_TRUE(timeline.until);
    EXPECT_EQ(*timeline.until, day("2026-12-31")); // the least: two years after three
    for (const TimelineGroup& group : timeline.groups) {
        for (const TimelineLane& lane : group.lanes) {
            EXPECT_EQ(lane.outlook.has_value(), !lane.zones.empty());
            if (lane.outlook) {
                EXPECT_EQ(lane.outlook->course.front().by, timeline.today);
            }
        }
    }
}

TEST(TimelineOutlook, WithoutOneTheTimelineEndsAsBefore)
{
    const Timeline timeline = timelineOf(ShownTimeline::twoParts(), smallCatalogue(), day("2024-12-31"));
    EXPECT_FALSE(timeline.until);
    const TimelineGeometry geometry = layOut(timeline, TimelineSizes::forText(14, 160, 90), 900, wholeSpan(timeline));
    EXPECT_TRUE(geometry.outlooks.empty());
    EXPECT_LT(wholeSpan(timeline).to, dayNumber(day("2025-06-01")));
}

TEST(TimelineOutlook, APartsWorstLaneIsAsBadAsAnyOfItsZonesAndNamesTheFirstSpent)
{
    const Timeline timeline = withOutlook(ShownTimeline::twoParts());
    const auto group = std::ranges::find_if(timeline.groups, &TimelineGroup::foldable);
    ASSERT_NE(group, timeline.groups.end());
    ASSERT_TRUE(group->worst.outlook);
    for (std::size_t at = 0; at < group->worst.outlook->course.size(); ++at) {
        const GradeChances& worst = group->worst.outlook->course[at].chances;
        EXPECT_NEAR(total(worst), 1, 1e-9);
        double none = 1;
        for (const TimelineLane& lane : group->lanes)
            none *= 1 - lane.outlook->course[at].chances[4];
        EXPECT_NEAR(worst[4], 1 - none, 1e-9);
    }
    EXPECT_EQ(group->worst.outlook->zone, "bottom"); // 4 poor, where the crown is 3 marked
}

TEST(TimelineOutlook, LiesRightOfTodayAndHasNoGaps)
{
    const Timeline timeline = withOutlook(ShownTimeline::twoParts());
    const TimelineGeometry geometry = layOut(timeline, TimelineSizes::forText(14, 160, 90), 900, wholeSpan(timeline));
    ASSERT_EQ(geometry.outlooks.size(), 3U);
    for (const PlacedOutlook& placed : geometry.outlooks) {
        EXPECT_NEAR(placed.area.left(), geometry.todayX, 1e-6);
        EXPECT_NEAR(placed.area.right(), geometry.width, 1e-6);
        double x = placed.area.left();
        for (const PlacedChances& stretch : placed.stretches) {
            EXPECT_NEAR(stretch.from, x, 1e-6);
            EXPECT_NEAR(total(stretch.chances), 1, 1e-9);
            x = stretch.to;
        }
        EXPECT_NEAR(x, placed.area.right(), 1e-6);
    }
}

TEST(TimelineOutlook, TheMarkOfSpentStandsAtItsDay)
{
    const Timeline timeline = withOutlook(ShownTimeline::twoParts());
    const TimelineGeometry geometry = layOut(timeline, TimelineSizes::forText(14, 160, 90), 900, wholeSpan(timeline));
    for (const PlacedOutlook& placed : geometry.outlooks) {
        const SpentDates& spent = laneOf(timeline, placed.group, placed.lane).outlook->spent;
        ASSERT_TRUE(spent.early);
        EXPECT_EQ(placed.earlySeen, *spent.early <= *timeline.until);
        if (placed.earlySeen) {
            EXPECT_NEAR(placed.spentFrom, geometry.axis.x(*spent.early), 1);
        }
        EXPECT_EQ(!placed.spent.isEmpty(), spent.middle && *spent.middle <= *timeline.until);
        if (!placed.spent.isEmpty()) {
            EXPECT_NEAR(placed.spent.center().x(), geometry.axis.x(*spent.middle), placed.spent.width());
        }
    }
}

TEST(TimelineOutlook, KeysWalkFromTheLastMarkIntoItAndAcrossTheLanes)
{
    ShownOutlook shown;
    const std::size_t group = shown.accumulator();
    const std::size_t last = shown.bottom().marks.size() - 1;
    shown.view.select(MarkPlace{group, 1, last});
    shown.press({Qt::Key_Right});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{group, 1, outlookMark}));
    EXPECT_TRUE(shown.view.sentenceNow().contains(QStringLiteral("what comes: ")));
    EXPECT_TRUE(shown.view.sentenceNow().contains(QString::fromStdString(say(shown.bottom().outlook->when))));
    EXPECT_TRUE(
        shown.view.sentenceNow().contains(QString::fromStdString(say(shown.bottom().outlook->because.front()))));
    EXPECT_EQ(shown.view.accessibleDescription(), shown.view.sentenceNow());
    shown.press({Qt::Key_Right});
    EXPECT_EQ(shown.view.selected()->mark, outlookMark) << "there is nothing beyond";
    shown.press({Qt::Key_Up});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{group, 0, outlookMark}));
    shown.press({Qt::Key_Down, Qt::Key_Left});
    EXPECT_EQ(shown.view.selected(), (MarkPlace{group, 1, last}));
    shown.view.select(MarkPlace{group, 1, outlookMark});
    shown.press({Qt::Key_Return, Qt::Key_F, Qt::Key_Plus, Qt::Key_0, Qt::Key_Home, Qt::Key_End});
    EXPECT_EQ(shown.activated.count(), 0) << "what has not come opens no visit";
}

TEST(TimelineOutlook, PointingAtItSaysWhy)
{
    ShownOutlook shown;
    const PlacedOutlook& placed = *shown.view.geometryNow().placedOutlook(shown.accumulator(), 1);
    const double y = placed.area.center().y() - shown.view.verticalScrollBar()->value();
    QTest::mouseMove(shown.view.viewport(), QPointF(placed.area.left() + 30, y).toPoint());
    EXPECT_TRUE(shown.view.sentenceNow().contains(QStringLiteral("what comes: ")))
        << shown.view.sentenceNow().toStdString();
}

TEST(TimelineOutlook, ZoomedInOnTheYearsToComeTheyFillTheView)
{
    ShownOutlook shown;
    shown.view.zoomBy(4, shown.view.geometryNow().width);
    EXPECT_LT(shown.view.geometryNow().todayX, shown.view.geometryNow().sizes.names());
    for (const PlacedOutlook& placed : shown.view.geometryNow().outlooks)
        EXPECT_NEAR(placed.area.left(), shown.view.geometryNow().axis.left, 1);
}

TEST(TimelineOutlook, ALikelierGradeIsWider)
{
    for (const Theme* theme : {&Theme::light(), &Theme::darkTheme(), &Theme::sunlight(), &Theme::print()}) {
        const auto widthOfPoor = [theme](double chance) {
            QImage image(1, 100, QImage::Format_RGB32);
            QPainter painter(&image);
            paintShares(painter, QRectF(0, 0, 1, 100), GradeChances{0, 0, 1 - chance, chance, 0}, *theme);
            painter.end();
            int same = 0; // as the lowest line, which is of the graver grade
            for (int y = 0; y < 100; ++y)
                same += image.pixel(0, y) == image.pixel(0, 99) ? 1 : 0;
            return same;
        };
        EXPECT_EQ(widthOfPoor(0.2), 20);
        EXPECT_EQ(widthOfPoor(0.7), 70);
    }
}

TEST(TimelineOutlook, WhatIsLessCertainFades)
{
    const Theme& theme = Theme::light();
    const auto depthOf = [&](const GradeChances& chances) {
        QImage image(1, 100, QImage::Format_RGB32);
        QPainter painter(&image);
        paintShares(painter, QRectF(0, 0, 1, 100), chances, theme);
        painter.end();
        return image.pixelColor(0, 1).lightnessF();
    };
    EXPECT_LT(depthOf({0, 0, 1, 0, 0}), depthOf({0, 0, 0.6, 0.4, 0}));
    EXPECT_LT(depthOf({0, 0, 0.6, 0.4, 0}), depthOf({0, 0, 0.34, 0.33, 0.33}));
}

TEST(TimelineOutlook, TheLegendExplainsItOnlyWhereThereIsOne)
{
    QImage nothing(1, 1, QImage::Format_RGB32);
    QPainter painter(&nothing);
    const auto height = [&](const Timeline& timeline) {
        return paintTimelineLegend(painter, QRectF(0, 0, 420, 1000), timeline, plainEnglish(), Theme::light(), false);
    };
    const UnitRecord record = ShownTimeline::twoParts();
    EXPECT_GT(height(withOutlook(record)), height(timelineOf(record, smallCatalogue(), day("2024-12-31"))));
}

TEST(TimelineOutlook, FortyLanesOfTwentyYearsKeepTheirRoom)
{
    const Timeline timeline = withOutlook(twentyYears());
    const TimelineGeometry geometry = layOut(timeline, TimelineSizes::forText(14, 160, 90), 1280, wholeSpan(timeline));
    const double ahead = (geometry.width - geometry.todayX) / (geometry.width - geometry.sizes.names());
    EXPECT_GT(ahead, 0.15);
    EXPECT_LT(ahead, 0.25) << "most of the picture is what was seen";
    EXPECT_GE(geometry.outlooks.size(), 30U);
    for (const PlacedOutlook& placed : geometry.outlooks)
        EXPECT_NEAR(placed.area.height(), geometry.sizes.lane, 1e-9);
}

} // namespace padside::test

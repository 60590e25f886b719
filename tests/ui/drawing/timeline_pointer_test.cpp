// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/ui/drawing/shown_timeline.h"
#include "tests/ui/drawing/twenty_years.h"

#include <QHelpEvent>
#include <QScrollBar>
#include <QToolTip>
#include <QWheelEvent>

#include <gtest/gtest.h>

namespace padside {

using test::ShownTimeline;

namespace {

void wheel(TimelineView& view, int notches, Qt::KeyboardModifiers modifiers)
{
    const QPointF at(600, 100);
    QWheelEvent event(at, view.viewport()->mapToGlobal(at), QPoint(), QPoint(0, notches * 120), Qt::NoButton, modifiers,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(view.viewport(), &event);
}

void drag(TimelineView& view, QPoint from, QPoint to)
{
    QTest::mousePress(view.viewport(), Qt::LeftButton, {}, from);
    const QPointF middle = QPointF(from + to) / 2;
    for (const QPointF& at : {middle, QPointF(to)}) {
        QMouseEvent move(QEvent::MouseMove, at, view.viewport()->mapToGlobal(at), Qt::NoButton, Qt::LeftButton, {});
        QCoreApplication::sendEvent(view.viewport(), &move);
    }
    QTest::mouseRelease(view.viewport(), Qt::LeftButton, {}, to);
}

} // namespace

TEST(TimelinePointer, DraggingMovesThePictureAndOpensNothing)
{
    ShownTimeline shown;
    shown.view.zoomBy(4, 600);
    const int before = shown.view.horizontalScrollBar()->value();
    drag(shown.view, QPoint(600, 100), QPoint(500, 100));
    EXPECT_EQ(shown.view.horizontalScrollBar()->value(), before + 100);
    EXPECT_EQ(shown.activated.count(), 0);
}

TEST(TimelinePointer, ControlAndTheWheelZoomAroundThePointer)
{
    ShownTimeline shown;
    const double scale = shown.view.geometryNow().axis.pixelsPerDay();
    const double day = shown.view.geometryNow().axis.dayAt(600);
    wheel(shown.view, 3, Qt::ControlModifier);
    EXPECT_GT(shown.view.geometryNow().axis.pixelsPerDay(), scale * 1.8);
    EXPECT_NEAR(shown.view.geometryNow().axis.dayAt(600), day, 1.5);
    wheel(shown.view, -3, Qt::ControlModifier);
    EXPECT_NEAR(shown.view.geometryNow().axis.pixelsPerDay(), scale, scale * 0.01);
}

TEST(TimelinePointer, WhereAllLanesAreInSightTheWheelMovesThroughTheYears)
{
    ShownTimeline shown;
    shown.view.zoomBy(4, 600);
    ASSERT_EQ(shown.view.verticalScrollBar()->maximum(), 0);
    const int before = shown.view.horizontalScrollBar()->value();
    wheel(shown.view, -1, {});
    EXPECT_GT(shown.view.horizontalScrollBar()->value(), before);
}

TEST(TimelinePointer, PointingSaysTheSentenceAndLeavingGoesBackToWhatIsChosen)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    shown.view.select(MarkPlace{0, 0, 0});
    const QString chosen = shown.view.sentenceNow();
    const QPoint mark = shown.view.geometryNow().placed(MarkPlace{part, 1, 2})->found.center().toPoint();
    QMouseEvent move(QEvent::MouseMove, mark, shown.view.viewport()->mapToGlobal(mark), Qt::NoButton, Qt::NoButton, {});
    QCoreApplication::sendEvent(shown.view.viewport(), &move);
    EXPECT_TRUE(shown.view.sentenceNow().contains(QStringLiteral("4 poor, was 2 worn on 2023-04-10")))
        << shown.view.sentenceNow().toStdString();
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&shown.view, &leave);
    EXPECT_EQ(shown.view.sentenceNow(), chosen);
}

TEST(TimelinePointer, TheSentenceSaysWhichFlagsTheMarkRaised)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    shown.view.setRaisedSource([](const TimelineMark& mark) {
        return mark.found == Grade::poor ? std::vector{Sentence{"worse by two", {}}} : std::vector<Sentence>{};
    });
    shown.view.select(MarkPlace{part, 1, 2});
    EXPECT_TRUE(shown.view.sentenceNow().endsWith(QStringLiteral("Flag: worse by two")));
    EXPECT_EQ(shown.view.accessibleDescription(), shown.view.sentenceNow());
    shown.view.select(MarkPlace{part, 1, 1});
    EXPECT_FALSE(shown.view.sentenceNow().contains(QStringLiteral("Flag")));
}

TEST(TimelinePointer, APressOnAZonesNameAsksForItsPhotographs)
{
    ShownTimeline shown;
    const std::size_t part = shown.accumulator();
    const double y = shown.view.geometryNow().placedLane(part, 1)->middle();
    const double x = shown.view.geometryNow().sizes.partColumn + 10;
    QTest::mouseClick(shown.view.viewport(), Qt::LeftButton, {}, QPointF(x, y).toPoint());
    ASSERT_EQ(shown.zones.count(), 1);
    EXPECT_EQ(shown.zones.at(0).at(0).value<ZoneId>(), shown.timeline.groups[part].lanes[1].zones[0]);
    shown.press({Qt::Key_Down, Qt::Key_Up, Qt::Key_Return});
    EXPECT_EQ(shown.zones.count(), 2) << "and so does Enter";
}

TEST(TimelinePointer, TwentyYearsKeepTheChosenMarkInSightAtEveryZoom)
{
    ShownTimeline shown(test::twentyYears());
    shown.press({Qt::Key_End}, Qt::ControlModifier);
    const MarkPlace last = *shown.view.selected();
    EXPECT_EQ(last.group, shown.timeline.groups.size() - 1);
    shown.press({Qt::Key_Home});
    for (int step = 0; step < 16; ++step) {
        shown.press({Qt::Key_Plus, Qt::Key_Right});
        const PlacedMark* mark = shown.view.geometryNow().placed(*shown.view.selected());
        ASSERT_NE(mark, nullptr);
        EXPECT_GE(mark->x, shown.view.geometryNow().sizes.names());
        EXPECT_LE(mark->x, shown.view.geometryNow().width);
        const double y = shown.view.geometryNow().placedLane(last.group, last.lane)->middle()
            - shown.view.verticalScrollBar()->value();
        EXPECT_GT(y, shown.view.geometryNow().sizes.header);
        EXPECT_LT(y, shown.view.viewport()->height());
    }
}

TEST(TimelinePointer, TheChosenMarkStaysInSightWhenThereIsLessRoom)
{
    ShownTimeline shown(test::twentyYears());
    shown.view.resize(900, 900);
    shown.press({Qt::Key_End}, Qt::ControlModifier);
    const MarkPlace last = *shown.view.selected();
    shown.view.resize(900, 200);
    const double y = shown.view.geometryNow().placedLane(last.group, last.lane)->middle()
        - shown.view.verticalScrollBar()->value();
    EXPECT_GT(y, shown.view.geometryNow().sizes.header);
    EXPECT_LT(y, shown.view.viewport()->height());
}

} // namespace padside

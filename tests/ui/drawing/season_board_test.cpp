// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "ui/drawing/season_board.h"
#include "ui/drawing/season_board_months.h"
#include "ui/drawing/season_board_painter.h"
#include "ui/drawing/theme.h"

#include <QImage>
#include <QLocale>
#include <QPainter>

#include <gtest/gtest.h>

namespace padside::test {

namespace {

SeasonBoard smallBoard()
{
    SeasonBoard board;
    board.today = day("2026-11-25"); // a Wednesday
    BoardRow row;
    row.site = QStringLiteral("Harbour Lane");
    row.trips
        = {BoardTrip{day("2026-11-25"), 3, true, false, false}, BoardTrip{day("2027-04-12"), 12, false, false, false},
           BoardTrip{day("2027-04-14"), 5, false, false, true}};
    board.rows = {row, BoardRow{QStringLiteral("Old Mill"), {}, {}}};
    return board;
}

} // namespace

TEST(SeasonBoard, AYearOfWeeksBeginsWithTheWeekBeforeThisOne)
{
    const BoardGeometry geometry = boardGeometry(smallBoard(), 13, 150, 900);
    EXPECT_EQ(geometry.firstMonday, day("2026-11-16"));
    EXPECT_GE(geometry.lastDay(), day("2027-11-25")) << "checks are due within twelve months";
}

TEST(SeasonBoard, ADayIsFoundAgainUnderItsOwnPlace)
{
    const BoardGeometry geometry = boardGeometry(smallBoard(), 13, 150, 900);
    for (Date date = geometry.firstMonday; date <= geometry.lastDay(); date += std::chrono::days(1))
        EXPECT_EQ(geometry.dayAt(geometry.xOf(date) + geometry.week / 14), date);
    EXPECT_EQ(geometry.dayAt(-1000), geometry.firstMonday);
    EXPECT_EQ(geometry.dayAt(1e6), geometry.lastDay());
}

TEST(SeasonBoard, WeeksFillTheWidthButStayWideEnoughForACount)
{
    EXPECT_DOUBLE_EQ(boardGeometry(smallBoard(), 13, 150, 1500).width(), 1500);
    EXPECT_GE(boardGeometry(smallBoard(), 13, 150, 300).week, 13);
}

TEST(SeasonBoard, RowsGrowIntoEmptyHeightButMarksKeepTheirSize)
{
    const SeasonBoard board = smallBoard();
    BoardGeometry geometry = boardGeometry(board, 13, 150, 900);
    const QRectF before = geometry.mark(0, board.today);
    const double least = geometry.row;
    fillHeight(geometry, board, 2000);
    EXPECT_GT(geometry.row, least);
    EXPECT_LT(geometry.row, 2 * least) << "a mark is still found beside its name";
    EXPECT_EQ(geometry.mark(0, board.today).size(), before.size());
    fillHeight(geometry, board, 10);
    EXPECT_EQ(geometry.row, least) << "the board scrolls instead";
}

TEST(SeasonBoard, TheTripUnderAPointIsTheNearestOneInItsRow)
{
    const SeasonBoard board = smallBoard();
    const BoardGeometry geometry = boardGeometry(board, 13, 150, 900);
    const QPointF first = geometry.mark(0, board.rows[0].trips[1].on).center();
    const QPointF second = geometry.mark(0, board.rows[0].trips[2].on).center();
    ASSERT_TRUE(geometry.mark(0, board.rows[0].trips[1].on).contains(second)) << "the marks overlap";
    EXPECT_EQ(geometry.tripAt(board, first), (BoardPlace{0, 1}));
    EXPECT_EQ(geometry.tripAt(board, second), (BoardPlace{0, 2}));
    EXPECT_EQ(geometry.tripAt(board, first + QPointF(0, geometry.row)), std::nullopt) << "another row";
    EXPECT_EQ(geometry.tripAt(board, QPointF(first.x(), 5)), std::nullopt) << "the header";
}

TEST(SeasonBoard, TripsAreCountedByTheWeekOverAllSites)
{
    const SeasonBoard board = smallBoard();
    const BoardGeometry geometry = boardGeometry(board, 13, 150, 900);
    const std::vector<int> counts = tripsByWeek(board, geometry);
    EXPECT_EQ(counts[1], 1) << "this week";
    const auto april = static_cast<std::size_t>((day("2027-04-12") - geometry.firstMonday).count() / 7);
    EXPECT_EQ(counts[april], 2);
}

TEST(SeasonBoard, TheYearStandsWhereItBeginsHoweverNarrowItsWeeksAre)
{
    QStringList months;
    for (int month = 1; month <= 12; ++month)
        months << QLocale(QLocale::English).standaloneMonthName(month, QLocale::ShortFormat);
    QFont font;
    font.setPixelSize(11);
    const auto yearTold = [&](double width) {
        const BoardGeometry geometry = boardGeometry(smallBoard(), 13, 150, width);
        for (const MonthHead& head : monthHeads(geometry, months, QFontMetricsF(font))) {
            EXPECT_LT(QFontMetricsF(font).horizontalAdvance(head.text), head.room) << head.text.toStdString();
            if (head.text.startsWith(QStringLiteral("Jan")))
                return head.text;
        }
        return QString();
    };
    EXPECT_EQ(yearTold(3000), QStringLiteral("Jan 2027"));
    EXPECT_TRUE(yearTold(0).contains(QStringLiteral("27"))) << yearTold(0).toStdString();
}

TEST(SeasonBoardPainter, WhatPressesIsFilledWithInkAndTheChosenTripWithTheAccent)
{
    const SeasonBoard board = smallBoard();
    const BoardGeometry geometry = boardGeometry(board, 13, 150, 900);
    for (const Theme* theme : {&Theme::light(), &Theme::darkTheme()}) {
        QImage image(900, 160, QImage::Format_RGB32);
        image.fill(theme->panel);
        QPainter painter(&image);
        QFont font;
        font.setPixelSize(13);
        painter.setFont(font);
        paintBoardRows(painter, {board, geometry, *theme, {}, BoardPlace{0, 1}, {}}, 0, 2);
        painter.end();
        const auto corner
            = [&](Date on) { return image.pixelColor((geometry.mark(0, on).topLeft() + QPointF(2, 2)).toPoint()); };
        EXPECT_EQ(corner(day("2026-11-25")), theme->ink);
        EXPECT_EQ(corner(day("2027-04-12")), theme->accent);
    }
}

} // namespace padside::test

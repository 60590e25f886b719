// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/text_file.h"
#include "core/exchange/trend_file.h"
#include "core/trend/trend.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

std::string trendRefusal(std::string_view text)
{
    const auto points = readTrendFile(text, "t.csv");
    if (points)
        return "taken, with " + std::to_string(points->size()) + " values";
    EXPECT_EQ(points.error().kind, ProblemKind::badInput);
    return say(points.error().what);
}

} // namespace

TEST(TrendFile, IsReadByTheNamesOfItsColumns)
{
    const auto points = readTrendFile("note,y,t_days\r\nfirst,20.5,0\r\n\"then, later\", -1e-3 ,365\r\n", "t.csv");
    ASSERT_TRUE(points);
    EXPECT_EQ(*points, (std::vector<TrendPoint>{{0, 20.5}, {365, -0.001}}));
}

TEST(TrendFile, ABadRowRefusesTheWholeFileAndIsNamed)
{
    EXPECT_EQ(trendRefusal("t_days,y\n0,1\n5,abc\n"),
              "t.csv, line 3: “abc” in the column “y” is not a number. Write it like 12.5.");
    EXPECT_EQ(trendRefusal("t_days,y\n,1\n"),
              "t.csv, line 2: “” in the column “t_days” is not a number. Write it like 12.5.");
    for (const char* number : {"nan", "inf", "-inf", "1e999", "1 000", "12.5x", "0x10", "+1", "1;2"})
        EXPECT_EQ(trendRefusal("t_days,y\n0," + std::string(number) + "\n"),
                  "t.csv, line 2: “" + std::string(number)
                      + "” in the column “y” is not a number. Write it like 12.5.");
    EXPECT_EQ(trendRefusal("t_days,y\n0,12,5\n"),
              "t.csv, line 2: values in this line: 3, but columns: 2. Make them agree.");
}

TEST(TrendFile, AMissingColumnOrNoValuesAreSaid)
{
    EXPECT_EQ(trendRefusal("days,y\n0,1\n"),
              "t.csv has no column “t_days”; its columns are: days, y. Name it in the first line.");
    EXPECT_EQ(trendRefusal("t_days,Y\n0,1\n"),
              "t.csv has no column “y”; its columns are: t_days, Y. Name it in the first line.");
    EXPECT_EQ(trendRefusal("t_days,y\n"), "t.csv has no values below its first line. Add at least one.");
    EXPECT_EQ(trendRefusal(""), "t.csv is empty. Its first line must name the columns.");
    std::string tooLong = "t_days,y\n";
    for (std::size_t i = 0; i <= mostTrendPoints; ++i)
        tooLong += std::to_string(i) + ",1\n";
    EXPECT_EQ(trendRefusal(tooLong), "t.csv has 5001 values; a trend is worked out for at most 5000.");
}

// Source: tests/reference/README.md; the whole way from file to slope.
TEST(TrendFile, TheReferenceSeriesAreReadWhole)
{
    const auto text = readTextFile(PADSIDE_SOURCE_DIR "/tests/reference/gen_series.csv");
    ASSERT_TRUE(text);
    const auto points = readTrendFile(*text, "gen_series.csv");
    ASSERT_TRUE(points);
    EXPECT_EQ(points->size(), 77U);
    const auto first = theilSen(std::span(*points).first(4));
    ASSERT_TRUE(first);
    EXPECT_NEAR(first->slope, -0.006137451365217091, 1e-15);
}

TEST(TextFile, WhatCannotBeReadIsSaid)
{
    const auto missing = readTextFile("/no/such/file.csv");
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().kind, ProblemKind::cannotRead);
    EXPECT_EQ(say(missing.error().what), "There is no file “/no/such/file.csv”. Check the path.");
    const auto folder = readTextFile(PADSIDE_SOURCE_DIR "/tests");
    ASSERT_FALSE(folder);
    EXPECT_EQ(folder.error().kind, ProblemKind::cannotRead);
    EXPECT_EQ(say(folder.error().what), "“" PADSIDE_SOURCE_DIR "/tests” is a folder. Name a file in it.");
}

} // namespace padside

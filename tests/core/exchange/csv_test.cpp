// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <random>

namespace padside {

namespace {

using testing::ElementsAre;

CsvTable tableOf(std::string_view text)
{
    const auto table = readCsv(text, "f.csv");
    EXPECT_TRUE(table) << (table ? "" : say(table.error().what));
    return table.value_or(CsvTable{});
}

std::string refusalOf(std::string_view text)
{
    const auto table = readCsv(text, "f.csv");
    if (table)
        return "taken, with " + std::to_string(table->rows.size()) + " rows";
    EXPECT_EQ(table.error().kind, ProblemKind::badInput);
    return say(table.error().what);
}

std::string lineOf(const std::vector<std::string>& cells)
{
    return csvLine(cells);
}

} // namespace

// RFC 4180, section 2, rules 1 to 3: the examples printed there.
TEST(CsvReading, TheExamplesOfRfc4180AreUnderstood)
{
    for (const char* text : {"field_name,field_name2,field_name3\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
                             "field_name,field_name2,field_name3\r\naaa,bbb,ccc\r\nzzz,yyy,xxx"}) {
        const CsvTable table = tableOf(text);
        EXPECT_THAT(table.columns, ElementsAre("field_name", "field_name2", "field_name3"));
        EXPECT_THAT(table.rows, ElementsAre(CsvRow{2, {"aaa", "bbb", "ccc"}}, CsvRow{3, {"zzz", "yyy", "xxx"}}));
    }
}

// RFC 4180, section 2, rules 5 to 7.
TEST(CsvReading, QuotedValuesMayHoldCommasQuotesAndLineBreaks)
{
    const CsvTable table = tableOf("a,b,c\r\n\"aaa\",\"b \r\nbb\",\"c,\"\"c\"\"\"\r\nzzz,yyy,xxx");
    EXPECT_THAT(table.rows, ElementsAre(CsvRow{2, {"aaa", "b \r\nbb", "c,\"c\""}}, CsvRow{4, {"zzz", "yyy", "xxx"}}));
}

// RFC 4180, section 2, rule 4: spaces are part of a field.
TEST(CsvReading, BlanksAroundValuesAreKeptAroundColumnNamesDropped)
{
    const CsvTable table = tableOf(" a , b\n 1 ,2 \n");
    EXPECT_THAT(table.columns, ElementsAre("a", "b"));
    EXPECT_THAT(table.rows, ElementsAre(CsvRow{2, {" 1 ", "2 "}}));
    EXPECT_EQ(table.column("b"), 1U);
    EXPECT_FALSE(table.column("B"));
}

TEST(CsvReading, AnyLineEndAByteOrderMarkAndEmptyLinesAreUnderstood)
{
    for (const char* text : {"\xEF\xBB\xBF"
                             "a,b\r\n1,2\r\n",
                             "a,b\n1,2\n", "a,b\r1,2\r", "a,b\r\n1,2\r\n\r\n\r\n"})
        EXPECT_THAT(tableOf(text).rows, ElementsAre(CsvRow{2, {"1", "2"}})) << text;
    EXPECT_THAT(tableOf("\n\na,b\n\n1,2\n").rows, ElementsAre(CsvRow{5, {"1", "2"}}));
}

TEST(CsvReading, EmptyValuesAreValues)
{
    EXPECT_THAT(tableOf("a,b\n,\n1,").rows, ElementsAre(CsvRow{2, {"", ""}}, CsvRow{3, {"1", ""}}));
    EXPECT_THAT(tableOf("a\n\"\"\n").rows, ElementsAre(CsvRow{2, {""}}));
    EXPECT_TRUE(tableOf("a,b\n").rows.empty());
}

TEST(CsvReading, WhatIsWrongIsNamedWithItsLine)
{
    EXPECT_EQ(refusalOf(""), "f.csv is empty. Its first line must name the columns.");
    EXPECT_EQ(refusalOf("\r\n\r\n"), "f.csv is empty. Its first line must name the columns.");
    EXPECT_EQ(refusalOf("a,b\n1,2\n1,2,3\n"),
              "f.csv, line 3: values in this line: 3, but columns: 2. Make them agree.");
    EXPECT_EQ(refusalOf("a,b\n\"1\n1\",2\n3\n"),
              "f.csv, line 4: values in this line: 1, but columns: 2. Make them agree.");
    EXPECT_EQ(refusalOf("a,b\n1,2\n\"3,4\n5,6\n"),
              "f.csv, line 3: a quotation mark is opened here and never closed. Close it, or take it out.");
    EXPECT_EQ(refusalOf("a,b\n1,2\"\n"),
              "f.csv, line 2: there is a quotation mark inside a value. Put the whole value in quotation marks and "
              "write the inner "
              "ones twice.");
    EXPECT_EQ(refusalOf("a,b\n\"1\"x,2\n"),
              "f.csv, line 2: something follows a closing quotation mark. Put a comma there, or write quotation marks "
              "inside a value "
              "twice.");
    EXPECT_EQ(refusalOf("a,a\n1,2\n"), "f.csv, line 1: the column “a” is there twice. Leave only one of them.");
    EXPECT_EQ(refusalOf("a,\n1,2\n"), "f.csv, line 1: column 2 has no name. The first line must name every column.");
    EXPECT_EQ(refusalOf("a;b\n1;2\n"),
              "f.csv, line 1: the values are not separated by commas. Save the file with commas and decimal points.");
    EXPECT_EQ(refusalOf("a,b\n1,M\xFCller\n"),
              "f.csv, line 2: this is not UTF-8 text. Save the file as “CSV UTF-8” and try again.");
    EXPECT_EQ(refusalOf(std::string_view("\xFF\xFE"
                                         "a\0,\0",
                                         6)),
              "f.csv, line 1: this is not UTF-8 text. Save the file as “CSV UTF-8” and try again.");
}

TEST(CsvWriting, QuotesOnlyWhatNeedsIt)
{
    EXPECT_EQ(lineOf({"a", "b c", ""}), "a,b c,\r\n");
    EXPECT_EQ(lineOf({"a,b", "say \"so\"", "two\nlines", " blank"}),
              "\"a,b\",\"say \"\"so\"\"\",\"two\nlines\",\" blank\"\r\n");
    EXPECT_EQ(lineOf({""}), "\"\"\r\n");
}

// Common practice against formulas in exported text, no standard.
TEST(CsvWriting, TextThatLooksLikeAFormulaIsDisarmedAndNumbersStay)
{
    EXPECT_EQ(lineOf({"=1+1", "+cmd", "-cmd", "@SUM(A1)"}), "'=1+1,'+cmd,'-cmd,'@SUM(A1)\r\n");
    EXPECT_EQ(lineOf({"-5.2", "+3", "-1e-3", "1=1"}), "-5.2,+3,-1e-3,1=1\r\n");
    EXPECT_EQ(lineOf({"-5.2 °C", "-"}), "'-5.2 °C,'-\r\n");
    EXPECT_EQ(lineOf({"\t=1", "\r=1"}), "'\t=1,\"'\r=1\"\r\n");
}

TEST(CsvWriting, WhatIsWrittenIsReadBack)
{
    std::mt19937 random(17);
    const std::vector<std::string> signs{"a", "b", " ", ",", "\"", "\n", "\r", ";", "=", "1", ".", "\t", "ü"};
    std::uniform_int_distribution<std::size_t> sign(0, 12);
    std::uniform_int_distribution<int> length(0, 6);
    for (int round = 0; round < 500; ++round) {
        std::vector<std::string> cells{"first"}; // never a formula, never an empty line
        for (int cell = 0; cell < 3; ++cell) {
            std::string text = "x";
            for (int i = length(random); i > 0; --i)
                text += signs[sign(random)];
            cells.push_back(text);
        }
        const CsvTable table = tableOf("a,b,c,d\r\n" + lineOf(cells));
        ASSERT_EQ(table.rows.size(), 1U);
        EXPECT_EQ(table.rows[0].cells, cells);
    }
}

} // namespace padside

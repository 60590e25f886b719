// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/csv.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

CsvSalvage salvaged(std::string_view text)
{
    const auto read = salvageCsv(text, "f.csv");
    EXPECT_TRUE(read) << (read ? "" : say(read.error().what));
    return read.value_or(CsvSalvage{});
}

/// The first cells of the rows that could be read, and the lines of those that could not: "a b !4".
std::string outline(const CsvSalvage& read)
{
    std::string text;
    for (const CsvRow& row : read.table.rows)
        text += row.cells.front() + " ";
    for (const CsvFault& fault : read.faults)
        text += "!" + std::to_string(fault.line) + " ";
    return text.empty() ? text : text.substr(0, text.size() - 1);
}

} // namespace

TEST(CsvSalvaging, AGoodFileIsReadAsByReadCsv)
{
    constexpr std::string_view text = "\xEF\xBB\xBFtag,place\r\nA,\"roof, north\"\r\n\r\nB,\"two\nlines\"\r\n";
    const CsvSalvage read = salvaged(text);
    EXPECT_TRUE(read.faults.empty());
    EXPECT_EQ(read.table.rows, readCsv(text, "f.csv")->rows);
}

TEST(CsvSalvaging, AQuoteThatIsNeverClosedCostsOnlyItsRow)
{
    const CsvSalvage read = salvaged("tag,place\nA,roof\nB,\"roof\nC,\"yard\"\nD,wall\n");
    EXPECT_EQ(outline(read), "A C D !3");
    EXPECT_EQ(outline(salvaged("tag,place\nA,roof\nB,\"roof\nC,yard\n")), "A C !3");
    EXPECT_NE(say(salvaged("tag,place\nB,\"roof\n").faults[0].what).find("never closed"), std::string::npos);
}

TEST(CsvSalvaging, ARowThatIsNotUtf8CostsOnlyItself)
{
    const CsvSalvage read = salvaged("tag,place\nA,caf\xE9\nB,caf\xC3\xA9\n");
    EXPECT_EQ(outline(read), "B !2");
    EXPECT_NE(say(read.faults[0].what).find("UTF-8"), std::string::npos);
}

TEST(CsvSalvaging, ARowWithTooManyOrTooFewCellsCostsOnlyItself)
{
    EXPECT_EQ(outline(salvaged("tag,place\nA\nB,roof\nC,roof,north\n")), "B !2 !4");
}

TEST(CsvSalvaging, WithoutALineOfColumnNamesNothingIsRead)
{
    for (const char* text : {"", "\n\n", "tag;place\nA;roof\n", "tag,tag\nA,B\n", "tag,\nA,B\n", "\"tag,place\nA,B\n",
                             "tag,pl\xE9\nA,B\n"})
        EXPECT_FALSE(salvageCsv(text, "f.csv")) << text;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/wall_file.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

std::string wallRefusal(std::string_view text)
{
    const auto file = readWallFile(text, "w.csv");
    EXPECT_FALSE(file);
    return file ? std::string() : say(file.error().what);
}

} // namespace

TEST(WallFile, IsReadByNamesAndPutInOrderOfTime)
{
    const auto file = readWallFile("place,thickness_mm,date\nfoot,2.4,2026-05-04\nfoot,3.0,2016-05-04\n", "w.csv");
    ASSERT_TRUE(file);
    ASSERT_EQ(file->readings.size(), 2U);
    EXPECT_EQ(file->readings[0].years, 0);
    EXPECT_NEAR(file->readings[0].thicknessM, 3e-3, 1e-15);
    EXPECT_NEAR(file->readings[1].years, 10, 0.01);
    EXPECT_EQ(isoText(file->last), "2026-05-04");
}

TEST(WallFile, ABadRowRefusesItForFewReadingsDecide)
{
    const std::string head = "date,thickness_mm\n";
    EXPECT_EQ(wallRefusal(head), "w.csv has no values below its first line. Add at least one.");
    EXPECT_EQ(wallRefusal(head + "2026-02-30,3\n"),
              "w.csv, line 2: “2026-02-30” is no date. Write it like 2026-05-04.");
    EXPECT_EQ(wallRefusal(head + "2026-05-04,nan\n"),
              "w.csv, line 2: “nan” in the column “thickness_mm” is not a number. Write it like 12.5.");
    for (const std::string wall : {"0", "-3", "1001"})
        EXPECT_EQ(wallRefusal(head + "2026-05-04," + wall + "\n"),
                  "w.csv, line 2: a wall of “" + wall + "” mm can't be. Check the reading and its unit.");
    EXPECT_EQ(wallRefusal(head + "2026-05-04,3\n2026-05-04,2.9\n"),
              "w.csv, line 3: there is a reading of 2026-05-04 already. Keep one a day.");
    EXPECT_EQ(wallRefusal("date,wall\n2026-05-04,3\n"),
              "w.csv has no column “thickness_mm”; its columns are: date, wall. Name it in the first line.");
}

} // namespace padside

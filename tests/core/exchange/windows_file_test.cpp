// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/text_file.h"
#include "core/exchange/windows_file.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

std::string windowsRefusal(std::string_view text)
{
    const auto file = readWindowsFile(text, "w.csv");
    if (file)
        return "taken, with " + std::to_string(file->windows.size()) + " windows";
    EXPECT_EQ(file.error().kind, ProblemKind::badInput);
    return say(file.error().what);
}

Window window(int earliest, int latest)
{
    return {Date(std::chrono::days(earliest)), Date(std::chrono::days(latest))};
}

} // namespace

TEST(WindowsFile, IsReadByTheNamesOfItsColumns)
{
    const auto file = readWindowsFile("hi,lo,unit,id,note\n20,10,HB-01,a,x\n -3 ,-5,,b,\n", "w.csv");
    ASSERT_TRUE(file);
    EXPECT_EQ(file->ids, (std::vector<std::string>{"a", "b"}));
    EXPECT_EQ(file->units, (std::vector<std::string>{"HB-01", ""}));
    EXPECT_EQ(file->windows, (std::vector<Window>{window(10, 20), window(-5, -3)}));
}

TEST(WindowsFile, ABadRowRefusesTheWholeFileAndIsNamed)
{
    EXPECT_EQ(windowsRefusal("id,unit,lo,hi\na,,1,2\nb,,9,8\n"),
              "w.csv, line 3: the window ends on day 8, before it begins on day 9. Swap them.");
    for (const char* number : {"", "x", "1.5", "nan", "1e3", "99999999999999999999", "10000001", "2026-05-04"})
        EXPECT_EQ(windowsRefusal("id,unit,lo,hi\na,,1," + std::string(number) + "\n"),
                  "w.csv, line 2: “" + std::string(number)
                      + "” in the column “hi” is not a whole number from -10000000 to 10000000.");
}

TEST(WindowsFile, AMissingColumnIsSaidAndNoWindowsAreNone)
{
    EXPECT_EQ(windowsRefusal("id,lo,hi\na,1,2\n"),
              "w.csv has no column “unit”; its columns are: id, lo, hi. Name it in the first line.");
    EXPECT_EQ(windowsRefusal("id,unit,lo,hi\n"), "taken, with 0 windows");
}

// Source: tests/reference/README.md; the whole way from file to trips.
TEST(WindowsFile, TheReferenceWindowsNeed4523TripsOnOneLineAnd9954UnitByUnit)
{
    const auto text = readTextFile(PADSIDE_SOURCE_DIR "/tests/reference/windows10000.csv");
    ASSERT_TRUE(text);
    const auto file = readWindowsFile(*text, "windows10000.csv");
    ASSERT_TRUE(file);
    EXPECT_EQ(fewestTrips(file->windows).size(), 4523U);
    std::size_t trips = 0;
    for (const TripGroup& group : fewestTripsByGroup(file->windows, file->units))
        trips += group.trips.size();
    EXPECT_EQ(trips, 9954U);
}

} // namespace padside

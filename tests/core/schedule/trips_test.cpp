// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/trips.h"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <random>
#include <sstream>
#include <stdexcept>

namespace padside {

namespace {

Date dayNumber(int number)
{
    return Date(std::chrono::days(number));
}

int numberOf(Date date)
{
    return static_cast<int>(date.time_since_epoch().count());
}

Window window(int earliest, int latest)
{
    return {dayNumber(earliest), dayNumber(latest)};
}

std::vector<int> daysOf(const std::vector<Trip>& trips)
{
    std::vector<int> days;
    days.reserve(trips.size());
    for (const Trip& trip : trips)
        days.push_back(numberOf(trip.on));
    return days;
}

/// Each window is served exactly once, on a day within it; each trip names the window that forced it.
void expectServesAll(const std::vector<Trip>& trips, const std::vector<Window>& windows)
{
    std::vector<int> served(windows.size(), 0);
    for (const Trip& trip : trips) {
        EXPECT_TRUE(std::ranges::is_sorted(trip.windows));
        EXPECT_TRUE(std::ranges::count(trip.windows, trip.forcedBy) == 1);
        for (const std::size_t index : trip.windows) {
            ++served.at(index);
            EXPECT_LE(windows[index].earliest, trip.on);
            EXPECT_GE(windows[index].latest, trip.on);
            EXPECT_LE(windows[trip.forcedBy].latest, windows[index].latest);
        }
    }
    EXPECT_TRUE(std::ranges::all_of(served, [](int times) { return times == 1; }));
    EXPECT_TRUE(std::ranges::is_sorted(trips, {}, &Trip::on));
}

/// So many windows that do not meet: no plan can do with fewer trips.
std::size_t windowsApart(std::vector<Window> windows)
{
    std::ranges::sort(windows, {}, &Window::earliest);
    std::reverse(windows.begin(), windows.end()); // from the right this time, unlike the code under test
    std::size_t count = 0;
    std::optional<Date> begin;
    for (const Window& one : windows) {
        if (!begin || one.latest < *begin) {
            begin = one.earliest;
            ++count;
        }
    }
    return count;
}

struct ManyWindows
{
    std::vector<Window> windows;
    std::vector<std::string> units;
};

ManyWindows tenThousandWindows()
{
    std::ifstream file(PADSIDE_SOURCE_DIR "/tests/reference/windows10000.csv");
    ManyWindows many;
    std::string line;
    std::getline(file, line);
    while (std::getline(file, line)) {
        std::istringstream cells(line);
        std::string id;
        std::string unit;
        std::string earliest;
        std::string latest;
        std::getline(cells, id, ',');
        std::getline(cells, unit, ',');
        std::getline(cells, earliest, ',');
        std::getline(cells, latest, ',');
        many.windows.push_back(window(std::stoi(earliest), std::stoi(latest)));
        many.units.push_back(unit);
    }
    if (many.windows.size() != 10'000)
        throw std::runtime_error("windows10000.csv is not complete");
    return many;
}

std::vector<Window> randomWindows(std::mt19937& random, int count)
{
    std::uniform_int_distribution<int> start(0, 400);
    std::uniform_int_distribution<int> length(0, 60);
    std::vector<Window> windows;
    for (int i = 0; i < count; ++i) {
        const int earliest = start(random);
        windows.push_back(window(earliest, earliest + length(random)));
    }
    return windows;
}

} // namespace

// Source: tests/reference/README.md (every best answer found by trying all).
TEST(FewestTrips, SmallCasesGetOneOfTheBestAnswers)
{
    std::ifstream file(PADSIDE_SOURCE_DIR "/tests/reference/stabbing.json");
    const auto cases = nlohmann::json::parse(file);
    int checked = 0;
    for (const auto& [name, one] : cases.items()) {
        if (!one.contains("windows"))
            continue;
        std::vector<Window> windows;
        for (const auto& pair : one["windows"])
            windows.push_back(window(pair[0].get<int>(), pair[1].get<int>()));
        const auto trips = fewestTrips(windows);
        EXPECT_EQ(trips.size(), one["optimal_count"].get<std::size_t>()) << name;
        expectServesAll(trips, windows);
        const auto best = one["all_optimal_endpoint_solutions"].get<std::vector<std::vector<int>>>();
        const bool listed = std::ranges::find(best, daysOf(trips)) != best.end();
        // The list of mixed_12 stops at 50 of its 104 answers.
        EXPECT_TRUE(listed || best.size() < one["n_optimal_endpoint_solutions"].get<std::size_t>()) << name;
        EXPECT_EQ(daysOf(trips), one["greedy_points"].get<std::vector<int>>()) << name;
        ++checked;
    }
    EXPECT_EQ(checked, 6);
}

// Source: tests/reference/README.md.
TEST(FewestTrips, TenThousandWindowsOnOneLineNeed4523Trips)
{
    const ManyWindows many = tenThousandWindows();
    const auto trips = fewestTrips(many.windows);
    EXPECT_EQ(trips.size(), 4523U);
    EXPECT_EQ(windowsApart(many.windows), 4523U);
    expectServesAll(trips, many.windows);
    const std::vector<int> days = daysOf(trips);
    EXPECT_EQ(std::vector<int>(days.begin(), days.begin() + 5), (std::vector<int>{67, 103, 125, 181, 239}));
    std::int64_t sum = 0;
    for (const int day : days)
        sum += day;
    EXPECT_EQ(sum, 449'611'040);
}

// Source: tests/reference/README.md.
TEST(FewestTrips, TenThousandWindowsUnitByUnitNeed9954Trips)
{
    const ManyWindows many = tenThousandWindows();
    const auto groups = fewestTripsByGroup(many.windows, many.units);
    EXPECT_EQ(groups.size(), 400U);
    std::vector<Trip> all;
    for (const TripGroup& group : groups) {
        for (const Trip& trip : group.trips) {
            for (const std::size_t index : trip.windows)
                EXPECT_EQ(many.units[index], group.name);
            all.push_back(trip);
        }
    }
    EXPECT_EQ(all.size(), 9954U);
    std::ranges::sort(all, {}, &Trip::on);
    expectServesAll(all, many.windows);
}

TEST(FewestTrips, RandomWindowsAreServedByAsFewAsAnyPlanCould)
{
    std::mt19937 random(3);
    for (int round = 0; round < 200; ++round) {
        const std::vector<Window> windows = randomWindows(random, 1 + round % 40);
        const auto trips = fewestTrips(windows);
        expectServesAll(trips, windows);
        EXPECT_EQ(trips.size(), windowsApart(windows));
    }
}

TEST(FewestTrips, ShufflingTheWindowsChangesNoDay)
{
    std::mt19937 random(5);
    std::vector<Window> windows = randomWindows(random, 60);
    const auto days = daysOf(fewestTrips(windows));
    for (int round = 0; round < 20; ++round) {
        std::ranges::shuffle(windows, random);
        EXPECT_EQ(daysOf(fewestTrips(windows)), days);
    }
}

TEST(FewestTrips, AnotherWindowNeverSavesATrip)
{
    std::mt19937 random(9);
    std::vector<Window> windows = randomWindows(random, 80);
    std::size_t before = 0;
    for (std::size_t count = 1; count <= windows.size(); ++count) {
        const std::size_t now = fewestTrips(std::span(windows).first(count)).size();
        EXPECT_GE(now, before);
        EXPECT_LE(now, before + 1);
        before = now;
    }
}

TEST(FewestTrips, NothingToDoNeedsNoTrip)
{
    EXPECT_TRUE(fewestTrips({}).empty());
    EXPECT_TRUE(fewestTripsByGroup({}, {}).empty());
}

TEST(FewestTrips, TheWindowThatEndsFirstIsNamedAsTheOneThatForcedTheDay)
{
    const std::vector<Window> windows{window(0, 100), window(10, 30), window(20, 60)};
    const auto trips = fewestTrips(windows);
    ASSERT_EQ(trips.size(), 1U);
    EXPECT_EQ(trips[0].forcedBy, 1U);
    EXPECT_EQ(numberOf(trips[0].on), 30);
    EXPECT_EQ(trips[0].windows, (std::vector<std::size_t>{0, 1, 2}));
}

TEST(FewestTrips, APreferredDayWithinTheCommonPartIsTaken)
{
    const std::vector<Window> windows{window(0, 100), window(10, 30), window(20, 60)};
    const auto beforeDay25 = [](Date day) { return numberOf(day) <= 25; };
    EXPECT_EQ(daysOf(fewestTrips(windows, beforeDay25)), std::vector<int>{25});
    const auto day19 = [](Date day) { return numberOf(day) == 19; };
    EXPECT_EQ(daysOf(fewestTrips(windows, day19)), std::vector<int>{30}) << "day 19 is outside one of the windows";
}

TEST(FewestTrips, PreferringDaysNeverCostsATrip)
{
    std::mt19937 random(13);
    const auto preferred = [](Date day) { return numberOf(day) % 30 < 7; };
    for (int round = 0; round < 100; ++round) {
        const std::vector<Window> windows = randomWindows(random, 30);
        const auto trips = fewestTrips(windows, preferred);
        EXPECT_EQ(trips.size(), fewestTrips(windows).size());
        expectServesAll(trips, windows);
    }
}

TEST(FewestTrips, GroupsComeInOrderOfNameWithIndicesOfTheWholeInput)
{
    const std::vector<Window> windows{window(0, 10), window(5, 8), window(7, 20), window(30, 40)};
    const std::vector<std::string> units{"HB-02", "HB-01", "HB-02", "HB-01"};
    const auto groups = fewestTripsByGroup(windows, units);
    ASSERT_EQ(groups.size(), 2U);
    EXPECT_EQ(groups[0].name, "HB-01");
    ASSERT_EQ(groups[0].trips.size(), 2U);
    EXPECT_EQ(groups[0].trips[0].windows, std::vector<std::size_t>{1});
    EXPECT_EQ(groups[0].trips[1].forcedBy, 3U);
    EXPECT_EQ(groups[1].name, "HB-02");
    ASSERT_EQ(groups[1].trips.size(), 1U);
    EXPECT_EQ(groups[1].trips[0].windows, (std::vector<std::size_t>{0, 2}));
    EXPECT_EQ(numberOf(groups[1].trips[0].on), 10);
}

} // namespace padside

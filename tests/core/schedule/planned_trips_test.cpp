// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/move_cost.h"
#include "tests/core/schedule/planning_windows.h"
#include "tests/support/record_builder.h"

#include <gmock/gmock.h>
#include <random>

namespace padside {

namespace {

using test::day;
using test::planningDay;
using test::window;
using testing::ElementsAre;
using testing::IsEmpty;

MovedTrip move(const std::string& insteadOf, const std::string& to)
{
    return {day(insteadOf), day(to)};
}

MovedTrip kept(const std::string& on, const std::string& takesAlongFrom)
{
    return {day(on), day(on), day(takesAlongFrom)};
}

/// "2026-05-10 moved: 0 1late".
std::vector<std::string> told(const std::vector<PlannedTrip>& trips)
{
    std::vector<std::string> lines;
    for (const PlannedTrip& trip : trips) {
        std::string line = isoText(trip.on) + (trip.moved ? " moved:" : ":");
        for (const std::size_t index : trip.windows) {
            const bool late = std::ranges::find(trip.late, index) != trip.late.end();
            line += " " + std::to_string(index) + (late ? "late" : "");
        }
        lines.push_back(line);
    }
    return lines;
}

std::vector<std::string> plan(const std::vector<Window>& windows, const std::vector<MovedTrip>& moves)
{
    return told(plannedTrips(windows, moves, planningDay));
}

} // namespace

TEST(PlannedTrips, WithoutChosenDaysTheyAreTheFewestTrips)
{
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-05-01", "2026-06-20"),
                              window("2026-06-01", "2026-07-10")};
    EXPECT_THAT(plan(windows, {}), ElementsAre("2026-05-10: 0 1", "2026-07-10: 2"));
}

TEST(PlannedTrips, AChosenDayServesEveryWindowThatHoldsIt)
{
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-04-20", "2026-06-20")};
    EXPECT_THAT(plan(windows, {move("2026-05-10", "2026-04-25")}), ElementsAre("2026-04-25 moved: 0 1"));
}

TEST(PlannedTrips, MovedTooEarlyForAWindowItNeedsAFurtherTrip)
{
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-05-01", "2026-06-20")};
    EXPECT_THAT(plan(windows, {move("2026-05-10", "2026-04-15")}), ElementsAre("2026-04-15 moved: 0", "2026-06-20: 1"));
}

TEST(PlannedTrips, MovedTooLateForAWindowItTakesTheWindowAlongLate)
{
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-05-01", "2026-06-20")};
    EXPECT_THAT(plan(windows, {move("2026-05-10", "2026-05-20")}), ElementsAre("2026-05-20 moved: 0late 1"));
}

TEST(PlannedTrips, AWindowThatAnotherTripMeetsInTimeIsNotLeftLate)
{
    // 2 is met on 2026-05-08 only, so there is a trip on that day, and it serves 0 as well.
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-05-11", "2026-06-20"),
                              window("2026-05-08", "2026-05-08")};
    EXPECT_THAT(plan(windows, {move("2026-05-10", "2026-05-20")}),
                ElementsAre("2026-05-08: 0 2", "2026-05-20 moved: 1"));
}

TEST(PlannedTrips, WhatBecameDueSinceTheMoveIsNotPutOffWithIt)
{
    // Ends before the day the trip was moved from, so that trip was never for it.
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-03-05", "2026-03-20")};
    EXPECT_THAT(plan(windows, {move("2026-05-10", "2026-05-20")}),
                ElementsAre("2026-03-20: 1", "2026-05-20 moved: 0late"));
}

TEST(PlannedTrips, WhatWasDueTodayStaysWithTheTripItWasMovedToOnTheDaysAfter)
{
    // Moved from yesterday; overdue windows are given as due planningDay.
    EXPECT_THAT(plan({window("2026-03-01", "2026-03-01")}, {move("2026-02-28", "2026-03-09")}),
                ElementsAre("2026-03-09 moved: 0late"));
}

TEST(PlannedTrips, AChosenDayThatIsOverPlaysNoPart)
{
    EXPECT_THAT(plan({window("2026-03-01", "2026-03-08")}, {move("2026-02-20", "2026-02-28")}),
                ElementsAre("2026-03-08: 0"));
}

TEST(PlannedTrips, AChosenDayThatNothingNeedsAnyMoreStillStands)
{
    EXPECT_THAT(plan({}, {move("2026-05-10", "2026-05-20")}), ElementsAre("2026-05-20 moved:"));
    EXPECT_THAT(plan({}, {}), IsEmpty());
}

TEST(PlannedTrips, KeepingADayChangesNothingToday)
{
    std::mt19937 dice(7); // NOLINT(cert-msc51-cpp): the same every time
    const auto within = [&](int most) { return std::chrono::days(std::uniform_int_distribution(0, most)(dice)); };
    const auto evenDays = [](Date date) { return date.time_since_epoch().count() % 7 < 2; };
    int kept = 0;
    for (int round = 0; round < 300; ++round) {
        std::vector<Window> windows;
        for (int i = 0; i < 8; ++i) {
            const Date first = planningDay + within(60);
            windows.push_back({first, first + within(40)});
        }
        const auto before = plannedTrips(windows, {}, planningDay, evenDays);
        for (std::size_t trip = 0; trip < before.size(); ++trip) {
            auto after = plannedTrips(windows, withKept(windows, {}, before, trip, 14), planningDay, evenDays);
            const auto same = std::ranges::find_if(after, [](const PlannedTrip& one) { return one.moved.has_value(); });
            ASSERT_NE(same, after.end());
            EXPECT_TRUE(same->moved->isKept());
            same->moved.reset();
            EXPECT_EQ(after, before) << "round " << round << ", " << isoText(before[trip].on);
            ++kept;
        }
    }
    EXPECT_GT(kept, 300) << "enough were tried";
}

TEST(PlannedTrips, AKeptDayStaysWhenSomethingNewIsDueShortlyBeforeItAndTakesItAlongLate)
{
    const Window told = window("2026-04-01", "2026-05-12");
    const Window found = window("2026-03-10", "2026-05-05");
    EXPECT_THAT(plan({told, found}, {}), ElementsAre("2026-05-05: 0 1")) << "worked out, the trip would be earlier";
    EXPECT_THAT(plan({told, found}, {kept("2026-05-12", "2026-04-28")}), ElementsAre("2026-05-12 moved: 0 1late"));
}

TEST(PlannedTrips, WhatCannotWaitForAKeptDayGetsATripOfItsOwn)
{
    const std::vector windows{window("2026-04-21", "2026-05-12"), window("2026-03-10", "2026-04-20")};
    EXPECT_THAT(plan(windows, {kept("2026-05-12", "2026-04-28")}), ElementsAre("2026-04-20: 1", "2026-05-12 moved: 0"));
}

TEST(PlannedTrips, WhatWasOverdueBeforeADayWasKeptIsNotPutOffToIt)
{
    // 0 should have been served in January and is due today, a week before the kept day; 1 came to be due since.
    const std::vector windows{window("2026-03-01", "2026-03-01"), window("2026-03-01", "2026-03-01")};
    const std::vector dueBy{day("2026-01-20"), day("2026-02-27")};
    EXPECT_THAT(told(plannedTrips(windows, std::vector{kept("2026-03-08", "2026-02-25")}, planningDay, {}, dueBy)),
                ElementsAre("2026-03-01: 0 1", "2026-03-08 moved:"))
        << "there is a trip today anyway";
    EXPECT_THAT(told(plannedTrips(std::span(windows).last(1), std::vector{kept("2026-03-08", "2026-02-25")},
                                  planningDay, {}, std::span(dueBy).last(1))),
                ElementsAre("2026-03-08 moved: 0late"));
}

TEST(PlannedTrips, AKeptDayStaysWhenItsCheckMayWaitLonger)
{
    EXPECT_THAT(plan({window("2026-04-01", "2026-06-20")}, {kept("2026-05-12", "2026-04-28")}),
                ElementsAre("2026-05-12 moved: 0"));
}

TEST(PlannedTrips, MovingOneTripLeavesAnotherThatIsNeededAnywayItsChecks)
{
    // 1 is served with 0, though the day chosen for 2 would meet it too.
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-05-01", "2026-06-10"),
                              window("2026-06-01", "2026-07-10")};
    EXPECT_THAT(plan(windows, {}), ElementsAre("2026-05-10: 0 1", "2026-07-10: 2"));
    EXPECT_THAT(plan(windows, {move("2026-07-10", "2026-06-05")}),
                ElementsAre("2026-05-10: 0 1", "2026-06-05 moved: 2"));
}

TEST(PlannedTrips, TwoTripsMovedToOneDayAreOne)
{
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-05-11", "2026-06-20")};
    EXPECT_THAT(plan(windows, {move("2026-05-10", "2026-05-20"), move("2026-06-20", "2026-05-20")}),
                ElementsAre("2026-05-20 moved: 0late 1"));
}

TEST(PlannedTrips, TheWindowThatCanWaitLeastIsNamed)
{
    const std::vector windows{window("2026-04-01", "2026-06-10"), window("2026-04-01", "2026-05-10")};
    const auto trips = plannedTrips(windows, std::vector{move("2026-05-10", "2026-05-01")}, planningDay);
    ASSERT_EQ(trips.size(), 1);
    EXPECT_EQ(trips.front().forcedBy, 1);
}

TEST(PlannedTrips, EveryWindowIsServedOnceAndOnlyMovedTripsAreLateWhateverIsMoved)
{
    std::mt19937 dice(4); // NOLINT(cert-msc51-cpp): the same every time
    const auto within = [&](int most) { return std::chrono::days(std::uniform_int_distribution(0, most)(dice)); };
    for (int round = 0; round < 300; ++round) {
        std::vector<Window> windows;
        for (int i = 0; i < 8; ++i) {
            const Date first = planningDay + within(60);
            windows.push_back({first, first + within(40)});
        }
        std::vector<MovedTrip> moves;
        for (int i = 0; i < 2; ++i)
            moves.push_back({planningDay + within(90), planningDay + within(90)});
        std::vector<int> served(windows.size());
        for (const PlannedTrip& trip : plannedTrips(windows, moves, planningDay)) {
            for (const std::size_t index : trip.windows) {
                ++served[index];
                const bool late = std::ranges::find(trip.late, index) != trip.late.end();
                EXPECT_EQ(late, trip.on > windows[index].latest);
                EXPECT_GE(trip.on, windows[index].earliest);
                EXPECT_TRUE(!late || trip.moved);
            }
        }
        EXPECT_THAT(served, testing::Each(1)) << "round " << round;
    }
}

} // namespace padside

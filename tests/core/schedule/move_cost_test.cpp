// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/move_cost.h"
#include "tests/core/schedule/planning_windows.h"
#include "tests/support/record_builder.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::day;
using test::planningDay;
using test::window;
using testing::ElementsAre;
using testing::IsEmpty;

/// What moving the first trip costs, as it is said.
std::vector<std::string> said(const std::vector<Window>& windows, const std::string& to)
{
    const auto trips = plannedTrips(windows, {}, planningDay);
    std::vector<std::string> sentences;
    for (const Sentence& sentence : costSentences(costOfMove(windows, {}, planningDay, trips.front(), day(to))))
        sentences.push_back(say(sentence));
    return sentences;
}

const std::vector springAndSummer{window("2026-04-01", "2026-05-10"), window("2026-04-20", "2026-06-20")};

} // namespace

TEST(MoveCost, WithinEveryWindowItCostsNothing)
{
    EXPECT_THAT(said(springAndSummer, "2026-05-01"),
                ElementsAre("Costs nothing: every check stays within its window."));
}

TEST(MoveCost, AfterALatestDayItSaysHowManyAreHowLate)
{
    EXPECT_THAT(said(springAndSummer, "2026-05-11"), ElementsAre("One check would come a day later than it should."));
    EXPECT_THAT(said(springAndSummer, "2026-05-20"), ElementsAre("One check would come 10 days later than it should."));
    EXPECT_THAT(said(springAndSummer, "2026-06-30"),
                ElementsAre("2 checks would come later than they should, the worst by 51 days."));
}

TEST(MoveCost, BeforeAnEarliestDayItNamesTheTripItWouldNeed)
{
    EXPECT_THAT(said(springAndSummer, "2026-04-10"),
                ElementsAre("For one check it would be too early; it waits for another trip.",
                            "It needs one more trip, on 2026-06-20."));
}

TEST(MoveCost, OntoADayThatServesAnotherTripTooItSavesOne)
{
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-05-12", "2026-06-20")};
    EXPECT_THAT(said(windows, "2026-05-12"),
                ElementsAre("One check would come 2 days later than it should.", "It saves a trip."));
}

TEST(MoveCost, WhichChecksAreLateIsKnownTheLatestFirst)
{
    const auto trips = plannedTrips(springAndSummer, {}, planningDay);
    const MoveCost cost = costOfMove(springAndSummer, {}, planningDay, trips.front(), day("2026-06-30"));
    EXPECT_THAT(cost.late, ElementsAre(MoveCost::Late{0, 51}, MoveCost::Late{1, 10}));
}

TEST(MovedTrips, ATripMovedAgainKeepsTheDayItWasMovedFromFirst)
{
    const auto once = withMove({}, day("2026-05-10"), day("2026-05-20"));
    EXPECT_THAT(once, ElementsAre(MovedTrip{day("2026-05-10"), day("2026-05-20")}));
    const auto twice = withMove(once, day("2026-05-20"), day("2026-05-25"));
    EXPECT_THAT(twice, ElementsAre(MovedTrip{day("2026-05-10"), day("2026-05-25")}));
    EXPECT_THAT(withMove(twice, day("2026-05-25"), day("2026-05-10")), IsEmpty()) << "back where it was";
}

TEST(MovedTrips, AKeptDayTakesAlongWhatIsDueShortlyBeforeItButNotWhatTheTripBeforeWasFor)
{
    const std::vector windows{window("2026-04-01", "2026-05-10"), window("2026-05-11", "2026-05-15"),
                              window("2026-06-01", "2026-07-10")};
    const auto trips = plannedTrips(windows, {}, planningDay);
    EXPECT_THAT(withKept(windows, {}, trips, 2, 14),
                ElementsAre(MovedTrip{day("2026-07-10"), day("2026-07-10"), day("2026-06-26")}));
    EXPECT_THAT(withKept(windows, {}, trips, 1, 14),
                ElementsAre(MovedTrip{day("2026-05-15"), day("2026-05-15"), day("2026-05-11")}));
}

TEST(MovedTrips, ATripMovedAlreadyIsKeptAsItIs)
{
    const std::vector moves{MovedTrip{day("2026-05-10"), day("2026-05-20")}};
    const auto trips = plannedTrips(springAndSummer, moves, planningDay);
    EXPECT_EQ(withKept(springAndSummer, moves, trips, 0, 14), moves);
}

TEST(MovedTrips, AKeptTripMovedAwayAndBackIsKeptAgain)
{
    const std::vector kept{MovedTrip{day("2026-05-10"), day("2026-05-10"), day("2026-04-26")}};
    const auto away = withMove(kept, day("2026-05-10"), day("2026-05-20"));
    ASSERT_EQ(away.size(), 1);
    EXPECT_FALSE(away[0].isKept());
    EXPECT_EQ(withMove(away, day("2026-05-20"), day("2026-05-10")), kept);
}

TEST(MovedTrips, LetGoADayIsWorkedOutAgainHoweverOftenItWasChosen)
{
    const std::vector moves{MovedTrip{day("2026-05-10"), day("2026-05-20")},
                            MovedTrip{day("2026-05-20"), day("2026-05-20"), day("2026-05-06")},
                            MovedTrip{day("2026-09-10"), day("2026-09-20")}};
    EXPECT_THAT(withoutChoice(moves, day("2026-05-20")), ElementsAre(moves[2]));
}

TEST(CostOfChoice, IsNothingWhileTheKeptDayIsTheOneWorkedOut)
{
    const auto trips = plannedTrips(springAndSummer, {}, planningDay);
    const auto moves = withKept(springAndSummer, {}, trips, 0, 14);
    const auto kept = plannedTrips(springAndSummer, moves, planningDay);
    const MoveCost cost = costOfChoice(springAndSummer, moves, planningDay, kept.front());
    EXPECT_TRUE(cost.isNothing());
    EXPECT_EQ(cost.servedBefore, cost.servedOn);
}

TEST(CostOfChoice, IsHowLateTheKeptDayCameToBeAgainstWorkingItOutToday)
{
    const auto moves = withKept(springAndSummer, {}, plannedTrips(springAndSummer, {}, planningDay), 0, 14);
    std::vector windows = springAndSummer;
    windows[0].latest = day("2026-05-05");
    const auto kept = plannedTrips(windows, moves, planningDay);
    ASSERT_EQ(kept.front().on, day("2026-05-10"));
    const MoveCost cost = costOfChoice(windows, moves, planningDay, kept.front());
    EXPECT_THAT(cost.late, ElementsAre(MoveCost::Late{0, 5}));
    EXPECT_THAT(cost.servedBefore, testing::Each(day("2026-05-05")));
    EXPECT_THAT(cost.servedOn, testing::Each(day("2026-05-10")));
    EXPECT_EQ(cost.furtherTrips, 0);
}

TEST(CostOfChoice, NamesTheTripThatIsNeededBecauseTheDayStays)
{
    const std::vector moves{MovedTrip{day("2026-05-10"), day("2026-04-15")}};
    const auto trips = plannedTrips(springAndSummer, moves, planningDay);
    const MoveCost cost = costOfChoice(springAndSummer, moves, planningDay, trips.front());
    EXPECT_EQ(cost.furtherTrips, 1);
    EXPECT_THAT(cost.onlyThen, ElementsAre(day("2026-06-20")));
}

} // namespace padside

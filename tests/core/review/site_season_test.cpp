// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/trip_needs.h"
#include "tests/core/review/planned_check.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::aUnit;
using test::check;
using test::day;
using testing::ElementsAre;
using testing::IsEmpty;

const Date today = day("2026-03-01");

std::shared_ptr<ReviewedUnit> unitWith(const std::string& tag, std::vector<Check> checks)
{
    auto unit = std::make_shared<ReviewedUnit>();
    unit->unit.tag = tag;
    unit->unit.id = UnitId(UuidBytes{static_cast<std::uint8_t>(tag.back())});
    unit->review.checks = std::move(checks);
    return unit;
}

/// "2026-05-08: A a, B b".
std::vector<std::string> told(const SiteSeason& season)
{
    std::vector<std::string> lines;
    for (const SeasonTrip& trip : season.trips) {
        std::string line = isoText(trip.on) + ":";
        for (const SeasonCheck& one : trip.checks)
            line += " " + one.unit->unit.tag + say(one.check().what)
                + (one.daysLate > 0 ? " +" + std::to_string(one.daysLate) : "");
        lines.push_back(line);
    }
    return lines;
}

} // namespace

TEST(SiteSeason, WithoutChosenDaysItsTripsAreThoseOfSiteTrips)
{
    const auto one = unitWith("A", {check("a", "2026-04-01", "2026-05-10"), check("b", "2026-06-01", "2026-07-10")});
    const auto other = unitWith("B", {check("c", "2026-05-01", "2026-06-20")});
    EXPECT_THAT(told(siteSeason({one, other}, {}, today)), ElementsAre("2026-05-08: Aa Bc", "2026-07-10: Ab"));
}

TEST(SiteSeason, AnOverdueCheckIsServedTodayAndSaysHowLateThatIs)
{
    EXPECT_THAT(told(siteSeason({unitWith("A", {check("a", "2026-01-01", "2026-02-20")})}, {}, today)),
                ElementsAre("2026-03-01: Aa +9"));
}

TEST(SiteSeason, AChosenDayIsKeptAndWhatItCostsIsKnownBefore)
{
    const auto one = unitWith("A", {check("a", "2026-04-01", "2026-05-10")});
    const SiteSeason season = siteSeason({one}, {}, today);
    const MoveCost cost = season.costOfMove(0, day("2026-05-13"));
    ASSERT_EQ(cost.late.size(), 1);
    EXPECT_EQ(cost.late.front().days, 3);
    EXPECT_THAT(told(siteSeason({one}, {{season.trips[0].on, day("2026-05-13")}}, today)),
                ElementsAre("2026-05-13: Aa +3"));
}

TEST(SiteSeason, AKeptDayStaysWhenANewFindingAsksForAnEarlierOneAndSaysHowLateThatIs)
{
    const Catalogue catalogue = test::smallCatalogue();
    const SiteSeason before = siteSeason({unitWith("A", {check("a", "2026-04-01", "2026-05-12")})}, {}, today);
    EXPECT_THAT(told(before), ElementsAre("2026-05-12: Aa"));
    const auto kept = before.movesWithKept(0, catalogue);
    const auto found
        = unitWith("A", {check("a", "2026-04-01", "2026-05-12"), check("new", "2026-03-10", "2026-05-05")});
    const SiteSeason later = siteSeason({found}, kept, today);
    EXPECT_THAT(told(later), ElementsAre("2026-05-12: Aa Anew +7"));
    EXPECT_EQ(later.costOfChoice(0).servedBefore.front(), day("2026-05-05"));
    EXPECT_THAT(told(siteSeason({found}, withoutChoice(kept, day("2026-05-12")), today)),
                ElementsAre("2026-05-05: Aa Anew"))
        << "let go, it moves";
}

TEST(SiteSeason, WhatWasOverdueWhenADayWasKeptIsNotPutOffToItOnTheDaysAfter)
{
    const Catalogue catalogue = test::smallCatalogue();
    const auto unit = unitWith("A", {check("old", "2025-10-01", "2026-02-01"), check("a", "2026-03-08", "2026-03-10")});
    const auto kept = siteSeason({unit}, {}, today).movesWithKept(1, catalogue);
    EXPECT_THAT(told(siteSeason({unit}, kept, day("2026-03-04"))),
                ElementsAre("2026-03-04: Aold +31", "2026-03-10: Aa"));
}

TEST(SiteSeason, ATripThatIsOnlyNeededBecauseADayStaysKnowsWhichTrip)
{
    const auto unit = unitWith("A", {check("a", "2026-04-01", "2026-05-10"), check("b", "2026-05-01", "2026-06-20")});
    const SiteSeason moved = siteSeason({unit}, {{day("2026-05-08"), day("2026-04-16")}}, today);
    ASSERT_THAT(told(moved), ElementsAre("2026-04-16: Aa", "2026-05-15: Ab"));
    EXPECT_EQ(moved.chosenTripThatNeeds(day("2026-05-15")), 0U);
    EXPECT_FALSE(moved.chosenTripThatNeeds(day("2026-04-16")));
}

TEST(SiteSeason, RetiredUnitsNeedNoTrip)
{
    const auto gone = unitWith("A", {check("a", "2026-04-01", "2026-05-10")});
    gone->unit.retiredOn = day("2026-01-01");
    EXPECT_THAT(siteSeason({gone}, {}, today).trips, IsEmpty());
}

TEST(SiteSeason, TheReasonOfAVisitIsItsChecklistElseTheSeasonElseACallOut)
{
    Check fall = check("a", "2026-09-20", "2026-10-20");
    fall.checklist = VisitReason::fall;
    const auto listed = unitWith("A", {fall});
    SeasonTrip trip;
    trip.checks = {SeasonCheck{listed, 0, 0}};
    trip.on = day("2026-04-20");
    EXPECT_EQ(reasonOnTrip(trip, *listed), VisitReason::fall);
    EXPECT_EQ(reasonOnTrip(trip, *unitWith("B", {})), VisitReason::spring);
    trip.on = day("2026-07-20");
    EXPECT_EQ(reasonOnTrip(trip, *unitWith("B", {})), VisitReason::callOut);
}

TEST(TripNeeds, AChecklistBringsWhatItsTasksAskForAndAMarkedPartWhatItTakesToLookAfterIt)
{
    const Catalogue catalogue = test::smallCatalogue(R"({"part_kinds": {
        "suction-accumulator": {"bring": ["primer", "brush"], "tasks": {"spring-look": {"bring": ["lamp"]}}},
        "fins": {"tasks": {"spring-wash": {"bring": ["hose", "lamp"]}}}}})");
    const UnitRecord record = aUnit("HB-01")
                                  .withPart("suction-accumulator", {"crown"}, "2015-04-01")
                                  .withPart("fins", {"face"}, "2015-04-01")
                                  .visit("2025-10-06", VisitReason::fall)
                                  .graded("crown", 3)
                                  .graded("face", 1)
                                  .build();
    const auto unit
        = std::make_shared<const ReviewedUnit>(reviewedUnit(record, catalogue, OutlookModel(catalogue), today));
    SeasonTrip trip;
    for (std::size_t i = 0; i < unit->review.checks.size(); ++i) {
        const Check& one = unit->review.checks[i];
        if (one.checklist == VisitReason::spring || one.partId == record.parts[0].id)
            trip.checks.push_back(SeasonCheck{unit, i, 0});
    }
    EXPECT_THAT(tripNeeds(trip, catalogue).bring, testing::UnorderedElementsAre("primer", "brush", "lamp", "hose"));
    EXPECT_THAT(tripNeeds(trip, catalogue).spares, IsEmpty());
}

TEST(TripNeeds, ASpareIsForAPoorPartOfWhichOneIsMadeAndNeverForDirt)
{
    const UnitRecord record = aUnit("HB-01")
                                  .withPart("suction-accumulator", {"crown", "bottom"}, "2015-04-01")
                                  .withPart("base-pan", {"corners"}, "2015-04-01")
                                  .withPart("fins", {"face"}, "2015-04-01")
                                  .visit("2025-10-06", VisitReason::fall)
                                  .graded("crown", 3)
                                  .graded("bottom", 4)
                                  .graded("corners", 5)
                                  .graded("face", 5)
                                  .build();
    const Catalogue catalogue = test::smallCatalogue();
    const auto unit
        = std::make_shared<const ReviewedUnit>(reviewedUnit(record, catalogue, OutlookModel(catalogue), today));
    SeasonTrip trip;
    trip.checks = {SeasonCheck{unit, 0, 0}};
    const TripNeeds needs = tripNeeds(trip, catalogue);
    ASSERT_EQ(needs.spares.size(), 1) << "no separate base pan or fins are made";
    EXPECT_EQ(
        say(needs.spares[0].why),
        "Suction accumulator, bottom: 4 poor on 2025-10-06. Once spent, this part normally ends the unit; a spare "
        "is usually to be had.");
}

} // namespace padside

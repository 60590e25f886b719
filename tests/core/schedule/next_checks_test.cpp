// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/next_checks.h"
#include "core/schedule/trips.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;
using test::smallCatalogue;
using testing::ElementsAre;
using testing::IsEmpty;

std::vector<Check> zoneChecksOf(const RecordBuilder& builder, const std::string& today,
                                const std::string& ownChanges = {})
{
    const UnitRecord record = builder.build();
    return zoneChecks(record, smallCatalogue(ownChanges), day(today), zoneHistories(record), {});
}

Check onlyZoneCheck(const RecordBuilder& builder, const std::string& today = "2026-06-01",
                    const std::string& ownChanges = {})
{
    const auto checks = zoneChecksOf(builder, today, ownChanges);
    if (checks.size() != 1)
        throw std::logic_error("one check expected");
    return checks.front();
}

RecordBuilder bottomSeen(int grade, const std::string& on = "2026-05-04")
{
    return aUnit("HB-01").withPart("suction-accumulator", {"bottom"}).visit(on).graded("bottom", grade);
}

Window windowOf(const Check& check)
{
    return {check.earliest, check.latest};
}

Window between(const std::string& earliest, const std::string& latest)
{
    return {day(earliest), day(latest)};
}

} // namespace

TEST(ZoneChecks, ASoundZoneWaitsAtMostTwelveMonthsFromHalfWayOn)
{
    const Check check = onlyZoneCheck(bottomSeen(1));
    EXPECT_EQ(windowOf(check), between("2026-11-02", "2027-05-04"));
    EXPECT_EQ(say(check.what), "Suction accumulator, bottom: look again");
    EXPECT_EQ(say(check.why), "1 sound when last seen on 2026-05-04; to be seen again by 2027-05-04.");
    EXPECT_THAT(check.conditions, IsEmpty());
}

TEST(ZoneChecks, WhereNoOutlookIsKnownEachGradeHasItsMonthsAtMost)
{
    const std::string own = R"({"assumptions": {"grade-3-months": {"value": 6}, "grade-4-months": {"value": 3}}})";
    EXPECT_EQ(onlyZoneCheck(bottomSeen(3), "2026-06-01", own).latest, day("2026-11-04"));
    EXPECT_EQ(onlyZoneCheck(bottomSeen(4), "2026-06-01", own).latest, day("2026-08-04"));
    EXPECT_EQ(onlyZoneCheck(bottomSeen(4)).latest, day("2027-05-04"));
    EXPECT_EQ(onlyZoneCheck(bottomSeen(5)).latest, day("2026-05-18"));
    EXPECT_EQ(say(onlyZoneCheck(bottomSeen(5)).what), "Suction accumulator, bottom: repair or replace");
}

TEST(ZoneChecks, NeverPastTwelveMonthsWhateverThePersonsOwnAssumptionsSay)
{
    EXPECT_EQ(
        onlyZoneCheck(bottomSeen(1), "2026-06-01", R"({"assumptions": {"grade-1-months": {"value": 60}}})").latest,
        day("2027-05-04"));
}

TEST(ZoneChecks, TwelveMonthsAfterALeapDayIsTheLastOfFebruary)
{
    EXPECT_EQ(onlyZoneCheck(bottomSeen(1, "2028-02-29"), "2028-03-01").latest, day("2029-02-28"));
}

TEST(ZoneChecks, AMarkedZoneMayWaitForASeasonAboutToBegin)
{
    const std::string own = R"({"assumptions": {"grade-3-months": {"value": 6}, "grade-4-months": {"value": 3}}})";
    // Six months after 2026-09-20 is 2027-03-20; spring begins on Monday 2027-03-22.
    EXPECT_EQ(onlyZoneCheck(bottomSeen(3, "2026-09-20"), "2026-10-01", own).latest, day("2027-03-28"));
    // A poor one does not wait: three months after 2026-12-20.
    EXPECT_EQ(onlyZoneCheck(bottomSeen(4, "2026-12-20"), "2027-01-01", own).latest, day("2027-03-20"));
}

TEST(ZoneChecks, TheGradeLeftAfterWorkCounts)
{
    EXPECT_EQ(onlyZoneCheck(bottomSeen(4).graded("bottom", 2, Phase::asLeft)).latest, day("2027-05-04"));
}

TEST(ZoneChecks, AZoneWetWhenSeenIsToBeSeenDry)
{
    const Check check = onlyZoneCheck(bottomSeen(2).wet(Wetness::wet));
    EXPECT_EQ(windowOf(check), between("2026-05-05", "2026-11-04"));
    EXPECT_THAT(check.conditions, ElementsAre(Condition::dry));
    EXPECT_EQ(say(check.what), "Suction accumulator, bottom: see it dry");
    EXPECT_EQ(say(check.why), "Wet when last seen on 2026-05-04 (2 worn); only a dry surface shows its grade.");
    EXPECT_THAT(onlyZoneCheck(bottomSeen(2).wet(Wetness::damp)).conditions, IsEmpty());
}

TEST(ZoneChecks, AZoneSeenDrySinceNeedsNoMore)
{
    EXPECT_THAT(
        onlyZoneCheck(
            bottomSeen(2, "2025-10-01").wet(Wetness::wet).visit("2026-05-04").graded("bottom", 2).wet(Wetness::dry))
            .conditions,
        IsEmpty());
}

TEST(ZoneChecks, AZoneGradedSinceWithoutAWordOnWetnessIsNotCalledWet)
{
    const Check check
        = onlyZoneCheck(bottomSeen(2, "2025-10-01").wet(Wetness::wet).visit("2026-05-04").graded("bottom", 2));
    EXPECT_THAT(check.conditions, IsEmpty());
    EXPECT_EQ(check.latest, day("2027-05-04"));
}

TEST(ZoneChecks, AZoneNotSeenIsDueAtTheNextVisitAtLatest)
{
    const Check check
        = onlyZoneCheck(bottomSeen(1, "2025-10-10").visit("2026-05-04").notSeen("bottom", NotSeenReason::covered));
    EXPECT_EQ(windowOf(check), between("2026-05-05", "2026-10-10"));
    EXPECT_EQ(say(check.what), "Suction accumulator, bottom: see it");
    EXPECT_EQ(say(check.why),
              "1 sound when last seen on 2025-10-10; looked for in vain on 2026-05-04 (covered by a panel or jacket).");
}

TEST(ZoneChecks, OneThatHadToKeepRunningIsToBeSeenWithTheUnitOff)
{
    EXPECT_THAT(onlyZoneCheck(bottomSeen(1, "2025-10-10").visit("2026-05-04").notSeen("bottom", NotSeenReason::running))
                    .conditions,
                ElementsAre(Condition::off));
}

TEST(ZoneChecks, AttemptsInVainNeverMoveADateLater)
{
    const auto unseenSince = [](int grade) {
        return bottomSeen(grade, "2023-05-04").visit("2026-05-04").notSeen("bottom", NotSeenReason::covered);
    };
    EXPECT_EQ(onlyZoneCheck(unseenSince(2)).latest, day("2024-05-04")) << "overdue, and it says so";
    EXPECT_EQ(onlyZoneCheck(unseenSince(4)).latest, day("2024-05-04"));
    const auto twice = bottomSeen(1, "2025-10-10")
                           .visit("2025-11-04", VisitReason::callOut)
                           .notSeen("bottom", NotSeenReason::covered)
                           .visit("2026-05-04")
                           .notSeen("bottom", NotSeenReason::covered);
    EXPECT_EQ(onlyZoneCheck(twice).latest, day("2026-05-17")) << "the end of the season after the first attempt";
}

TEST(ZoneChecks, AZoneNeverSeenIsDueNowToTheNextSeason)
{
    const auto started = aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
    EXPECT_EQ(windowOf(onlyZoneCheck(started)), between("2026-06-01", "2026-11-08"));
    const Check visited = onlyZoneCheck(RecordBuilder(started).visit("2026-05-04"));
    EXPECT_EQ(windowOf(visited), between("2026-05-05", "2026-11-08"));
    EXPECT_EQ(say(visited.why), "Never seen yet, so nothing is known.");
    const Check attempted
        = onlyZoneCheck(RecordBuilder(started).visit("2026-05-04").notSeen("bottom", NotSeenReason::noTime));
    EXPECT_EQ(say(attempted.why), "Never seen yet; looked for in vain on 2026-05-04 (no time).");
}

TEST(ZoneChecks, RoutineLooksOfOneUnitShareOneCheck)
{
    const auto checks = zoneChecksOf(aUnit("HB-01")
                                         .withPart("suction-accumulator", {"crown", "shell", "bottom"})
                                         .withPart("run-capacitor", {"case"})
                                         .visit("2026-05-04")
                                         .graded("crown", 1)
                                         .graded("shell", 2)
                                         .graded("bottom", 3)
                                         .graded("case", 1),
                                     "2026-06-01");
    ASSERT_EQ(checks.size(), 2U);
    EXPECT_EQ(say(checks[0].what), "Look again at 3 zones of 2 parts");
    EXPECT_EQ(say(checks[0].why), "Sound or worn when last seen on 2026-05-04; to be seen again by 2027-05-04.");
    EXPECT_FALSE(checks[0].partId);
    EXPECT_EQ(say(checks[1].what), "Suction accumulator, bottom: look again");
}

TEST(ZoneChecks, MarkedZonesOfOnePartShareOneCheckButNotThoseOfTwoParts)
{
    const auto checks = zoneChecksOf(aUnit("HB-01")
                                         .withPart("suction-accumulator", {"crown", "bottom"})
                                         .withPart("run-capacitor", {"case"})
                                         .visit("2026-05-04")
                                         .graded("crown", 3)
                                         .graded("bottom", 3)
                                         .graded("case", 3),
                                     "2026-06-01");
    ASSERT_EQ(checks.size(), 2U);
    EXPECT_EQ(say(checks[0].what), "Suction accumulator: look again at 2 zones");
    EXPECT_TRUE(checks[0].partId);
    EXPECT_FALSE(checks[0].zoneId);
    EXPECT_EQ(say(checks[1].what), "Run capacitor, case: look again");
}

TEST(ZoneChecks, ZonesOfRemovedPartsAreLeftOut)
{
    const auto check = onlyZoneCheck(bottomSeen(5).replacedPart("suction-accumulator", "2026-05-04"));
    EXPECT_EQ(say(check.what), "Suction accumulator, bottom: see it");
}

namespace {

std::vector<Check> checklistsOf(const RecordBuilder& builder, const std::string& today)
{
    return checklistChecks(builder.build(), smallCatalogue(), day(today));
}

RecordBuilder accumulatorAndFins()
{
    return aUnit("HB-01").withPart("suction-accumulator", {"bottom"}).withPart("fins", {"face"});
}

} // namespace

TEST(ChecklistChecks, GatherTheTasksOfAllPartsIntoOneCheckPerSeason)
{
    const auto checks = checklistsOf(accumulatorAndFins(), "2026-01-10");
    ASSERT_EQ(checks.size(), 2U);
    EXPECT_EQ(say(checks[0].what), "Spring checklist: 2 tasks");
    EXPECT_EQ(windowOf(checks[0]), between("2026-03-16", "2026-05-17"));
    EXPECT_THAT(checks[0].conditions, ElementsAre(Condition::off, Condition::hot));
    EXPECT_EQ(say(checks[0].why), "Once a year in its season; none is on record yet.");
    EXPECT_EQ(say(checks[1].what), "Fall checklist: one task");
    EXPECT_EQ(windowOf(checks[1]), between("2026-09-14", "2026-11-08"));
}

TEST(ChecklistChecks, AClosedVisitOfTheSeasonMovesItToTheNextYear)
{
    const auto spring = [](const RecordBuilder& unit) { return checklistsOf(unit, "2026-05-10").front(); };
    const auto done = spring(accumulatorAndFins().visit("2026-05-04"));
    EXPECT_EQ(done.earliest, day("2027-03-22"));
    EXPECT_EQ(say(done.why), "Once a year in its season; last done on 2026-05-04.");
    EXPECT_EQ(spring(accumulatorAndFins().visit("2026-05-04", VisitReason::spring, false)).earliest, day("2026-03-16"))
        << "the visit is still open";
    EXPECT_EQ(spring(accumulatorAndFins().visit("2026-05-04", VisitReason::callOut)).earliest, day("2026-03-16"));
    EXPECT_EQ(spring(accumulatorAndFins().visit("2026-03-01")).earliest, day("2027-03-22")) << "somewhat early";
}

TEST(ChecklistChecks, OneMissedStaysOverdueUntilTheOtherSeasonBegins)
{
    const auto unit = accumulatorAndFins().visit("2025-05-04");
    EXPECT_EQ(checklistsOf(unit, "2026-09-13").front().latest, day("2026-05-17"));
    const Check rolled = checklistsOf(unit, "2026-09-14").front();
    EXPECT_EQ(rolled.earliest, day("2027-03-22"));
    EXPECT_EQ(say(rolled.why), "Last done on 2025-05-04; it was due by 2026-05-17 and the season has passed.");
}

TEST(ChecklistChecks, AUnitWithoutTasksHasNone)
{
    EXPECT_THAT(checklistsOf(aUnit("HB-01").withPart("run-capacitor", {"case"}), "2026-01-10"), IsEmpty());
}

TEST(PromisedChecks, SayWhenAndWhyItWasPromised)
{
    const auto unit
        = bottomSeen(2).followUp("bottom", "2026-06-01", "2026-07-15", "bottom was wet, look again when dry");
    auto record = unit.build();
    record.followUps.front().conditions = "dry off";
    const auto checks = promisedChecks(record, smallCatalogue());
    ASSERT_EQ(checks.size(), 1U);
    EXPECT_EQ(say(checks[0].what), "Suction accumulator, bottom: look again as promised");
    EXPECT_EQ(say(checks[0].why), "Promised on 2026-05-04: bottom was wet, look again when dry");
    EXPECT_EQ(windowOf(checks[0]), between("2026-06-01", "2026-07-15"));
    EXPECT_THAT(checks[0].conditions, ElementsAre(Condition::dry, Condition::off));
    EXPECT_EQ(checks[0].followUpId, record.followUps.front().id);
}

TEST(PromisedChecks, LeaveOutWhatIsSettledOrAboutARemovedPart)
{
    auto record = bottomSeen(2).followUp("bottom", "2026-06-01", "2026-07-15", "look").build();
    record.followUps.front().settledAt = record.visits.front().id;
    EXPECT_THAT(promisedChecks(record, smallCatalogue()), IsEmpty());
    const auto replaced = bottomSeen(2)
                              .followUp("bottom", "2026-06-01", "2026-07-15", "look")
                              .replacedPart("suction-accumulator", "2026-06-01");
    EXPECT_THAT(promisedChecks(replaced.build(), smallCatalogue()), IsEmpty());
}

TEST(NextChecks, ComeByLatestDateAndNotAtAllForARetiredUnit)
{
    auto record = bottomSeen(4).followUp("bottom", "2026-06-01", "2026-07-15", "look").build();
    const auto checks = nextChecks(record, smallCatalogue(), day("2026-06-01"), zoneHistories(record), {});
    std::vector<std::string> latest;
    latest.reserve(checks.size());
    for (const Check& check : checks)
        latest.push_back(isoText(check.latest));
    EXPECT_THAT(latest, ElementsAre("2026-07-15", "2026-11-08", "2027-05-04", "2027-05-23"));
    record.unit.retiredOn = day("2026-05-20");
    EXPECT_THAT(nextChecks(record, smallCatalogue(), day("2026-06-01"), zoneHistories(record), {}), IsEmpty());
}

} // namespace padside

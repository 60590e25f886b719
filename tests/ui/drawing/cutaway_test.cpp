// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"
#include "ui/drawing/cutaway.h"

#include <gtest/gtest.h>

namespace padside {

using test::aUnit;
using test::day;
using test::smallCatalogue;

namespace {

CutawayContent standingToday(const test::RecordBuilder& builder)
{
    const UnitRecord record = builder.build();
    const Catalogue catalogue = smallCatalogue();
    return cutawayOf(record, review(record, catalogue, OutlookModel(catalogue), day("2026-11-01")), catalogue,
                     plainEnglish());
}

CutawayContent atLastVisit(const test::RecordBuilder& builder)
{
    const UnitRecord record = builder.build();
    return cutawayOfVisit(record, record.visits.back().id, smallCatalogue(), plainEnglish());
}

test::RecordBuilder accumulator()
{
    auto builder = aUnit("HW-01");
    builder.withPart("suction-accumulator", {"crown", "bottom"});
    return builder;
}

} // namespace

TEST(Cutaway, APartShowsTheWorstGradeOfItsZonesAndSaysWhereAndSinceWhen)
{
    auto builder = accumulator();
    builder.visit("2026-04-10").graded("crown", 2).graded("bottom", 3);
    builder.visit("2026-10-12", VisitReason::fall).graded("crown", 2).graded("bottom", 4);
    const CutawayContent content = standingToday(builder);
    ASSERT_EQ(content.parts.size(), 1U);
    const CutawayPart& part = content.parts.front();
    EXPECT_EQ(part.grade, Grade::poor);
    EXPECT_FALSE(part.notSeen);
    EXPECT_EQ(part.zone, builder.zone("bottom"));
    EXPECT_EQ(part.sentence.toStdString(),
              "Suction accumulator, bottom: 4 poor on 2026-10-12, worse by one since spring 2026.");
}

TEST(Cutaway, ImprovementAndCallOutsAreToldWithTheirDay)
{
    auto builder = accumulator();
    builder.visit("2026-07-01", VisitReason::callOut).graded("bottom", 4);
    builder.visit("2026-10-12", VisitReason::fall).graded("bottom", 2);
    EXPECT_EQ(standingToday(builder).parts.front().sentence.toStdString(),
              "Suction accumulator, bottom: 2 worn on 2026-10-12, better by 2 since 2026-07-01.");
}

TEST(Cutaway, WhatStandsIsWhatTheWorkLeft)
{
    auto builder = accumulator();
    builder.visit("2026-04-10").graded("bottom", 4).graded("bottom", 2, Phase::asLeft);
    const CutawayPart part = standingToday(builder).parts.front();
    EXPECT_EQ(part.grade, Grade::worn);
    EXPECT_EQ(part.sentence.toStdString(), "Suction accumulator, bottom: 4 poor on 2026-04-10, left as 2 worn.");
}

TEST(Cutaway, AGradeThatIsNotUpToDateKeepsItsNumeralAndSaysSo)
{
    auto builder = accumulator();
    builder.visit("2026-04-10").graded("bottom", 3);
    builder.visit("2026-10-12", VisitReason::fall).notSeen("bottom", NotSeenReason::noAccess);
    const CutawayPart part = standingToday(builder).parts.front();
    EXPECT_EQ(part.grade, Grade::marked);
    EXPECT_TRUE(part.notSeen);
    EXPECT_EQ(part.sentence.toStdString(),
              "Suction accumulator, bottom: 3 marked on 2026-04-10, not seen since (no access).");
}

TEST(Cutaway, NeverSeenAndNeverLookedAtAreTwoThings)
{
    auto builder = accumulator();
    builder.withPart("fan-blade", {"root"});
    builder.visit("2026-04-10").notSeen("bottom", NotSeenReason::covered);
    const CutawayContent content = standingToday(builder);
    ASSERT_EQ(content.parts.size(), 2U);
    const auto& vessel = content.parts[0].kind == "suction-accumulator" ? content.parts[0] : content.parts[1];
    const auto& blade = content.parts[0].kind == "fan-blade" ? content.parts[0] : content.parts[1];
    EXPECT_TRUE(vessel.notSeen);
    EXPECT_FALSE(vessel.grade.has_value());
    EXPECT_EQ(vessel.sentence.toStdString(),
              "Suction accumulator, bottom: not seen on 2026-04-10 (covered by a panel or jacket).");
    EXPECT_FALSE(blade.notSeen);
    EXPECT_EQ(blade.sentence.toStdString(), "Fan blade: nothing recorded yet.");
}

TEST(Cutaway, AReplacedPartGivesItsPlaceToTheNewOne)
{
    auto builder = accumulator();
    builder.visit("2026-04-10").graded("bottom", 5);
    builder.replacedPart("suction-accumulator", "2026-05-02");
    const CutawayContent content = standingToday(builder);
    ASSERT_EQ(content.parts.size(), 1U);
    EXPECT_FALSE(content.parts.front().grade.has_value());
}

TEST(Cutaway, PartsInNamedPositionsAreToldApart)
{
    auto builder = aUnit("HW-01");
    builder.withPart("run-capacitor", {"case"}, {}, "fan").withPart("run-capacitor", {"case"}, {}, "compressor");
    const CutawayContent content = standingToday(builder);
    ASSERT_EQ(content.parts.size(), 2U);
    EXPECT_EQ(content.parts[0].name.toStdString(), "Run capacitor, fan");
    EXPECT_EQ(content.parts[1].name.toStdString(), "Run capacitor, compressor");
}

TEST(CutawayOfVisit, FillsInAsZonesAreLookedAtAndLeadsToTheFirstThatIsNot)
{
    auto builder = accumulator();
    builder.visit("2026-04-10").graded("crown", 1).graded("bottom", 1);
    builder.visit("2026-10-12", VisitReason::fall, false);
    EXPECT_FALSE(atLastVisit(builder).parts.front().grade.has_value()) << "earlier visits do not count";
    EXPECT_EQ(atLastVisit(builder).parts.front().zone, builder.zone("crown"));
    EXPECT_EQ(atLastVisit(builder).parts.front().sentence.toStdString(),
              "Suction accumulator: not looked at yet at this visit.");
    builder.graded("crown", 3);
    const CutawayPart part = atLastVisit(builder).parts.front();
    EXPECT_EQ(part.grade, Grade::marked);
    EXPECT_EQ(part.zone, builder.zone("bottom"));
    EXPECT_EQ(part.sentence.toStdString(),
              "Suction accumulator, crown: 3 marked at this visit; 1 of 2 zones looked at.");
}

TEST(CutawayOfVisit, ACompletePartLeadsToItsWorstZone)
{
    auto builder = accumulator();
    builder.visit("2026-10-12", VisitReason::fall, false).graded("crown", 2).graded("bottom", 4);
    EXPECT_EQ(atLastVisit(builder).parts.front().zone, builder.zone("bottom"));
}

TEST(CutawayOfVisit, CountsAZoneAsTheWorkLeftIt)
{
    auto builder = accumulator();
    builder.visit("2026-10-12", VisitReason::fall, false).graded("bottom", 4).graded("bottom", 1, Phase::asLeft);
    EXPECT_EQ(atLastVisit(builder).parts.front().grade, Grade::sound);
}

TEST(CutawayOfVisit, NotSeenAloneIsHatched)
{
    auto builder = accumulator();
    builder.visit("2026-10-12", VisitReason::fall, false).notSeen("crown", NotSeenReason::iceOrSnow);
    const CutawayPart part = atLastVisit(builder).parts.front();
    EXPECT_TRUE(part.notSeen);
    EXPECT_FALSE(part.grade.has_value());
    EXPECT_EQ(part.sentence.toStdString(),
              "Suction accumulator, crown: not seen at this visit (under ice or snow); 1 of 2 zones looked at.");
}

TEST(CutawayOfVisit, AVisitThatIsNotThereShowsNoParts)
{
    EXPECT_TRUE(cutawayOfVisit(accumulator().build(), VisitId(), smallCatalogue(), plainEnglish()).parts.empty());
}

} // namespace padside

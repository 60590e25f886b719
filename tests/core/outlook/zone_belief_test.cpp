// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/forecast.h"
#include "core/outlook/zone_belief.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numeric>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;

class ZoneBeliefOf : public testing::Test
{
protected:
    [[nodiscard]] ZoneBelief believed(const RecordBuilder& builder, const std::string& zone,
                                      const std::string& today) const
    {
        auto belief = zoneBelief(builder.build(), m_catalogue, m_model, builder.zone(zone), day(today));
        EXPECT_TRUE(belief);
        return *belief;
    }

    [[nodiscard]] static double meanGrade(const ZoneBelief& zone)
    {
        const GradeChances chances = zone.belief.grades();
        double mean = 0;
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            mean += chances[grade] * static_cast<double>(grade + 1);
        return mean;
    }

    Catalogue m_catalogue = test::smallCatalogue();
    OutlookModel m_model{m_catalogue};
};

RecordBuilder accumulator(const std::string& fittedOn = "2015-05-01")
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown", "shell", "bottom"}, fittedOn);
    return builder;
}

} // namespace

TEST_F(ZoneBeliefOf, UnseenItNeverLooksBetter)
{
    RecordBuilder seen = accumulator();
    seen.visit("2020-05-01").graded("crown", 2);
    const double then = meanGrade(believed(seen, "crown", "2020-05-01"));
    double before = then;
    for (const char* today : {"2020-11-01", "2021-05-01", "2022-05-01", "2024-05-01", "2030-05-01"}) {
        const double now = meanGrade(believed(seen, "crown", today));
        EXPECT_GT(now, before);
        before = now;
    }
    const double unvisited = meanGrade(believed(seen, "crown", "2024-05-01"));
    seen.visit("2022-05-01").notSeen("crown", NotSeenReason::covered);
    EXPECT_NEAR(meanGrade(believed(seen, "crown", "2024-05-01")), unvisited, 1e-12);
    EXPECT_GT(meanGrade(believed(seen, "crown", "2022-05-01")), then);
}

TEST_F(ZoneBeliefOf, NotSeenOnARunningUnitSaysNotSpentAndNothingElse)
{
    RecordBuilder seen = accumulator();
    seen.visit("2020-05-01").graded("crown", 4);
    RecordBuilder running = seen;
    running.visit("2023-05-01").notSeen("crown", NotSeenReason::running);
    RecordBuilder covered = seen;
    covered.visit("2023-05-01").notSeen("crown", NotSeenReason::covered);
    const ZoneBelief unknown = believed(seen, "crown", "2023-05-01");
    EXPECT_GT(unknown.belief.chanceSpent(), 0.05);
    EXPECT_NEAR(believed(covered, "crown", "2023-05-01").belief.chanceSpent(), unknown.belief.chanceSpent(), 1e-12);
    EXPECT_EQ(believed(running, "crown", "2023-05-01").belief.chanceSpent(), 0);
    EXPECT_GT(believed(running, "crown", "2024-05-01").belief.chanceSpent(), 0);
}

TEST_F(ZoneBeliefOf, NotSeenSaysNothingWhereTheUnitRunsOnWithoutThePart)
{
    RecordBuilder pan = aUnit("HB-02");
    pan.withPart("base-pan", {"corners"}, "2000-05-01");
    const double before = believed(pan, "corners", "2023-05-01").belief.chanceSpent();
    pan.visit("2023-05-01").notSeen("corners", NotSeenReason::running);
    EXPECT_NEAR(believed(pan, "corners", "2023-05-01").belief.chanceSpent(), before, 1e-12);
}

TEST_F(ZoneBeliefOf, ACoatSlowsButDoesNotHeal)
{
    RecordBuilder bare = accumulator();
    bare.visit("2020-05-01").graded("crown", 3);
    RecordBuilder coated = bare;
    coated.treated("crown", TreatmentKind::brushAndCoat, "primer").graded("crown", 1, Phase::asLeft);
    const ZoneBelief atOnce = believed(coated, "crown", "2020-05-01");
    EXPECT_NEAR(meanGrade(atOnce), meanGrade(believed(bare, "crown", "2020-05-01")), 1e-12);
    const double slowed = meanGrade(believed(coated, "crown", "2022-05-01"));
    EXPECT_LT(slowed, meanGrade(believed(bare, "crown", "2022-05-01")));
    EXPECT_GT(slowed, meanGrade(atOnce));
}

TEST_F(ZoneBeliefOf, FreshPaintDoesNotProveTheMetalSound)
{
    RecordBuilder coated = accumulator();
    coated.visit("2020-05-01").graded("crown", 4).treated("crown", TreatmentKind::brushAndCoat);
    coated.visit("2021-05-01").graded("crown", 1);
    EXPECT_GT(meanGrade(believed(coated, "crown", "2021-05-01")), 3.5);
    EXPECT_TRUE(believed(coated, "crown", "2021-05-01").unexplained.empty());
    RecordBuilder through = accumulator();
    through.visit("2020-05-01").graded("crown", 2).treated("crown", TreatmentKind::brushAndCoat);
    through.visit("2021-05-01").graded("crown", 4);
    EXPECT_GT(meanGrade(believed(through, "crown", "2021-05-01")), 3.2); // what shows through counts
}

TEST_F(ZoneBeliefOf, AFastRusterIsKnownByItsThirdVisit)
{
    RecordBuilder fast = accumulator("2018-05-01");
    fast.visit("2019-05-01").graded("crown", 2).graded("shell", 1);
    fast.visit("2020-05-01").graded("crown", 3).graded("shell", 1);
    fast.visit("2021-05-01").graded("crown", 4).graded("shell", 1);
    EXPECT_GT(believed(fast, "crown", "2021-05-01").belief.meanPace(), 1.5);
    EXPECT_LT(believed(fast, "shell", "2021-05-01").belief.meanPace(), 1);
}

TEST_F(ZoneBeliefOf, AReplacedPartStartsFresh)
{
    RecordBuilder builder = accumulator("2010-05-01");
    builder.visit("2019-05-01").graded("crown", 3);
    builder.visit("2021-05-01").graded("crown", 4);
    builder.replacedPart("suction-accumulator", "2021-05-01");
    const ZoneBelief fresh = believed(builder, "crown", "2021-05-01");
    EXPECT_NEAR(fresh.belief.grades()[0], 1, 1e-12);
    EXPECT_NEAR(fresh.belief.meanPace(), 1, 1e-12);
}

TEST_F(ZoneBeliefOf, ReplacedWithoutANewPartInTheRecordStartsFreshToo)
{
    RecordBuilder builder = accumulator("2010-05-01");
    builder.visit("2021-05-01").graded("crown", 4).treated("crown", TreatmentKind::replace);
    EXPECT_NEAR(believed(builder, "crown", "2021-05-01").belief.grades()[0], 1, 1e-12);
}

TEST_F(ZoneBeliefOf, CleaningResetsDirtAndNothingElse)
{
    RecordBuilder fins = aUnit("HB-03");
    fins.withPart("fins", {"face"}, "2015-05-01");
    fins.visit("2020-05-01").graded("face", 4).treated("face", TreatmentKind::clean);
    EXPECT_NEAR(believed(fins, "face", "2020-05-01").belief.grades()[0], 1, 1e-12);
    fins.graded("face", 2, Phase::asLeft);
    EXPECT_NEAR(believed(fins, "face", "2020-05-01").belief.grades()[1], 0.9, 1e-12);
    RecordBuilder crown = accumulator();
    crown.visit("2020-05-01").graded("crown", 3).treated("crown", TreatmentKind::clean);
    EXPECT_GT(meanGrade(believed(crown, "crown", "2020-05-01")), 2.8);
}

TEST_F(ZoneBeliefOf, ARepairIsTakenAtTheGradeItWasLeftAt)
{
    RecordBuilder builder = accumulator();
    builder.visit("2020-05-01").graded("crown", 4).treated("crown", TreatmentKind::repair);
    const double ungraded = meanGrade(believed(builder, "crown", "2020-05-01"));
    EXPECT_LT(ungraded, 3);
    builder.graded("crown", 1, Phase::asLeft);
    EXPECT_LT(meanGrade(believed(builder, "crown", "2020-05-01")), 1.1);
}

TEST_F(ZoneBeliefOf, BetterWithoutAnyWorkIsNamedAndTakenAsRepaired)
{
    RecordBuilder builder = accumulator();
    builder.visit("2020-05-01").graded("crown", 5);
    builder.visit("2021-05-01").graded("crown", 2);
    const ZoneBelief zone = believed(builder, "crown", "2021-06-01");
    EXPECT_EQ(zone.unexplained, std::vector<Date>{day("2021-05-01")});
    EXPECT_NEAR(meanGrade(zone), 2, 0.3);
}

TEST_F(ZoneBeliefOf, AnUnknownBeginningIsFlatOverOneToFour)
{
    RecordBuilder builder = accumulator("");
    const ZoneBelief unseen = believed(builder, "crown", "2021-06-01");
    EXPECT_NEAR(unseen.belief.grades()[2], 0.25, 1e-12);
    EXPECT_EQ(unseen.belief.chanceSpent(), 0);
    builder.visit("2021-05-01").graded("crown", 3);
    // Computed by hand from the misgrading matrix: .05, .90, .05.
    const ZoneBelief seen = believed(builder, "crown", "2021-05-01");
    EXPECT_NEAR(seen.belief.grades()[1], 0.05, 1e-12);
    EXPECT_NEAR(seen.belief.grades()[2], 0.90, 1e-12);
    builder.visit("2021-06-01").graded("shell", 5);
    EXPECT_NEAR(believed(builder, "shell", "2021-06-01").belief.chanceSpent(), 1, 1e-12);
}

TEST_F(ZoneBeliefOf, SaltAirAndWetnessAgeIronAndNotCapacitors)
{
    RecordBuilder builder = accumulator();
    builder.withPart("run-capacitor", {"case"}, "2015-05-01");
    UnitRecord record = builder.build();
    const auto meanOf = [&](const std::string& zone) {
        return meanGrade(*zoneBelief(record, m_catalogue, m_model, builder.zone(zone), day("2021-05-01")));
    };
    const double capacitor = meanOf("case");
    // builder.zone() names zones of the part fitted last.
    const ZoneId crown = record.parts.front().zones.front().id;
    const double inland = meanGrade(*zoneBelief(record, m_catalogue, m_model, crown, day("2021-05-01")));
    record.site.air = {293.15, 0.80, 10.0, 300.0};
    EXPECT_EQ(meanOf("case"), capacitor);
    EXPECT_GT(meanGrade(*zoneBelief(record, m_catalogue, m_model, crown, day("2021-05-01"))), inland + 0.3);
    RecordBuilder wet = accumulator();
    wet.visit("2016-05-01").graded("crown", 1).wet(Wetness::wet);
    RecordBuilder dry = accumulator();
    dry.visit("2016-05-01").graded("crown", 1).wet(Wetness::dry);
    EXPECT_GT(meanGrade(believed(wet, "crown", "2021-05-01")), meanGrade(believed(dry, "crown", "2021-05-01")));
}

TEST_F(ZoneBeliefOf, CorrectedAndLaterEntriesDoNotCount)
{
    RecordBuilder builder = accumulator();
    builder.visit("2020-05-01").graded("crown", 4).corrected(1, "wrong zone");
    EXPECT_LT(meanGrade(believed(builder, "crown", "2020-05-01")), 1.2);
    const double before = meanGrade(believed(builder, "crown", "2020-06-01"));
    builder.visit("2021-05-01").graded("crown", 4);
    EXPECT_EQ(meanGrade(believed(builder, "crown", "2020-06-01")), before);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/likely_loss.h"
#include "core/review/reviewed_fleet.h"
#include "resources/resources.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gmock/gmock.h>

namespace padside::test {

namespace {

class LikelyLossOf : public ::testing::Test
{
protected:
    [[nodiscard]] LikelyLosses of(const UnitRecord& record, const std::string& today = "2024-06-01") const
    {
        return likelyLosses(record, m_catalogue, zoneChances(record, m_catalogue, m_model, day(today)));
    }

    Catalogue m_catalogue = smallCatalogue();
    OutlookModel m_model{m_catalogue};
};

PartKind kindWith(std::set<Consequence> consequences)
{
    PartKind kind;
    kind.consequences = std::move(consequences);
    return kind;
}

std::size_t at(Horizon horizon)
{
    return static_cast<std::size_t>(horizon);
}

} // namespace

TEST(TollOf, IsTheWorstThatTheCatalogueSays)
{
    EXPECT_EQ(tollOf(kindWith({})), Toll::looks);
    EXPECT_EQ(tollOf(kindWith({Consequence::looks, Consequence::nuisance})), Toll::nuisance);
    EXPECT_EQ(tollOf(kindWith({Consequence::lossOfCooling})), Toll::cooling);
    EXPECT_EQ(tollOf(kindWith({Consequence::lossOfCooling, Consequence::compressorAtRisk})), Toll::charge);
    EXPECT_EQ(tollOf(kindWith({Consequence::lossOfCharge, Consequence::endsUnit})), Toll::unit);
}

TEST(TollOf, AMatterOfSafetyKeepsTheUnitOff)
{
    EXPECT_EQ(tollOf(kindWith({Consequence::looks, Consequence::safety})), Toll::cooling);
}

TEST(TollOf, EveryShippedKindHasOne)
{
    const auto catalogue = Catalogue::load(shippedCatalogue());
    std::set<Toll> tolls;
    for (const PartKind& kind : catalogue->partKinds())
        tolls.insert(tollOf(kind));
    EXPECT_TRUE(tolls.contains(Toll::unit));
    EXPECT_TRUE(tolls.contains(Toll::charge));
    EXPECT_TRUE(tolls.contains(Toll::cooling));
}

TEST_F(LikelyLossOf, TheGravestOfTheLikelyPartsSpeaksForTheUnit)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown", "bottom"}, "2010-05-01");
    builder.withPart("base-pan", {"corners"}, "2010-05-01");
    builder.visit("2024-05-01").graded("corners", 4);
    const UnitRecord record = builder.build();
    const LikelyLosses losses = of(record);
    ASSERT_TRUE(losses[at(Horizon::fiveYears)]);
    EXPECT_EQ(losses[at(Horizon::fiveYears)]->partKind, "suction-accumulator");
    EXPECT_EQ(losses[at(Horizon::fiveYears)]->toll, Toll::unit);
    EXPECT_GE(losses[at(Horizon::fiveYears)]->chance, 0.1);
}

TEST_F(LikelyLossOf, WhereNoneIsLikelyTheLikeliestSpeaks)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown"}, "2024-05-01");
    builder.withPart("fan-blade", {"root"}, "2023-05-01");
    builder.visit("2024-05-01").graded("crown", 1).graded("root", 2);
    const LikelyLosses losses = of(builder.build());
    const auto& soon = losses[at(Horizon::nextVisit)];
    ASSERT_TRUE(soon);
    EXPECT_LT(soon->chance, 0.1);
    EXPECT_EQ(soon->partKind, "fan-blade");
}

TEST_F(LikelyLossOf, GrowsMoreLikelyOrGraverWithTime)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown", "bottom"}, "2008-05-01");
    builder.withPart("run-capacitor", {"case"}, "2016-05-01", "fan");
    builder.visit("2024-05-01").graded("crown", 3).graded("bottom", 3).graded("case", 3);
    const LikelyLosses losses = of(builder.build());
    for (std::size_t when = 1; when < horizonCount; ++when) {
        ASSERT_TRUE(losses[when - 1] && losses[when]);
        EXPECT_TRUE(losses[when]->toll > losses[when - 1]->toll || losses[when]->chance >= losses[when - 1]->chance);
    }
}

TEST_F(LikelyLossOf, AUnitWithoutPartsOrRetiredHasNone)
{
    for (const auto& loss : of(aUnit("HB-01").build()))
        EXPECT_FALSE(loss);
    UnitRecord retired = aUnit("HB-01").withPart("base-pan", {"corners"}, "2010-05-01").build();
    retired.unit.retiredOn = day("2024-01-01");
    for (const auto& loss : of(retired))
        EXPECT_FALSE(loss);
}

TEST_F(LikelyLossOf, AReviewedUnitCarriesItToTheFleet)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown"}, "2010-05-01");
    builder.visit("2024-05-01").graded("crown", 4);
    const UnitRecord record = builder.build();
    const ReviewedUnit reviewed = reviewedUnit(record, m_catalogue, m_model, day("2024-06-01"));
    EXPECT_EQ(reviewed.losses, of(record));
    const UnitForecast forecast = unitForecast(record, m_catalogue, m_model, day("2024-06-01"));
    for (std::size_t when = 0; when < horizonCount; ++when)
        EXPECT_EQ(reviewed.stops[when], forecast.unit.stops[when].chance);
}

} // namespace padside::test

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_worth.h"
#include "core/worth/compound_interest.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <numeric>

namespace padside::test {

namespace {

using ::testing::Contains;
using ::testing::Field;

const std::string asOf = "2024-06-01";

/// A rusting accumulator and a sound capacitor, both stopping the unit.
RecordBuilder twoParts()
{
    RecordBuilder unit = aUnit("HB-01");
    unit.installed("2010-05-01").factoryCharge(3);
    unit.withPart("run-capacitor", {"case"}, "2022-05-01");
    unit.withPart("suction-accumulator", {"bottom"}, "2010-05-01");
    unit.visit("2020-05-04").graded("bottom", 2).graded("case", 1);
    unit.visit("2024-05-04").graded("bottom", 4).graded("case", 1);
    return unit;
}

/// Ours by the shipped figures; the person's own are invented.
CostFigures figures()
{
    CostFigures costs;
    costs.interest = 0.05;
    costs.yearsCompared = 10;
    costs.newUnitLifeYears = 15;
    costs.visitsAYear = 2;
    costs.yearlyLossOld = 0.02;
    costs.yearlyLossNew = 0.01;
    return costs;
}

CostFigures withCosts()
{
    CostFigures costs = figures();
    CostsOfKind vessel;
    vessel.part = 260;
    vessel.labour = 640;
    vessel.treatment = 45;
    costs.kinds["suction-accumulator"] = vessel;
    CostsOfKind capacitor;
    capacitor.part = 20;
    capacitor.labour = 70;
    costs.kinds["run-capacitor"] = capacitor;
    return costs;
}

using Assumed = std::vector<UnitAssumption>;

UnitWorth worthOf(UnitRecord record, const CostFigures& costs, const Assumed& assumed = {})
{
    const Catalogue catalogue = smallCatalogue();
    record.assumptions = assumed;
    return unitWorth(record, catalogue, costs, OutlookModel(catalogue), day(asOf));
}

Assumed priced(double price)
{
    return {{"price-new", price}};
}

const PartWorth& vesselOf(const UnitWorth& worth)
{
    return *std::ranges::max_element(worth.parts, {}, &PartWorth::chanceInAYear);
}

const PartChoice* choice(const PartWorth& part, Choice which)
{
    const auto found = std::ranges::find(part.choices, which, &PartChoice::choice);
    return found != part.choices.end() ? &*found : nullptr;
}

} // namespace

TEST(UnitWorth, WithoutCostsItRanksByYearsGainedAndSaysWhichCostIsNeeded)
{
    const UnitWorth worth = worthOf(twoParts().build(), figures());
    ASSERT_EQ(worth.parts.size(), 2U);
    const PartWorth& vessel = worth.parts.front();
    EXPECT_GT(vessel.chanceInAYear, worth.parts.back().chanceInAYear);
    ASSERT_FALSE(vessel.choices.empty());
    for (const PartChoice& one : vessel.choices)
        EXPECT_FALSE(one.presentCost.has_value()) << codeOf(one.choice);
    EXPECT_TRUE(std::ranges::is_sorted(vessel.choices, std::greater{}, &PartChoice::yearsGained));
    EXPECT_FALSE(worth.answer.has_value());
    EXPECT_EQ(worth.uncosted.size(), 2U) << "without a new unit's price even the accumulator has no cost";
    EXPECT_THAT(worth.needed, Contains(Field(&NeededFigure::field, "price-new")));
    // The capacitor is simply replaced, so its own costs are asked for.
    EXPECT_THAT(worth.parts.back().needed, Contains(Field(&NeededFigure::field, "part")));
    EXPECT_THAT(worth.parts.back().needed, Contains(Field(&NeededFigure::field, "labour")));
}

TEST(UnitWorth, WithCostsTheCheapestChoiceComesFirstAndEachHasItsReason)
{
    const UnitWorth worth = worthOf(twoParts().build(), withCosts());
    const PartWorth& vessel = vesselOf(worth);
    EXPECT_TRUE(vessel.needed.empty());
    EXPECT_TRUE(std::ranges::is_sorted(vessel.choices, {}, &PartChoice::presentCost));
    for (const PartChoice& one : vessel.choices) {
        EXPECT_TRUE(one.presentCost.has_value()) << codeOf(one.choice);
        EXPECT_FALSE(say(one.reason).empty());
    }
    ASSERT_NE(choice(vessel, Choice::treat), nullptr);
    EXPECT_EQ(vessel.treatment, TreatmentKind::brushAndCoat);
    EXPECT_GT(choice(vessel, Choice::treat)->yearsGained, 0);
    EXPECT_GT(choice(vessel, Choice::replaceNow)->yearsGained, choice(vessel, Choice::treat)->yearsGained);
}

TEST(UnitWorth, ATreatmentWithoutItsCostKeepsItsYearsAndAsksForTheCost)
{
    CostFigures costs = withCosts();
    costs.kinds["suction-accumulator"].treatment.reset();
    const UnitWorth worth = worthOf(twoParts().build(), costs);
    const PartWorth& vessel = vesselOf(worth);
    const PartChoice* treat = choice(vessel, Choice::treat);
    ASSERT_NE(treat, nullptr);
    EXPECT_FALSE(treat->presentCost.has_value());
    EXPECT_GT(treat->yearsGained, 0);
    EXPECT_TRUE(choice(vessel, Choice::leave)->presentCost.has_value());
    EXPECT_THAT(vessel.needed, Contains(Field(&NeededFigure::field, "treatment")));
}

TEST(UnitWorth, AFreshCoatIsWorthLessAgain)
{
    RecordBuilder coated = twoParts();
    coated.treated("bottom", TreatmentKind::brushAndCoat);
    const UnitWorth bare = worthOf(twoParts().build(), withCosts());
    const UnitWorth fresh = worthOf(coated.build(), withCosts());
    EXPECT_LT(choice(vesselOf(fresh), Choice::treat)->yearsGained,
              choice(vesselOf(bare), Choice::treat)->yearsGained / 2);
}

TEST(UnitWorth, LostRefrigerantIsCountedByTheKilogramOrNamedAsLeftOut)
{
    CostFigures costs = withCosts();
    const Catalogue catalogue
        = smallCatalogue(R"({"refrigerants": {"r-410a": {"designation": "R-410A", "composition": "a blend",
        "safety": {"class": "A1", "source": "s"}, "gwp": {"ar4": {"value": 2088, "source": "s"}},
        "critical": {"temperature_K": 374.21, "source": "s"},
        "saturation": {"lowest_K": 200, "highest_K": 374, "source": "s",
          "bubble": {"reducing_K": 374.21, "reducing_Pa": 4059280, "coefficients": [-7.5], "exponents": [1]}}}}})");
    UnitRecord record = twoParts().build();
    record.unit.refrigerant = "R-410A";
    const OutlookModel model(catalogue);
    const auto without = unitWorth(record, catalogue, costs, model, day(asOf));
    EXPECT_THAT(vesselOf(without).leftOut, Contains(Field(&NeededFigure::key, "r-410a")));
    costs.refrigerantPerKg["r-410a"] = 50;
    const auto with = unitWorth(record, catalogue, costs, model, day(asOf));
    EXPECT_NEAR(*vesselOf(with).costOfFailure - *vesselOf(without).costOfFailure, 3 * 50, 1e-9);
}

TEST(UnitWorth, APartThatIsNoLongerMadeIsNotReplacedAloneAndCostsTheUnit)
{
    const Catalogue catalogue
        = smallCatalogue(R"({"supply": {"suction-accumulator": {"lead_days": 10, "made": false, "source": "s"}}})");
    UnitRecord record = twoParts().build();
    record.assumptions = priced(4000);
    const UnitWorth worth = unitWorth(record, catalogue, figures(), OutlookModel(catalogue), day(asOf));
    const PartWorth& vessel = vesselOf(worth);
    EXPECT_EQ(choice(vessel, Choice::replaceNow), nullptr);
    EXPECT_DOUBLE_EQ(*vessel.costOfFailure, 4000);
    EXPECT_TRUE(vessel.endsUnit);
}

TEST(UnitWorth, APartThatEndsItsUnitCostsTheUnitUntilItsOwnCostIsGiven)
{
    const UnitWorth worth = worthOf(twoParts().build(), figures(), priced(4000));
    const PartWorth& vessel = vesselOf(worth);
    EXPECT_DOUBLE_EQ(*vessel.costOfFailure, 4000);
    ASSERT_NE(choice(vessel, Choice::replaceNow), nullptr) << "a spare can be had";
    EXPECT_FALSE(choice(vessel, Choice::replaceNow)->presentCost.has_value()) << "but what it costs is not known";
    EXPECT_THAT(vessel.needed, Contains(Field(&NeededFigure::field, "part")));
    EXPECT_DOUBLE_EQ(*vesselOf(worthOf(twoParts().build(), withCosts(), priced(4000))).costOfFailure, 260 + 640);
}

TEST(UnitWorth, CarryingOnIsHeldAgainstReplacingByTheSameArithmeticAsByHand)
{
    const UnitWorth worth = worthOf(twoParts().build(), withCosts(), priced(6000));
    ASSERT_TRUE(worth.answer.has_value());
    EXPECT_EQ(worth.repairs.size(), 10U);
    EXPECT_NEAR(worth.answer->carryOnAYear, equivalentAnnualCost(worth.repairs, 0.05).value(), 1e-9);
    // Capital recovery at 5 % over 15 years: 0.09634 in compound-interest tables.
    EXPECT_NEAR(worth.answer->replaceAYear - worth.given->repairsNew, 6000 * 0.09634, 0.1);
    const double shares = std::accumulate(worth.shares.begin(), worth.shares.end(), 0.0,
                                          [](double sum, const RepairShare& one) { return sum + one.cost; });
    EXPECT_NEAR(shares, std::accumulate(worth.repairs.begin(), worth.repairs.end(), 0.0), 1e-9);
}

TEST(UnitWorth, TheAnswerTurnsWhereItSaysItDoes)
{
    const UnitWorth worth = worthOf(twoParts().build(), withCosts(), priced(1500));
    ASSERT_TRUE(worth.answer.has_value());
    const auto price = std::ranges::find(worth.answer->turning, "price of a new unit", &TurningPoint::assumption);
    ASSERT_NE(price, worth.answer->turning.end());
    // The price caps what an accumulator costs, so both sides of the turn are taken with the case itself.
    CarryOnCase below = *worth.given;
    below.priceNew = price->turnsAt * 0.99;
    CarryOnCase above = *worth.given;
    above.priceNew = price->turnsAt * 1.01;
    EXPECT_NE(carryOnOrReplace(below)->carryOn, carryOnOrReplace(above)->carryOn);
}

TEST(UnitWorth, ElectricityIsCountedOnlyWhereAllOfItIsKnown)
{
    CostFigures costs = withCosts();
    costs.energyPrice = 0.2;
    Assumed known{{"full-load-hours", 1000}, {"price-new", 6000}, {"rated-cooling", 10000}, {"seer-new", 16}};
    const UnitWorth half = worthOf(twoParts().build(), costs, known);
    EXPECT_FALSE(half.energyCounted);
    EXPECT_THAT(half.leftOut, Contains(Field(&NeededFigure::field, "seer-old")));
    known.push_back({"seer-old", 10});
    const UnitWorth whole = worthOf(twoParts().build(), costs, known);
    EXPECT_TRUE(whole.energyCounted);
    EXPECT_GT(whole.answer->carryOnAYear, half.answer->carryOnAYear);
    EXPECT_LT(whole.given->seerOld, 10) << "14 years old, it is no longer what the label says";
}

TEST(UnitWorth, ARetiredUnitHasNoneAndLaterEntriesCountForNothing)
{
    UnitRecord retired = twoParts().build();
    retired.unit.retiredOn = day("2024-05-20");
    EXPECT_TRUE(worthOf(retired, withCosts()).parts.empty());
    RecordBuilder later = twoParts();
    later.visit("2025-05-04").graded("bottom", 5);
    EXPECT_DOUBLE_EQ(vesselOf(worthOf(later.build(), withCosts())).chanceInAYear,
                     vesselOf(worthOf(twoParts().build(), withCosts())).chanceInAYear);
}

TEST(UnitWorth, TheNameplateSpeaksWhereNobodyElseDoes)
{
    UnitRecord record;
    record.unit.nameplate = {{"rated-cooling", Measure{10500, QuantityKind::power, "W", "10500 W"}},
                             {"seer", Measure{13, QuantityKind::count, "1", "13"}}};
    record.assumptions = {{"seer-old", 12}};
    const UnitFigures both = unitFigures(record);
    EXPECT_EQ(both.capacityW, 10500);
    EXPECT_EQ(both.seerOld, 12);
    EXPECT_FALSE(both.priceNew.has_value());
}

TEST(Renewals, OfAConstantHazardAreTheSameInEveryStep)
{
    // A geometric life (spent in each step with 0.2, whatever its age) is renewed 0.2 times in every step.
    std::vector<double> spentBy;
    for (int step = 1; step <= 12; ++step)
        spentBy.push_back(1 - std::pow(0.8, step));
    for (const double one : renewals(spentBy, spentBy))
        EXPECT_NEAR(one, 0.2, 1e-12);
}

TEST(Renewals, OfALifeOfExactlyThreeStepsComeEveryThirdStep)
{
    const std::vector<double> spentBy{0, 0, 1, 1, 1, 1, 1};
    EXPECT_THAT(renewals(spentBy, spentBy), ::testing::ElementsAre(0, 0, 1, 0, 0, 1, 0));
}

} // namespace padside::test

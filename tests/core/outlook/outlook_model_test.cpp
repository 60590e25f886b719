// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/first_passage.h"
#include "core/outlook/outlook_model.h"
#include "tests/support/small_catalogue.h"

#include <cmath>
#include <gtest/gtest.h>

namespace padside {

namespace {

double medianOfPart(const Rates& rates, std::size_t zones, const std::shared_ptr<const Pace>& pace)
{
    const double chance = 1 - std::pow(0.5, 1.0 / static_cast<double>(zones));
    return *exposureToSpent(Belief(pace, Grade::sound), rates, chance);
}

} // namespace

TEST(OutlookModel, PriorRatesGiveAPartItsMedianLife)
{
    const auto pace = std::make_shared<const Pace>(*logNormalPace(0.6));
    for (const std::size_t zones : {1U, 3U, 6U}) {
        const Rates rates = ratesFromLife(15, {0.4, 0.3, 0.2, 0.1}, zones, pace);
        EXPECT_NEAR(medianOfPart(rates, zones, pace), 15, 1e-9);
        EXPECT_NEAR(rates[3] / rates[0], 4, 1e-12); // a quarter of the time in the last grade
    }
}

TEST(OutlookModel, APartsOwnLifeAndSharesGoBeforeTheUsual)
{
    const OutlookModel usual(test::smallCatalogue());
    const OutlookModel own(test::smallCatalogue(
        R"({"outlook": {"part_kinds": {"run-capacitor": {"median_life_years": 5, "grade_shares": [0.1, 0.2, 0.3, 0.4]}}}})"));
    // The small catalogue gives no part a median life: as long as a unit, 20 years.
    EXPECT_NEAR(medianOfPart(usual.ratesOf("run-capacitor", false), 1, usual.pace()), 20, 1e-9);
    EXPECT_NEAR(medianOfPart(own.ratesOf("run-capacitor", false), 1, own.pace()), 5, 1e-9);
    EXPECT_GT(own.ratesOf("run-capacitor", false)[0], own.ratesOf("run-capacitor", false)[3]);
    EXPECT_NEAR(medianOfPart(usual.ratesOf("suction-accumulator", false), 3, usual.pace()), 20, 1e-9);
}

TEST(OutlookModel, DirtHasATimeOfItsOwn)
{
    const OutlookModel model(test::smallCatalogue());
    EXPECT_NEAR(medianOfPart(model.ratesOf("fins", true), 1, model.pace()), 4, 1e-9);
}

TEST(OutlookModel, AKindThatIsNotKnownLastsAsLongAsAUnit)
{
    const OutlookModel model(test::smallCatalogue());
    EXPECT_NEAR(medianOfPart(model.ratesOf("wheel", false), 1, model.pace()), 20, 1e-9);
}

TEST(OutlookModel, LearnedRatesTakeThePlaceOfThePriors)
{
    OutlookModel model(test::smallCatalogue());
    const Rates learned{1, 2, 3, 4};
    model.setRates("fan-blade", false, learned);
    EXPECT_EQ(model.ratesOf("fan-blade", false), learned);
    EXPECT_NE(model.ratesOf("base-pan", false), learned);
}

} // namespace padside

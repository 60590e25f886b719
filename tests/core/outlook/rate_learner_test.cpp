// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/rate_learner.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;

/// A unit whose fan blade goes through a grade a year, and whose accumulator stays sound.
UnitRecord unitWithQuickBlade()
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("suction-accumulator", {"crown"}, "2020-05-01").withPart("fan-blade", {"root"}, "2020-05-01");
    builder.visit("2021-05-01").graded("root", 2);
    builder.visit("2022-05-01").graded("root", 3);
    builder.visit("2023-05-01").graded("root", 4);
    return builder.build();
}

} // namespace

TEST(RateLearner, LearnsKindByKindAndPutsItIntoTheModel)
{
    const Catalogue catalogue = test::smallCatalogue();
    OutlookModel model(catalogue);
    const Rates prior = model.ratesOf("fan-blade", false);
    RateLearner learner;
    const auto trails = zoneTrails(unitWithQuickBlade(), catalogue, day("2023-06-01"));
    for (int unit = 0; unit < 30; ++unit)
        learner.add(trails);
    const auto learnt = learner.learn(model, catalogue.outlook().learningSigma);
    ASSERT_EQ(learnt.size(), 1U); // nothing was seen of the accumulator
    EXPECT_EQ(learnt[0].partKind, "fan-blade");
    EXPECT_EQ(learnt[0].zonesMet, 30U);
    ASSERT_TRUE(learnt[0].learnt);
    EXPECT_EQ(learnt[0].learnt->sightings, 90U);
    useLearntRates(model, learnt);
    for (std::size_t k = 0; k < 3; ++k)
        EXPECT_GT(model.ratesOf("fan-blade", false)[k], 2 * prior[k]);
    EXPECT_EQ(model.ratesOf("suction-accumulator", false),
              OutlookModel(catalogue).ratesOf("suction-accumulator", false));
}

TEST(RateLearner, OfManyZonesItKeepsAnEvenShare)
{
    const Catalogue catalogue = test::smallCatalogue();
    const OutlookModel model(catalogue);
    RateLearner learner(8);
    const auto trails = zoneTrails(unitWithQuickBlade(), catalogue, day("2023-06-01"));
    for (int unit = 0; unit < 100; ++unit)
        learner.add(trails);
    const auto learnt = learner.learn(model, 0.7);
    ASSERT_EQ(learnt.size(), 1U);
    EXPECT_EQ(learnt[0].zonesMet, 100U);
    EXPECT_EQ(learnt[0].learnt->zones, 7U); // every sixteenth of a hundred
}

TEST(RateLearner, WithoutRecordsNothingIsLearned)
{
    const OutlookModel model(test::smallCatalogue());
    EXPECT_TRUE(RateLearner().learn(model, 0.7).empty());
}

} // namespace padside

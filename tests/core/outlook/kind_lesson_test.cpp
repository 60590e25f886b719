// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/ever_fitted.h"
#include "core/outlook/kind_lesson.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gtest/gtest.h>
#include <numeric>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;

/// A fan blade that goes through a grade a year and is replaced once it is spent.
UnitRecord unitWithBladeReplaced()
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("fan-blade", {"root"}, "2016-05-01");
    builder.visit("2017-05-01").graded("root", 2);
    builder.visit("2018-05-01").graded("root", 3);
    builder.visit("2019-05-01").graded("root", 4);
    builder.visit("2020-05-01").graded("root", 5);
    builder.replacedPart("fan-blade", "2020-05-01");
    return builder.build();
}

std::vector<KindLesson> lessonsFrom(const UnitRecord& record, int units, const Catalogue& catalogue)
{
    RateLearner learner;
    for (int unit = 0; unit < units; ++unit)
        learner.add(trailsOfEverFitted(record, catalogue, day("2020-06-01")));
    const OutlookModel priors(catalogue, LearntFigures::leftOut);
    return kindLessons(learner.learn(priors, catalogue.outlook().learningSigma), catalogue, priors,
                       OutlookModel(catalogue));
}

const std::string bladeOfFiveYears
    = R"({"outlook": {"part_kinds": {"fan-blade": {"median_life_years": 5, "grade_shares": [0.25, 0.25, 0.25, 0.25],
          "learned_on": "2026-11-26"}}}})";

} // namespace

TEST(LifeOfRates, IsTheWayBackFromRates)
{
    const auto pace = std::make_shared<const Pace>(*logNormalPace(0.6));
    const std::array shares{0.4, 0.3, 0.2, 0.1};
    for (const std::size_t zones : {1U, 3U, 6U}) {
        const LifeFigures life = lifeOfRates(ratesFromLife(15, shares, zones, pace), zones, pace);
        EXPECT_NEAR(life.medianLifeYears, 15, 1e-9);
        for (std::size_t grade = 0; grade < shares.size(); ++grade)
            EXPECT_NEAR(life.gradeShares[grade], shares[grade], 1e-12);
    }
}

TEST(TrailsOfEverFitted, KeepPartsThatWereTakenOut)
{
    const Catalogue catalogue = test::smallCatalogue();
    const UnitRecord record = unitWithBladeReplaced();
    EXPECT_EQ(zoneTrails(record, catalogue, day("2020-06-01")).size(), 1U) << "the blade fitted now";
    const auto trails = trailsOfEverFitted(record, catalogue, day("2020-06-01"));
    ASSERT_EQ(trails.size(), 2U);
    EXPECT_TRUE(std::ranges::any_of(trails[0].steps, [](const TrailStep& step) {
        return step.event == TrailEvent::seen && step.grade == Grade::spent;
    })) << "that it was spent is what there is to learn";
}

TEST(TrailsOfEverFitted, LeaveOutWhatIsNotClosed)
{
    RecordBuilder builder = aUnit("HB-01");
    builder.withPart("fan-blade", {"root"}, "2016-05-01");
    builder.visit("2017-05-01", VisitReason::spring, false).graded("root", 5);
    const auto trails = trailsOfEverFitted(builder.build(), test::smallCatalogue(), day("2020-06-01"));
    ASSERT_EQ(trails.size(), 1U);
    EXPECT_TRUE(trails[0].steps.empty());
}

TEST(KindLesson, TellsOldAndNewLifeAndHowMuchTheRecordsSay)
{
    const Catalogue catalogue = test::smallCatalogue();
    const auto lessons = lessonsFrom(unitWithBladeReplaced(), 30, catalogue);
    ASSERT_EQ(lessons.size(), 1U);
    const KindLesson& blade = lessons.front();
    EXPECT_EQ(blade.partKind, "fan-blade");
    EXPECT_FALSE(blade.soils);
    EXPECT_EQ(blade.zonesUsed, 30U);
    EXPECT_EQ(blade.sightings, 120U);
    EXPECT_NEAR(blade.prior.medianLife, 20, 1e-9) << "as long as a unit";
    EXPECT_NEAR(blade.inUse.medianLife, 20, 1e-9) << "nothing changes by learning";
    EXPECT_LT(blade.learntLife.medianLife, 8) << "spent after four years each time";
    EXPECT_LT(blade.lowLife, blade.learntLife.medianLife);
    EXPECT_GT(blade.highLife, blade.learntLife.medianLife);
    EXPECT_GT(blade.dataShare, 0.5);
    EXPECT_LT(blade.dataShare, 1);
    EXPECT_NEAR(std::accumulate(blade.learntLife.inGrade.begin(), blade.learntLife.inGrade.end(), 0.0),
                blade.learntLife.medianLife, 1e-9)
        << "the blade has one zone";
}

TEST(KindLesson, FewRecordsLeaveMostOfItToTheAssumption)
{
    const Catalogue catalogue = test::smallCatalogue();
    const auto few = lessonsFrom(unitWithBladeReplaced(), 1, catalogue);
    const auto many = lessonsFrom(unitWithBladeReplaced(), 30, catalogue);
    EXPECT_LT(few.front().dataShare, many.front().dataShare);
    EXPECT_GT(few.front().learntLife.medianLife, many.front().learntLife.medianLife);
}

TEST(KindLesson, TheSameRecordTeachesTheSame)
{
    const Catalogue catalogue = test::smallCatalogue();
    const auto once = lessonsFrom(unitWithBladeReplaced(), 5, catalogue);
    const auto again = lessonsFrom(unitWithBladeReplaced(), 5, catalogue);
    EXPECT_EQ(once.front().learnt->medianLifeYears, again.front().learnt->medianLifeYears);
    EXPECT_EQ(once.front().learnt->gradeShares, again.front().learnt->gradeShares);
}

TEST(KindLesson, WhatWasLearnedBeforeDoesNotCountTwice)
{
    const Catalogue fresh = test::smallCatalogue();
    const Catalogue learnt = test::smallCatalogue(bladeOfFiveYears);
    const auto before = lessonsFrom(unitWithBladeReplaced(), 5, fresh);
    const auto after = lessonsFrom(unitWithBladeReplaced(), 5, learnt);
    EXPECT_EQ(before.front().learnt->medianLifeYears, after.front().learnt->medianLifeYears);
    EXPECT_NEAR(after.front().prior.medianLife, 20, 1e-9);
    EXPECT_NEAR(after.front().inUse.medianLife, 5, 1e-9);
    EXPECT_EQ(after.front().learntOn, day("2026-11-26"));
}

TEST(KindLesson, WhatIsInUseIsListedWithoutAnythingToLearnFrom)
{
    const Catalogue learnt = test::smallCatalogue(bladeOfFiveYears);
    const auto lessons = kindLessons({}, learnt, OutlookModel(learnt, LearntFigures::leftOut), OutlookModel(learnt));
    ASSERT_EQ(lessons.size(), 1U);
    EXPECT_FALSE(lessons.front().learnt);
    EXPECT_NEAR(lessons.front().inUse.medianLife, 5, 1e-9);
}

TEST(RateLearner, StopsWhenToldTo)
{
    const Catalogue catalogue = test::smallCatalogue();
    RateLearner learner;
    learner.add(trailsOfEverFitted(unitWithBladeReplaced(), catalogue, day("2020-06-01")));
    const OutlookModel priors(catalogue);
    int asked = 0;
    EXPECT_TRUE(learner.learn(priors, 0.7, [&](double) { return ++asked < 3; }).empty());
    EXPECT_EQ(learner.learn(priors, 0.7, [](double share) { return share <= 1; }).size(), 1U);
}

TEST(OutlookModel, ZonesThatGetDirtyMayHaveALifeOfTheirOwn)
{
    const Catalogue own = test::smallCatalogue(
        R"({"outlook": {"part_kinds": {"fins": {"soiling_life_years": 2, "soiling_grade_shares": [0.1, 0.2, 0.3, 0.4],
            "soiling_learned_on": "2026-11-26"}}}})");
    const OutlookModel used(own);
    EXPECT_NEAR(lifeOfRates(used.ratesOf("fins", true), 1, used.pace()).medianLifeYears, 2, 1e-9);
    const OutlookModel ours(own, LearntFigures::leftOut);
    EXPECT_EQ(ours.ratesOf("fins", true), OutlookModel(test::smallCatalogue()).ratesOf("fins", true));
}

} // namespace padside

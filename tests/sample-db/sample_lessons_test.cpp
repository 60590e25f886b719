// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/ever_fitted.h"
#include "core/outlook/kind_lesson.h"
#include "core/review/kept_forecasts.h"
#include "core/store/forecast_book.h"
#include "core/store/own_catalogue.h"
#include "core/store/record_reader.h"
#include "core/store/site_book.h"
#include "core/track/track_record.h"
#include "resources/resources.h"
#include "sample-db/sample_lessons.h"
#include "tests/sample-db/sample_fixture.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <string>

using namespace padside;
using namespace padside::test;

namespace {

Date learntOn()
{
    return lessonsLearntOn(SampleOptions{}.years, SampleOptions{}.lastDay).value();
}

/// As the program reads it: ours with the sample's own laid over it.
const Catalogue& townCatalogue()
{
    static const Catalogue catalogue
        = Catalogue::load(shippedCatalogue(), plainSample().store->ownCatalogue().changes()).value();
    return catalogue;
}

/// They are kept with three figures.
void expectKept(double kept, double learnt, const std::string& what)
{
    EXPECT_NEAR(kept, learnt, learnt * 0.006) << what << ": learned anew it is " << learnt;
}

} // namespace

TEST(SampleLessons, AreWhatLearningMakesOfTheRecordOfTheirDay)
{
    RateLearner learner;
    for (const UnitRecord& record : plainSample().records())
        learner.add(trailsOfEverFitted(record, shipped(), learntOn()));
    const OutlookModel ours(shipped(), LearntFigures::leftOut);
    const auto lessons
        = kindLessons(learner.learn(ours, shipped().outlook().learningSigma), shipped(), ours, OutlookModel(shipped()));
    std::size_t learnt = 0;
    for (const KindLesson& lesson : lessons) {
        ASSERT_TRUE(lesson.learnt) << lesson.partKind;
        ++learnt;
        ASSERT_TRUE(townCatalogue().outlook().kinds.contains(lesson.partKind)) << lesson.partKind;
        const OutlookOfKind& kept = townCatalogue().outlook().kinds.at(lesson.partKind);
        const auto& life = lesson.soils ? kept.soilingLifeYears : kept.medianLifeYears;
        const auto& shares = lesson.soils ? kept.soilingGradeShares : kept.gradeShares;
        EXPECT_EQ(lesson.soils ? kept.soilingLearntOn : kept.learntOn, learntOn()) << lesson.partKind;
        ASSERT_TRUE(life && shares) << lesson.partKind;
        expectKept(*life, lesson.learnt->medianLifeYears, lesson.partKind);
        for (std::size_t grade = 0; grade < shares->size(); ++grade)
            EXPECT_NEAR((*shares)[grade], lesson.learnt->gradeShares[grade], 0.0006)
                << lesson.partKind << (lesson.soils ? ", dirt" : "") << ", grade " << grade + 1;
    }
    EXPECT_GE(learnt, 25U);
}

TEST(SampleLessons, ForecastsRestOnOursBeforeTheirDayAndOnThemAfterwards)
{
    const UnitRecord record = plainSample().record("LB-01");
    const auto kept = plainSample().store->forecasts().of(record.unit.id);
    const OutlookModel ours(shipped());
    const OutlookModel theirs(townCatalogue());
    std::size_t before = 0;
    std::size_t after = 0;
    for (const Visit& visit : record.visits) {
        const bool isAfter = visit.on >= learntOn();
        ++(isAfter ? after : before);
        for (const KeptForecast& made : keptForecasts(record, shipped(), isAfter ? theirs : ours, visit.id)) {
            const auto same = std::ranges::find_if(kept, [&](const KeptForecast& one) {
                return one.visitId == made.visitId && one.zoneId == made.zoneId;
            });
            ASSERT_NE(same, kept.end());
            for (std::size_t horizon = 0; horizon < made.chances.size(); ++horizon)
                EXPECT_NEAR(same->chances[horizon], made.chances[horizon], 1e-9);
        }
    }
    EXPECT_GE(before, 8U);
    EXPECT_GE(after, 3U);
}

TEST(SampleLessons, WhatWasForetoldSinceComesTrueAboutAsOftenAsSaid)
{
    TrackRecord track;
    for (const UnitRecord& record : plainSample().records())
        track.add(record, plainSample().store->forecasts().of(record.unit.id), townCatalogue(),
                  SampleOptions{}.lastDay);
    const TrackLimits limits = TrackLimits::of(shipped());
    const TrackSummary summary = track.summary(limits);
    EXPECT_EQ(summary.judged(), ForecastSet::inUse);
    EXPECT_EQ(summary.verdict.kind, TrackVerdictKind::trusted) << say(summary.verdict.sentence);
    ASSERT_TRUE(summary.learning);
    EXPECT_EQ(summary.learning->verdictBefore.kind, TrackVerdictKind::tooGloomy) << "which is why they learned";
    EXPECT_EQ(summary.learning->first, learntOn());
    for (const std::size_t horizon : {0U, 1U}) { // half a year, one year
        const Scores& scores = summary.of(ForecastSet::inUse).horizons[horizon];
        EXPECT_GT(scores.settled, 400U);
        EXPECT_GT(scores.spent, 0U);
        EXPECT_LE(std::abs(scores.deviation.value()), limits.mostErrors)
            << scores.expected << " expected, " << scores.spent << " found";
    }
}

TEST(SampleLessons, AShortRecordHasTaughtNothing)
{
    EXPECT_FALSE(lessonsLearntOn(4, SampleOptions{}.lastDay));
}

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Forecasts told apart by the lives they were made with.

#include "core/track/track_record.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

using test::aUnit;
using test::day;
using test::RecordBuilder;

const std::string lastDay = "2026-11-20";

/// Units with one fan blade each. Every spring it is foretold to be spent within a year with `chance`; `spent` of 100
/// are found so a year later.
class SinceLearningOf : public testing::Test
{
protected:
    /// So many more units, whose forecast is of the first of May of this year.
    void foretell(int count, int year, double chance, int spentOfHundred, const std::string& partKind = "fan-blade",
                  const std::string& zoneKind = "root")
    {
        for (int i = 0; i < count; ++i) {
            RecordBuilder builder = aUnit("HB-" + std::to_string(++m_units));
            builder.withPart(partKind, {zoneKind}, "2010-05-01");
            builder.visit(std::to_string(year) + "-05-01").graded(zoneKind, 3);
            builder.visit(std::to_string(year + 1) + "-05-01").graded(zoneKind, i % 100 < spentOfHundred ? 5 : 4);
            const UnitRecord record = builder.build();
            KeptForecast forecast;
            forecast.unitId = record.unit.id;
            forecast.visitId = record.visits.front().id;
            forecast.on = record.visits.front().on;
            forecast.zoneId = builder.zone(zoneKind);
            forecast.chances = {0, chance, chance, chance};
            m_record.add(record, std::vector{forecast}, m_catalogue, day(lastDay));
        }
    }
    /// As the person's own catalogue has it.
    void learn(const std::string& lives)
    {
        m_catalogue = test::smallCatalogue(R"({"outlook": {"part_kinds": {)" + lives + "}}}");
    }
    void learnFanBlades(const std::string& on)
    {
        learn(R"("fan-blade": {"median_life_years": 25, "grade_shares": [0.4, 0.3, 0.2, 0.1], "learned_on": ")" + on
              + R"("})");
    }
    [[nodiscard]] TrackSummary summary() const { return m_record.summary(TrackLimits::of(m_catalogue)); }

    Catalogue m_catalogue = test::smallCatalogue();
    TrackRecord m_record;
    int m_units = 0;
};

} // namespace

TEST_F(SinceLearningOf, AGloomyPastDoesNotSpeakAgainstTheLivesInUse)
{
    learnFanBlades("2024-01-10");
    foretell(400, 2020, 0.4, 10);
    foretell(100, 2024, 0.12, 10);
    const TrackSummary found = summary();
    ASSERT_TRUE(found.learning);
    EXPECT_EQ(found.judged(), ForecastSet::inUse);
    EXPECT_EQ(found.verdict.kind, TrackVerdictKind::trusted);
    EXPECT_EQ(say(found.verdict.sentence),
              "Can be trusted so far: of 100 forecasts for one year, 12 were expected to be found spent and 10 were.");
    ASSERT_EQ(found.beside.size(), 3U);
    EXPECT_EQ(say(found.beside[0]),
              "This rests on the forecasts made with the lives in use now: those since 2024-01-10, when they were "
              "learned from your records.");
    EXPECT_EQ(say(found.beside[1]),
              "Before that, forecasts were too gloomy: of 400 for one year, 160 were expected to be found spent and 40 "
              "were.");
    EXPECT_EQ(say(found.beside[2]), "Which lives an old forecast was made with is told by its day alone.");
    EXPECT_EQ(found.learning->verdictBefore.kind, TrackVerdictKind::tooGloomy);
    EXPECT_EQ(trackVerdict(found.all, TrackLimits::of(m_catalogue)).kind, TrackVerdictKind::tooGloomy)
        << "taken together they would still be called too gloomy";
}

TEST_F(SinceLearningOf, TheTwoAddUpToAllAndEachHasItsOwnMisses)
{
    learnFanBlades("2024-01-10");
    foretell(60, 2020, 0.9, 10);
    foretell(40, 2024, 0.1, 10);
    const TrackSummary found = summary();
    const TrackFigures& before = found.of(ForecastSet::before);
    const TrackFigures& inUse = found.of(ForecastSet::inUse);
    EXPECT_EQ(before.forecasts, 60U);
    EXPECT_EQ(inUse.forecasts, 40U);
    EXPECT_EQ(found.of(ForecastSet::all).forecasts, 100U);
    EXPECT_EQ(before.horizons[1].spent + inUse.horizons[1].spent, found.all.horizons[1].spent);
    EXPECT_EQ(before.keptSince, day("2020-05-01"));
    EXPECT_EQ(inUse.keptSince, day("2024-05-01"));
    EXPECT_EQ(before.misses.size(), 20U) << "50 lasted that were said to go; so many are kept";
    EXPECT_EQ(inUse.misses.size(), 10U) << "each of those found spent";
}

TEST_F(SinceLearningOf, WithTooFewSinceItSaysSoAndHowItWasBefore)
{
    learnFanBlades("2024-01-10");
    foretell(400, 2020, 0.4, 10);
    foretell(30, 2024, 0.1, 10);
    const TrackSummary found = summary();
    EXPECT_EQ(found.verdict.kind, TrackVerdictKind::tooFew);
    EXPECT_EQ(say(found.verdict.sentence),
              "Too few to say of the lives in use now: 30 forecasts about 30 zones made with them have been settled by "
              "later visits; at least 50 about 20 zones are needed.");
    EXPECT_EQ(say(found.beside[0]), "They were learned from your records on 2024-01-10.");
    EXPECT_EQ(say(found.beside[1]),
              "Before that, forecasts were too gloomy: of 400 for one year, 160 were expected to be found spent and 40 "
              "were.");
}

TEST_F(SinceLearningOf, RightAfterLearningThereIsNothingToSayYet)
{
    learnFanBlades("2026-11-20");
    foretell(400, 2020, 0.4, 10);
    EXPECT_EQ(summary().verdict.kind, TrackVerdictKind::nothingKept);
    EXPECT_EQ(
        say(summary().verdict.sentence),
        "Nothing can be said yet of the lives in use now: the next visit that is closed keeps the first forecasts "
        "made with them.");
    foretell(1, 2026, 0.4, 0);
    EXPECT_EQ(summary().of(ForecastSet::inUse).forecasts, 0U) << "of May: older than what was learned";
    learnFanBlades("2026-05-01");
    foretell(1, 2026, 0.4, 0);
    EXPECT_EQ(summary().of(ForecastSet::inUse).forecasts, 1U) << "on the very day";
    EXPECT_EQ(say(summary().verdict.sentence),
              "Nothing can be said yet of the lives in use now: the next forecasts made with them come due on "
              "2027-05-01; the first visit after that settles them.");
}

TEST_F(SinceLearningOf, NothingChangesForOneWhoNeverLearned)
{
    foretell(400, 2020, 0.4, 10);
    foretell(100, 2024, 0.1, 10);
    const TrackSummary found = summary();
    EXPECT_FALSE(found.learning);
    EXPECT_EQ(found.judged(), ForecastSet::all);
    EXPECT_TRUE(found.beside.empty());
    EXPECT_EQ(say(found.verdict.sentence),
              "Too gloomy so far: of 500 forecasts for one year, 170 were expected to be found spent and 50 were.");
    EXPECT_EQ(&found.of(ForecastSet::inUse), &found.all) << "all are made with the lives in use";
    EXPECT_EQ(found.of(ForecastSet::before).forecasts, 0U);
}

TEST_F(SinceLearningOf, NorForOneWhoseFirstForecastIsYoungerThanTheLesson)
{
    learnFanBlades("2019-01-10");
    foretell(400, 2020, 0.4, 10);
    EXPECT_FALSE(summary().learning);
    EXPECT_EQ(summary().verdict.kind, TrackVerdictKind::tooGloomy);
}

TEST_F(SinceLearningOf, AsOfADayBeforeTheLessonItIsNotInUseYet)
{
    learnFanBlades("2026-12-01");
    foretell(400, 2020, 0.4, 10);
    EXPECT_FALSE(summary().learning);
}

TEST_F(SinceLearningOf, KindsThatTaughtNothingCountWithAllTheirForecasts)
{
    learnFanBlades("2024-01-10");
    foretell(400, 2020, 0.4, 10);
    foretell(100, 2020, 0.1, 10, "run-capacitor", "case");
    const TrackSummary found = summary();
    EXPECT_EQ(found.of(ForecastSet::inUse).forecasts, 100U);
    EXPECT_EQ(found.verdict.kind, TrackVerdictKind::trusted);
    ASSERT_EQ(found.beside.size(), 4U);
    EXPECT_EQ(say(found.beside[2]), "Part kinds whose lives were not learned count with all their forecasts.");
}

TEST_F(SinceLearningOf, DirtIsLearnedByItself)
{
    learn(R"("fins": {"median_life_years": 25, "grade_shares": [0.4, 0.3, 0.2, 0.1], "learned_on": "2024-01-10"})");
    foretell(60, 2020, 0.1, 10, "fins", "face");
    EXPECT_FALSE(summary().learning) << "the face gets dirty; what was learned is of zones that decay";
    learn(R"("fins": {"soiling_life_years": 5, "soiling_grade_shares": [0.4, 0.3, 0.2, 0.1],
                      "soiling_learned_on": "2024-01-10"})");
    foretell(60, 2020, 0.1, 10, "fins", "face");
    EXPECT_EQ(summary().of(ForecastSet::before).forecasts, 60U);
}

TEST_F(SinceLearningOf, KindsLearnedOnSeveralDaysAreToldFromTheFirstToTheLast)
{
    learn(R"("fan-blade": {"median_life_years": 25, "grade_shares": [0.4, 0.3, 0.2, 0.1], "learned_on": "2023-01-10"},
             "run-capacitor": {"median_life_years": 9, "grade_shares": [0.4, 0.3, 0.2, 0.1],
                               "learned_on": "2024-03-02"})");
    foretell(100, 2020, 0.1, 10);
    foretell(100, 2023, 0.1, 10);
    foretell(100, 2023, 0.4, 40, "run-capacitor", "case");
    const TrackSummary found = summary();
    EXPECT_EQ(found.of(ForecastSet::before).forecasts, 200U) << "the capacitors' life was learned a year later";
    EXPECT_EQ(say(found.beside[0]),
              "This rests on the forecasts made with the lives in use now: those since they were learned from your "
              "records, part kind by part kind from 2023-01-10 to 2024-03-02.");
}

} // namespace padside

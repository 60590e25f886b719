// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/track_verdict.h"

#include <gtest/gtest.h>

namespace padside {

namespace {

constexpr TrackLimits limits{50, 20, 2};

/// `count` forecasts of `chance`, each about a zone of its own, of which `spent` came to pass.
Scores scored(int count, double chance, int spent)
{
    ScoreSheet sheet;
    for (int i = 0; i < count; ++i) {
        sheet.settle(chance, i < spent);
        sheet.nextZone();
    }
    return sheet.scores();
}

TrackFigures figuresOf(std::size_t horizon, const Scores& scores)
{
    TrackFigures figures;
    figures.forecasts = std::max<std::size_t>(1, scores.settled);
    figures.horizons[horizon] = scores;
    return figures;
}

} // namespace

TEST(TrackVerdict, WithoutForecastsItSaysSinceWhenTheyAreKept)
{
    const TrackVerdict verdict = trackVerdict(TrackFigures{}, limits);
    EXPECT_EQ(verdict.kind, TrackVerdictKind::nothingKept);
    EXPECT_EQ(say(verdict.sentence), "No forecasts are kept yet: from now on they are, each time a visit is closed.");
}

TEST(TrackVerdict, BeforeTheFirstDayItNamesThatDay)
{
    TrackFigures figures;
    figures.forecasts = 40;
    figures.nextDue = parseDate("2027-05-20");
    const TrackVerdict verdict = trackVerdict(figures, limits);
    EXPECT_EQ(verdict.kind, TrackVerdictKind::nothingDue);
    EXPECT_EQ(say(verdict.sentence),
              "Nothing can be said yet: the next forecasts come due on 2027-05-20; the first visit after that settles "
              "them.");
}

TEST(TrackVerdict, FewForecastsAreTooFewHoweverGood)
{
    const TrackVerdict verdict = trackVerdict(figuresOf(0, scored(49, 0.1, 5)), limits);
    EXPECT_EQ(verdict.kind, TrackVerdictKind::tooFew);
    EXPECT_EQ(say(verdict.sentence),
              "Too few to say: 49 forecasts about 49 zones have been settled by later visits; at "
              "least 50 about 20 zones are needed.");
}

TEST(TrackVerdict, ManyForecastsOfFewZonesAreTooFew)
{
    ScoreSheet sheet;
    for (int zone = 0; zone < 19; ++zone) {
        for (int forecast = 0; forecast < 10; ++forecast)
            sheet.settle(0.1, false);
        sheet.nextZone();
    }
    EXPECT_EQ(trackVerdict(figuresOf(0, sheet.scores()), limits).kind, TrackVerdictKind::tooFew);
}

TEST(TrackVerdict, ForecastsThatCameTrueAsOftenAsSaidCanBeTrusted)
{
    ScoreSheet sheet;
    for (int i = 0; i < 200; ++i) {
        const bool likely = i % 4 == 0;
        sheet.settle(likely ? 0.6 : 0.05, likely ? i % 40 < 24 : i % 60 < 3);
        sheet.nextZone();
    }
    const TrackVerdict verdict = trackVerdict(figuresOf(1, sheet.scores()), limits);
    EXPECT_EQ(verdict.kind, TrackVerdictKind::trusted);
    EXPECT_EQ(verdict.horizon, 1U);
    EXPECT_EQ(say(verdict.sentence).rfind("Can be trusted so far: of 200 forecasts for one year", 0), 0U)
        << say(verdict.sentence);
    EXPECT_GE(verdict.reasons.size(), 2U);
}

TEST(TrackVerdict, FewerSpentThanExpectedIsTooGloomyAndMoreIsTooHopeful)
{
    const TrackVerdict gloomy = trackVerdict(figuresOf(1, scored(100, 0.3, 10)), limits);
    EXPECT_EQ(gloomy.kind, TrackVerdictKind::tooGloomy);
    EXPECT_EQ(say(gloomy.sentence),
              "Too gloomy so far: of 100 forecasts for one year, 30 were expected to be found "
              "spent and 10 were.");
    EXPECT_EQ(say(gloomy.reasons.front()),
              "The difference is 4.4 times its standard error; up to 2 it may well be chance.");
    EXPECT_EQ(trackVerdict(figuresOf(1, scored(100, 0.3, 50)), limits).kind, TrackVerdictKind::tooHopeful);
}

TEST(TrackVerdict, RightOnTheWholeButWrongAboutWhichIsNoSharper)
{
    ScoreSheet sheet;
    for (int i = 0; i < 100; ++i) { // half are said to go, and the other half goes
        sheet.settle(i < 50 ? 0.6 : 0.2, i >= 50 && i < 90);
        sheet.nextZone();
    }
    EXPECT_EQ(trackVerdict(figuresOf(1, sheet.scores()), limits).kind, TrackVerdictKind::noSharper);
}

TEST(TrackVerdict, TheHorizonFurthestOffDecides)
{
    TrackFigures figures = figuresOf(0, scored(400, 0.05, 20));
    figures.horizons[2] = scored(60, 0.4, 6);
    const TrackVerdict verdict = trackVerdict(figures, limits);
    EXPECT_EQ(verdict.kind, TrackVerdictKind::tooGloomy);
    EXPECT_EQ(verdict.horizon, 2U);
}

TEST(TrackVerdict, ElseTheHorizonWithMostExpectedToBeSpentDecides)
{
    TrackFigures figures = figuresOf(0, scored(1000, 0.008, 8));
    figures.horizons[1] = scored(400, 0.03, 12);
    EXPECT_EQ(trackVerdict(figures, limits).horizon, 1U) << "fewer forecasts, but more at stake";
    figures.horizons[1] = scored(40, 0.4, 16);
    EXPECT_EQ(trackVerdict(figures, limits).horizon, 0U) << "too few of them to say";
}

TEST(TrackVerdict, TheShareDoingBetterByChanceIsNoVerdict)
{
    // As much as was expected came, but once not where it was likeliest.
    ScoreSheet sheet;
    for (int i = 0; i < 1000; ++i) {
        sheet.settle(i < 10 ? 0.4 : 0.004, i == 0 || i == 500 || (i > 500 && i % 100 == 0));
        sheet.nextZone();
    }
    const Scores scores = sheet.scores();
    ASSERT_LT(*scores.brierSkill, 0);
    const TrackVerdict verdict = trackVerdict(figuresOf(0, scores), limits);
    EXPECT_EQ(verdict.kind, TrackVerdictKind::trusted);
    ASSERT_GE(verdict.reasons.size(), 3U);
    EXPECT_EQ(say(verdict.reasons[2]), "That the share did better may well be chance.");
}

} // namespace padside

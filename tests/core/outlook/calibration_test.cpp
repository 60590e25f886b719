// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

// Whether forecasts come true: made by the program from records of a simulated fleet, scored on its simulated future.

#include "core/outlook/forecast.h"
#include "core/outlook/horizon.h"
#include "core/outlook/rate_learner.h"
#include "tests/core/outlook/simulated_fleet.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>

namespace padside {

namespace {

using test::FleetSimulation;
using test::SimulatedUnit;

constexpr int units = PADSIDE_SIMULATED_UNITS;
constexpr int tenths = 10;
/// Under the sanitizers there is time for too few units to judge by: the same code runs, what it says is not held
/// against anything.
constexpr bool judged = units >= 10'000;
constexpr double standardErrors = 2;

/// The catalogue with a life for each kind, so that the range of dates ends before the furthest date told.
Catalogue catalogueOfLives()
{
    return test::smallCatalogue(R"({"outlook": {"furthest_years": 100, "part_kinds": {
        "suction-accumulator": {"median_life_years": 12, "grade_shares": [0.4, 0.3, 0.2, 0.1]},
        "fan-blade": {"median_life_years": 15}, "base-pan": {"median_life_years": 9},
        "run-capacitor": {"median_life_years": 7, "grade_shares": [0.1, 0.2, 0.3, 0.4]}}}})");
}

/// Forecasts of about the same chance and what came of them.
struct Tenth
{
    double cases = 0;
    double forecast = 0; ///< sum of chances
    double cameTrue = 0;
};

struct Coverage
{
    double cases = 0;
    double before = 0;
    double after = 0;

    [[nodiscard]] double share() const { return 1 - (before + after) / cases; }
};

/// Forecasts held against what became of the zones.
struct Score
{
    std::array<std::array<Tenth, tenths>, horizonMonths.size()> byHorizon{};
    Coverage range; ///< from the date of 10 % to that of 90 %
    Coverage begun; ///< the chance is 10 % today already, so the range has no beginning: up to the date of 90 %

    void add(const ZoneForecast& forecast, Date today, double spentOn)
    {
        for (std::size_t horizon = 0; horizon < horizonMonths.size(); ++horizon) {
            const double chance = forecast.spent[horizon].chance;
            const auto place = std::min<std::size_t>(static_cast<std::size_t>(chance * tenths), tenths - 1);
            Tenth& tenth = byHorizon.at(horizon).at(place);
            tenth.cases += 1;
            tenth.forecast += chance;
            tenth.cameTrue += spentOn <= day(forecast.spent[horizon].by) ? 1 : 0;
        }
        if (!forecast.dates.early || !forecast.dates.late || *forecast.dates.late == today)
            return;
        Coverage& coverage = *forecast.dates.early > today ? range : begun;
        coverage.cases += 1;
        coverage.before += *forecast.dates.early > today && std::ceil(spentOn) < day(*forecast.dates.early) ? 1 : 0;
        coverage.after += std::ceil(spentOn) > day(*forecast.dates.late) ? 1 : 0;
    }

    static double day(Date date) { return static_cast<double>(date.time_since_epoch().count()); }
};

void scoreUnit(Score& score, const SimulatedUnit& unit, const Catalogue& catalogue, const OutlookModel& model)
{
    std::vector<Date> by;
    for (const int months : horizonMonths)
        by.push_back(addMonths(unit.today, months));
    for (const ZoneBelief& zone : zoneBeliefs(unit.record, catalogue, model, unit.today)) {
        const auto fate = std::ranges::find(unit.fates, zone.trail.zoneId, &test::ZoneFate::zoneId);
        if (fate != unit.fates.end())
            score.add(forecastZone(zone, catalogue.outlook(), by), unit.today, fate->spentOn);
    }
}

void print(const char* what, const Coverage& coverage)
{
    std::printf("%s: %.0f forecasts, %.2f %% covered, %.2f %% before, %.2f %% after\n", what, coverage.cases,
                100 * coverage.share(), 100 * coverage.before / coverage.cases, 100 * coverage.after / coverage.cases);
}

/// How many tenths with enough cases there are, and in how many the share that came true is too far from the forecast.
struct Reliability
{
    int judged = 0;
    int off = 0;
};

Reliability reliability(const Score& score)
{
    Reliability result;
    for (std::size_t horizon = 0; horizon < horizonMonths.size(); ++horizon) {
        for (const Tenth& tenth : score.byHorizon.at(horizon)) {
            if (tenth.cases < 100)
                continue;
            const double forecast = tenth.forecast / tenth.cases;
            const double cameTrue = tenth.cameTrue / tenth.cases;
            const double allowed = std::max(0.02, standardErrors * std::sqrt(forecast * (1 - forecast) / tenth.cases));
            const bool off = std::abs(cameTrue - forecast) > allowed;
            ++result.judged;
            result.off += off ? 1 : 0;
            std::printf("by %2d months: %6.0f cases, forecast %6.2f %%, came true %6.2f %% (allowed %.2f)%s\n",
                        horizonMonths.at(horizon), tenth.cases, 100 * forecast, 100 * cameTrue, 100 * allowed,
                        off ? "  OFF" : "");
        }
    }
    return result;
}

OutlookModel modelWith(const Catalogue& catalogue, double factor)
{
    OutlookModel model(catalogue);
    for (const PartKind& kind : catalogue.partKinds()) {
        for (const bool soils : {false, true}) {
            Rates rates = model.ratesOf(kind.code, soils);
            for (double& rate : rates)
                rate *= factor;
            model.setRates(kind.code, soils, rates);
        }
    }
    return model;
}

} // namespace

TEST(Calibration, WhatIsForecastComesTrueAsOftenAsForecast)
{
    const Catalogue catalogue = catalogueOfLives();
    const OutlookModel model(catalogue);
    FleetSimulation fleet(catalogue, model, 1);
    Score score;
    for (int unit = 0; unit < units; ++unit)
        scoreUnit(score, fleet.next(), catalogue, model);
    print("between the dates of 10 and 90 %", score.range);
    print("by the date of 90 %, where 10 % is reached today", score.begun);
    const Reliability tenth = reliability(score);
    if (!judged)
        return;
    EXPECT_NEAR(score.range.share(), 0.80, 0.02);
    EXPECT_NEAR(score.range.before / score.range.cases, 0.10, 0.015);
    EXPECT_NEAR(score.begun.share(), 0.90, 0.02);
    EXPECT_GE(tenth.judged, 30);
    EXPECT_EQ(tenth.off, 0);
}

TEST(Calibration, WhereTheRatesAreOthersItMissesUntilItHasLearned)
{
    const Catalogue catalogue = catalogueOfLives();
    const OutlookModel prior(catalogue);
    const double factor = 2.5;
    const OutlookModel truth = modelWith(catalogue, factor);
    FleetSimulation past(catalogue, truth, 2);
    RateLearner learner;
    for (int unit = 0; unit < units / 25; ++unit) {
        const SimulatedUnit known = past.next();
        learner.add(zoneTrails(known.record, catalogue, known.today));
    }
    const auto learnt = learner.learn(prior, catalogue.outlook().learningSigma);
    OutlookModel after(catalogue);
    useLearntRates(after, learnt);
    double squares = 0;
    int rates = 0;
    for (const LearntKind& kind : learnt) {
        if (!judged)
            break;
        ASSERT_TRUE(kind.learnt) << kind.partKind;
        for (std::size_t k = 0; k < 4; ++k) {
            const double off = std::log(kind.learnt->factor[k] / factor) / kind.learnt->logSigma[k];
            std::printf("%s, rate %zu: %.3f times the prior, %.2f standard errors off the truth\n",
                        kind.partKind.c_str(), k + 1, kind.learnt->factor[k], off);
            EXPECT_LT(std::abs(off), 3.5);
            squares += off * off;
            ++rates;
        }
    }
    if (judged) {
        EXPECT_LT(squares / rates, 1.7); // 1 on average; 20 rates: above 1.7 in one of a hundred
    }

    FleetSimulation future(catalogue, truth, 3);
    Score before;
    Score learned;
    for (int unit = 0; unit < units / 2; ++unit) {
        const SimulatedUnit one = future.next();
        scoreUnit(before, one, catalogue, prior);
        scoreUnit(learned, one, catalogue, after);
    }
    print("before learning", before.range);
    const Reliability misses = reliability(before);
    print("after learning", learned.range);
    const Reliability covers = reliability(learned);
    if (!judged)
        return;
    EXPECT_LT(before.range.share(), 0.76);
    EXPECT_GT(misses.off, misses.judged / 3);
    EXPECT_NEAR(learned.range.share(), 0.80, 0.02);
    EXPECT_LE(covers.off, covers.judged / 10);
}

} // namespace padside

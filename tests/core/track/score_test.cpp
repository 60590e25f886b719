// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/score.h"
#include "tests/support/reference_table.h"

#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <random>
#include <vector>

namespace padside {

TEST(ScoreSheet, AgreesWithScikitLearn)
{
    // track_scores.csv: brier_score_loss, log_loss and calibration_curve of scikit-learn, intervals by scipy.
    const test::ReferenceTable forecasts("track_forecasts.csv");
    ScoreSheet sheet;
    for (std::size_t row = 0; row < forecasts.rows(); ++row) {
        sheet.settle(forecasts.number(row, "chance"), forecasts.number(row, "spent") > 0.5);
        sheet.nextZone();
    }
    const Scores scores = sheet.scores();
    std::map<std::string, double> answers{{"brier", scores.brier},
                                          {"log", scores.logScore},
                                          {"base-brier", scores.baseBrier},
                                          {"base-log", scores.baseLog}};
    for (std::size_t tenth = 0; tenth < reliabilityTenths; ++tenth) {
        const ReliabilityLine& line = scores.reliability[tenth];
        const std::string number = std::to_string(tenth);
        answers["count-" + number] = static_cast<double>(line.count);
        answers["came-" + number] = line.observed;
        answers["said-" + number] = line.meanForecast;
        answers["low-" + number] = line.within.low;
        answers["high-" + number] = line.within.high;
    }
    const test::ReferenceTable published("track_scores.csv");
    ASSERT_GT(published.rows(), 40U);
    for (std::size_t row = 0; row < published.rows(); ++row) {
        const std::string& name = published.text(row, "name");
        ASSERT_TRUE(answers.contains(name)) << name;
        EXPECT_NEAR(answers.at(name), published.number(row, "value"), 1e-9) << name;
    }
    EXPECT_NEAR(*scores.brierSkill, 1 - scores.brier / scores.baseBrier, 1e-12);
    EXPECT_NEAR(*scores.logSkill, 1 - scores.logScore / scores.baseLog, 1e-12);
    EXPECT_EQ(scores.zones, 500U);
}

TEST(ScoreSheet, TheBaseRateIsTheShareThatCameToPass)
{
    ScoreSheet sheet;
    for (int i = 0; i < 10; ++i)
        sheet.settle(0.2, i < 2);
    const Scores scores = sheet.scores();
    EXPECT_DOUBLE_EQ(scores.base, 0.2);
    EXPECT_NEAR(*scores.brierSkill, 0, 1e-12) << "saying the base rate has no skill";
    EXPECT_NEAR(*scores.logSkill, 0, 1e-12);
    EXPECT_NEAR(scores.expected, 2, 1e-12);
    EXPECT_NEAR(*scores.deviation, 0, 1e-12);
}

TEST(ScoreSheet, WithoutAnythingSettledItSaysNothing)
{
    ScoreSheet sheet;
    sheet.wait();
    sheet.leaveUntold();
    sheet.nextZone();
    const Scores scores = sheet.scores();
    EXPECT_EQ(scores.settled, 0U);
    EXPECT_EQ(scores.waiting, 1U);
    EXPECT_EQ(scores.untold, 1U);
    EXPECT_EQ(scores.zones, 0U);
    EXPECT_FALSE(scores.brierSkill);
    EXPECT_FALSE(scores.deviation);
}

TEST(ScoreSheet, WhereAllEndedAlikeThereIsNoSkillToTell)
{
    ScoreSheet sheet;
    sheet.settle(0.1, false);
    sheet.settle(0.3, false);
    EXPECT_FALSE(sheet.scores().brierSkill);
    EXPECT_NEAR(sheet.scores().brier, 0.05, 1e-12);
}

TEST(ScoreSheet, ACertaintyThatProvesWrongCostsAMillionthNotEverything)
{
    ScoreSheet sheet;
    sheet.settle(0, true);
    EXPECT_NEAR(sheet.scores().logScore, -std::log(1e-6), 1e-9);
}

TEST(ScoreSheet, ForecastsOfOneZoneAreNotTakenAsIndependent)
{
    ScoreSheet apart;
    ScoreSheet together;
    for (int zone = 0; zone < 10; ++zone) {
        for (int forecast = 0; forecast < 10; ++forecast) {
            apart.settle(0.3, zone < 3);
            apart.nextZone();
            together.settle(0.3, zone < 3);
        }
        together.nextZone();
    }
    EXPECT_NEAR(apart.scores().standardError, std::sqrt(100 * 0.3 * 0.7), 1e-12);
    EXPECT_NEAR(together.scores().standardError, 10 * std::sqrt(10 * 0.3 * 0.7), 1e-12) << "ten times the same";
    EXPECT_EQ(together.scores().zones, 10U);
}

TEST(ScoreSheet, HowFarTheBrierScoreLiesFromThatOfTheShareIsToldZoneByZone)
{
    struct Settled
    {
        double chance;
        double came;
    };
    const std::vector<std::vector<Settled>> zones{
        {{0.1, 0}, {0.3, 0}, {0.6, 1}}, {{0.7, 0}}, {{0.2, 0}, {0.2, 0}}, {{0.9, 1}, {0.4, 1}}, {{0.5, 0}}};
    ScoreSheet sheet;
    for (const auto& zone : zones) {
        for (const Settled& one : zone)
            sheet.settle(one.chance, one.came > 0.5);
        sheet.nextZone();
    }
    const Scores scores = sheet.scores();
    const double mean = scores.brier - scores.baseBrier;
    double variance = 0;
    for (const auto& zone : zones) {
        double off = 0;
        for (const auto& [chance, came] : zone)
            off += (chance - came) * (chance - came) - (scores.base - came) * (scores.base - came) - mean;
        variance += off * off;
    }
    EXPECT_NEAR(*scores.brierExcess, 9 * mean / std::sqrt(variance), 1e-12);
    EXPECT_LT(*scores.brierExcess, 0) << "better than the share";
}

TEST(ScoreSheet, ForecastsThatAreRightDeviateByOneStandardErrorAsOftenAsTheyShould)
{
    std::mt19937 dice(11); // NOLINT(cert-msc51-cpp): the same chances each time
    std::uniform_real_distribution<double> share(0, 1);
    double squares = 0;
    constexpr int rounds = 400;
    for (int round = 0; round < rounds; ++round) {
        ScoreSheet sheet;
        for (int i = 0; i < 300; ++i) {
            const double chance = share(dice) * share(dice);
            sheet.settle(chance, share(dice) < chance);
            sheet.nextZone();
        }
        squares += *sheet.scores().deviation * *sheet.scores().deviation / rounds;
    }
    EXPECT_NEAR(squares, 1, 0.2) << "the larger of two errors is used, so a little below 1";
}

} // namespace padside

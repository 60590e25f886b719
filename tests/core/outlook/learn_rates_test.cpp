// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/learn_rates.h"
#include "core/outlook/misgrading.h"
#include "tests/core/outlook/paces.h"

#include <cmath>
#include <gmock/gmock.h>
#include <random>

namespace padside {

namespace {

using test::paceOf;

int seenAs(int trueGrade, std::mt19937& random)
{
    const GradeChances& row = misgrading.at(static_cast<std::size_t>(trueGrade - 1));
    std::discrete_distribution<int> seen(row.begin(), row.end());
    return 1 + seen(random);
}

/// Zones looked at once a year for eight years, ageing at these rates, misgraded now and then.
std::vector<ZoneSteps> simulated(std::size_t count, const Rates& rates, double sigma, unsigned seed)
{
    std::mt19937 random(seed);
    std::normal_distribution<double> normal;
    std::vector<ZoneSteps> zones(count);
    for (ZoneSteps& zone : zones) {
        zone.beginningKnown = true;
        const double pace = std::exp(-sigma * sigma / 2 + sigma * normal(random));
        double now = 0;
        int grade = 1;
        const auto stay = [&] {
            return grade < 5
                ? std::exponential_distribution<double>(pace * rates.at(static_cast<std::size_t>(grade - 1)))(random)
                : 1e9;
        };
        double leaves = stay();
        for (int year = 1; year <= 8; ++year) {
            now += 1;
            while (leaves < now) {
                ++grade;
                leaves += stay();
            }
            zone.steps.push_back({Date{} + std::chrono::days(365 * year), 1, 0, TrailEvent::seen,
                                  static_cast<Grade>(seenAs(grade, random))});
            if (grade == 5)
                break;
        }
    }
    return zones;
}

} // namespace

TEST(LearnRates, WithoutRecordsTheyStayThePrior)
{
    const Rates prior{0.3, 0.2, 0.4, 0.5};
    const auto learnt = learnRates({}, prior, 0.7, paceOf(0.6));
    ASSERT_TRUE(learnt);
    EXPECT_EQ(learnt->zones, 0U);
    for (std::size_t k = 0; k < 4; ++k) {
        EXPECT_NEAR(learnt->factor[k], 1, 1e-12);
        EXPECT_NEAR(learnt->logSigma[k], 0.7, 1e-3);
    }
}

TEST(LearnRates, ManyRecordsFindTheRatesTheyWereMadeWith)
{
    const Rates truth{0.5, 0.4, 0.3, 0.6};
    const Rates prior{0.2, 0.2, 0.2, 0.2};
    const auto learnt = learnRates(simulated(150, truth, 0.6, 1), prior, 0.7, paceOf(0.6));
    ASSERT_TRUE(learnt);
    EXPECT_EQ(learnt->zones, 150U);
    EXPECT_GT(learnt->sightings, 700U);
    for (std::size_t k = 0; k < 4; ++k) {
        const double off = std::log(learnt->rates[k] / truth[k]);
        EXPECT_LT(std::abs(off), 3 * learnt->logSigma[k]) << k;
        EXPECT_LT(learnt->logSigma[k], 0.3) << k;
        EXPECT_NEAR(learnt->factor[k], learnt->rates[k] / prior[k], 1e-12);
    }
}

TEST(LearnRates, FewRecordsMoveThePriorOnlyALittle)
{
    const Rates prior{0.2, 0.2, 0.2, 0.2};
    const Rates truth{0.8, 0.8, 0.8, 0.8};
    const auto few = learnRates(simulated(3, truth, 0.6, 2), prior, 0.7, paceOf(0.6));
    const auto many = learnRates(simulated(100, truth, 0.6, 2), prior, 0.7, paceOf(0.6));
    ASSERT_TRUE(few && many);
    EXPECT_GT(few->rates[0], prior[0]);
    EXPECT_LT(few->rates[0], many->rates[0]);
    EXPECT_GT(few->logSigma[0], many->logSigma[0]);
}

TEST(LearnRates, RefusesPriorsThatCantBe)
{
    EXPECT_FALSE(learnRates({}, {0.3, 0, 0.3, 0.3}, 0.7, paceOf(0.6)));
    EXPECT_FALSE(learnRates({}, {0.3, 0.3, 0.3, 0.3}, 0, paceOf(0.6)));
    EXPECT_FALSE(learnRates({}, {0.3, std::nan(""), 0.3, 0.3}, 0.7, paceOf(0.6)));
}

} // namespace padside

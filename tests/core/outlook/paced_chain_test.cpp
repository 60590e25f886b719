// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/first_passage.h"
#include "core/outlook/misgrading.h"
#include "core/outlook/paced_chain.h"
#include "tests/core/outlook/paces.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>
#include <thread>
#include <vector>

namespace padside {

namespace {

using test::paceOf;

const Rates ageing{0.15, 0.2, 0.3, 0.6};

Belief someBelief(const PacedChain& chain, std::mt19937& random)
{
    std::uniform_real_distribution<double> years(0.05, 2);
    Belief belief(chain.pace(),
                  random() % 2 == 0 ? GradeChances{1, 0, 0, 0, 0} : GradeChances{0.25, 0.25, 0.25, 0.25, 0});
    const auto visits = random() % 12;
    for (unsigned visit = 0; visit < visits; ++visit) {
        belief.carryForward(chain, years(random));
        (void)belief.see(static_cast<Grade>(1 + random() % 4)); // what can't be changes nothing
    }
    return belief;
}

} // namespace

// The other way works every transition out for itself and remembers nothing.
TEST(PacedChain, CarriesABeliefAsItsRatesDo)
{
    std::mt19937 random(1);
    std::uniform_real_distribution<double> exponent(-4, 1.8);
    for (const int nodes : {1, 2, 7, 15, 64}) {
        const auto pace = std::make_shared<const Pace>(*logNormalPace(0.6, nodes));
        const PacedChain chain(ageing, pace);
        for (int round = 0; round < 100; ++round) {
            Belief one(pace, GradeChances{0.4, 0.3, 0.2, 0.1, 0});
            Belief other = one;
            for (int step = 0; step < 5; ++step) {
                const double years = std::pow(10, exponent(random));
                one.carryForward(chain, years);
                other.carryForward(ageing, years);
                const auto seen = static_cast<Grade>(1 + random() % 5);
                ASSERT_EQ(one.see(seen), other.see(seen));
            }
            for (std::size_t grade = 0; grade < gradeCount; ++grade)
                EXPECT_NEAR(one.grades().at(grade), other.grades().at(grade), 1e-12);
            EXPECT_NEAR(one.logLikelihood(), other.logLikelihood(), 1e-11);
            EXPECT_NEAR(one.meanPace(), other.meanPace(), 1e-11);
        }
    }
}

TEST(PacedChain, TellsTheChanceOfSpentWithItsSlope)
{
    std::mt19937 random(2);
    const PacedChain chain(ageing, paceOf(0.6));
    for (int round = 0; round < 200; ++round) {
        const Belief belief = someBelief(chain, random);
        for (const double years : {0.01, 0.5, 3.0, 20.0, 150.0}) {
            const SpentAt spent = chain.spentAt(belief.pacedChances(), years);
            EXPECT_NEAR(spent.chance, chanceSpentAfter(belief, ageing, years), 1e-13);
            EXPECT_NEAR(chanceSpentAfter(belief, chain, years), spent.chance, 1e-13);
            Belief later = belief;
            later.carryForward(ageing, years);
            EXPECT_NEAR(spent.perYear, later.spentPerYear(ageing), 1e-13);
        }
    }
}

TEST(PacedChain, DatesAreWhereTheChancesAreReached)
{
    std::mt19937 random(3);
    std::uniform_real_distribution<double> exponent(-3, 2);
    for (int round = 0; round < 300; ++round) {
        Rates rates = ageing;
        if (round % 2 == 0) {
            for (double& rate : rates)
                rate = std::pow(10, exponent(random));
        }
        const PacedChain chain(rates, paceOf(0.6));
        const Belief belief = someBelief(chain, random);
        const PassageRange range = exposureRangeToSpent(belief, chain);
        const auto expectReached = [&](const std::optional<double>& years, double chance) {
            ASSERT_TRUE(years);
            if (*years > 0)
                EXPECT_NEAR(chanceSpentAfter(belief, rates, *years), chance, 2e-13);
            else
                EXPECT_GE(belief.chanceSpent(), chance);
        };
        expectReached(range.early, 0.1);
        expectReached(range.middle, 0.5);
        expectReached(range.late, 0.9);
    }
}

TEST(PacedChain, RatesThatDifferByManyOrdersHaveDatesToo)
{
    const PacedChain chain({1e3, 1e-9, 1e3, 1e3}, paceOf(0.6));
    const Belief sound(chain.pace(), Grade::sound);
    const auto years = exposureToSpent(sound, chain, 0.5);
    ASSERT_TRUE(years);
    EXPECT_NEAR(chanceSpentAfter(sound, chain.rates(), *years), 0.5, 1e-12);
}

TEST(PacedChain, AnswersTheSameWhateverItWasAskedBefore)
{
    const PacedChain busy(ageing, paceOf(0.6));
    std::mt19937 random(4);
    std::uniform_real_distribution<double> years(0.1, 3);
    Belief belief(busy.pace(), Grade::sound);
    for (int question = 0; question < 2000; ++question)
        (void)chanceSpentAfter(belief, busy, years(random));
    const PacedChain fresh(ageing, paceOf(0.6));
    for (int question = 0; question < 100; ++question) {
        const double when = years(random);
        EXPECT_EQ(chanceSpentAfter(belief, busy, when), chanceSpentAfter(belief, fresh, when));
    }
}

TEST(PacedChain, WorksFromTheSeriesOfAnotherWhoseRatesAreAMultiple)
{
    Rates faster = ageing;
    for (double& rate : faster)
        rate *= 2.7;
    EXPECT_TRUE(areProportional(ageing, faster));
    EXPECT_FALSE(areProportional(ageing, {0.15, 0.2, 0.3, 0.60001}));
    const PacedChain slow(ageing, paceOf(0.6));
    const PacedChain like(faster, slow.pace(), &slow);
    std::mt19937 random(5);
    for (int round = 0; round < 50; ++round) {
        const Belief belief = someBelief(like, random);
        for (const double years : {0.01, 0.5, 3.0, 20.0}) {
            Belief one = belief;
            Belief other = belief;
            one.carryForward(like, years);
            other.carryForward(faster, years);
            for (std::size_t grade = 0; grade < gradeCount; ++grade)
                EXPECT_NEAR(one.grades().at(grade), other.grades().at(grade), 1e-13);
            EXPECT_NEAR(like.spentAt(belief.pacedChances(), years).perYear, other.spentPerYear(faster), 1e-12);
        }
    }
}

TEST(PacedChain, DaysInPartsAreTheWholeTime)
{
    const PacedChain chain(ageing, paceOf(0.6));
    for (const int days : {1, 15, 16, 17, 183, 255, 256, 4001}) {
        const double speed = 1.37;
        const double years = days * speed / 365.25;
        Belief parts(chain.pace(), GradeChances{0.4, 0.3, 0.2, 0.1, 0});
        Belief whole = parts;
        parts.carryForward(chain, years, speed);
        whole.carryForward(ageing, years);
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            EXPECT_NEAR(parts.grades().at(grade), whole.grades().at(grade), 1e-13) << days;
    }
}

TEST(PacedChain, ManyThreadsMayAsk)
{
    const PacedChain chain(ageing, paceOf(0.6));
    const auto ask = [&] {
        double sum = 0;
        for (int question = 0; question < 500; ++question) {
            Belief belief(chain.pace(), Grade::sound);
            belief.carryForward(chain, 0.01 * question);
            (void)belief.see(Grade::worn);
            sum += *exposureRangeToSpent(belief, chain).middle;
        }
        return sum;
    };
    const double expected = ask();
    std::vector<double> sums(4);
    std::vector<std::jthread> threads;
    for (double& sum : sums)
        threads.emplace_back([&sum, &ask] { sum = ask(); });
    threads.clear();
    for (const double sum : sums)
        EXPECT_EQ(sum, expected);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/belief.h"
#include "core/outlook/first_passage.h"
#include "core/outlook/misgrading.h"
#include "core/outlook/transition.h"
#include "tests/core/outlook/paces.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numeric>
#include <random>

namespace padside {

namespace {

const Rates usual{0.3, 0.3, 0.3, 0.3};

using test::paceOf;

double meanGrade(const Belief& belief)
{
    const GradeChances chances = belief.grades();
    double mean = 0;
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        mean += chances[grade] * static_cast<double>(grade + 1);
    return mean;
}

void expectSound(const Belief& belief)
{
    const GradeChances chances = belief.grades();
    EXPECT_NEAR(std::accumulate(chances.begin(), chances.end(), 0.0), 1, 1e-9);
    for (const double chance : chances) {
        EXPECT_TRUE(std::isfinite(chance));
        EXPECT_GE(chance, 0);
    }
    EXPECT_TRUE(std::isfinite(belief.meanPace()));
    EXPECT_GT(belief.meanPace(), 0);
    EXPECT_TRUE(std::isfinite(belief.logLikelihood()));
}

} // namespace

TEST(Misgrading, EachTrueGradeIsSeenAsSomething)
{
    for (const GradeChances& row : misgrading)
        EXPECT_NEAR(std::accumulate(row.begin(), row.end(), 0.0), 1, 1e-15);
}

TEST(Belief, WithOnePaceIsTheTransitionItself)
{
    Belief belief(paceOf(0), Grade::worn);
    belief.carryForward({0.4, 0.3, 0.2, 0.1}, 2.5);
    const GradeChances expected = transitionAfter({0.4, 0.3, 0.2, 0.1}, 2.5)[1];
    const GradeChances chances = belief.grades();
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        EXPECT_NEAR(chances[grade], expected[grade], 1e-15);
}

TEST(Belief, LongAndShortStretchesAgree)
{
    Belief once(paceOf(0.6), Grade::sound);
    Belief often = once;
    const Rates rates{2, 0.1, 5, 0.02};
    once.carryForward(rates, 40);
    for (int step = 0; step < 400; ++step)
        often.carryForward(rates, 0.1);
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        EXPECT_NEAR(often.grades()[grade], once.grades()[grade], 1e-12);
}

// Computed by hand: Bayes' rule with flat chances of 1 to 4 and the misgrading matrix.
TEST(Belief, AGradeSeenIsWeighedByMisgrading)
{
    Belief belief(paceOf(0.6), GradeChances{0.25, 0.25, 0.25, 0.25, 0});
    ASSERT_TRUE(belief.see(Grade::worn));
    EXPECT_NEAR(belief.grades()[0], 0.05, 1e-12);
    EXPECT_NEAR(belief.grades()[1], 0.90, 1e-12);
    EXPECT_NEAR(belief.grades()[2], 0.05, 1e-12);
    EXPECT_EQ(belief.grades()[3], 0);
    EXPECT_NEAR(belief.logLikelihood(), std::log(0.25), 1e-12);
    EXPECT_NEAR(belief.meanPace(), 1, 1e-12);
}

TEST(Belief, WhatCantBeChangesNothing)
{
    Belief belief(paceOf(0.6), Grade::spent);
    EXPECT_FALSE(belief.see(Grade::marked));
    EXPECT_FALSE(belief.seeNotSpent());
    EXPECT_EQ(belief.grades()[4], 1);
    EXPECT_EQ(belief.logLikelihood(), 0);
}

TEST(Belief, UnseenItNeverGetsBetter)
{
    Belief belief(paceOf(0.6), Grade::sound);
    belief.carryForward(usual, 1);
    ASSERT_TRUE(belief.see(Grade::worn));
    double before = meanGrade(belief);
    for (int visit = 0; visit < 40; ++visit) {
        belief.carryForward(usual, 0.5);
        EXPECT_GT(meanGrade(belief), before - 1e-12);
        before = meanGrade(belief);
    }
}

TEST(Belief, AFastRusterIsKnownByItsThirdVisit)
{
    Belief belief(paceOf(0.6), Grade::sound);
    const Rates slow{0.15, 0.15, 0.15, 0.15};
    for (const Grade seen : {Grade::worn, Grade::marked, Grade::poor}) {
        belief.carryForward(slow, 1);
        ASSERT_TRUE(belief.see(seen));
    }
    EXPECT_GT(belief.meanPace(), 1.5);
    Belief stranger(paceOf(0.6), belief.grades());
    EXPECT_GT(chanceSpentAfter(belief, slow, 2), 1.4 * chanceSpentAfter(stranger, slow, 2));
}

TEST(Belief, ASlowRusterIsKnownAfterTenQuietYears)
{
    Belief belief(paceOf(0.6), Grade::sound);
    for (int year = 0; year < 10; ++year) {
        belief.carryForward(usual, 1);
        ASSERT_TRUE(belief.see(Grade::sound));
    }
    EXPECT_LT(belief.meanPace(), 0.6);
}

TEST(Belief, ARepairNeverMakesItWorseAndARenewalStartsFresh)
{
    Belief belief(paceOf(0.6), Grade::sound);
    belief.carryForward(usual, 6);
    const double before = meanGrade(belief);
    const double pace = belief.meanPace();
    Belief repaired = belief;
    repaired.repair();
    EXPECT_LT(meanGrade(repaired), before);
    EXPECT_EQ(repaired.chanceSpent(), 0);
    EXPECT_NEAR(repaired.meanPace(), pace, 1e-12);
    ASSERT_TRUE(belief.see(Grade::poor));
    belief.renew();
    EXPECT_NEAR(belief.grades()[0], 1, 1e-12);
    EXPECT_NEAR(belief.meanPace(), 1, 1e-12);
}

TEST(Belief, StaysABeliefWhateverHappens)
{
    std::mt19937 random(5);
    const auto pace = paceOf(0.6);
    std::uniform_real_distribution<double> exponent(-12, 3);
    for (int round = 0; round < 300; ++round) {
        Belief belief(pace, static_cast<Grade>(1 + random() % 5));
        Rates rates{};
        for (double& rate : rates)
            rate = random() % 9 == 0 ? 0 : std::pow(10, exponent(random));
        for (int step = 0; step < 30; ++step) {
            belief.carryForward(rates, std::pow(10, exponent(random) / 3));
            switch (random() % 5) {
            case 0:
                (void)belief.see(static_cast<Grade>(1 + random() % 5));
                break;
            case 1:
                (void)belief.seeNotSpent();
                break;
            case 2:
                belief.repair();
                break;
            case 3:
                belief.renew();
                break;
            default:
                belief.regrade({0.25, 0.25, 0.25, 0.25, 0});
                break;
            }
            expectSound(belief);
        }
    }
}

} // namespace padside

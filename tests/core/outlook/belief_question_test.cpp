// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/belief_question.h"
#include "core/outlook/misgrading.h"
#include "core/outlook/transition.h"

#include <cmath>
#include <gmock/gmock.h>

namespace padside {

namespace {

using testing::HasSubstr;

BeliefQuestion example()
{
    BeliefQuestion question;
    question.rates = {0.45, 0.30, 0.22, 0.15};
    question.paceSigma = 0.6;
    question.start = ClockObservation{0, Grade::sound, true};
    question.observations = {{2.1, Grade::sound, true}, {3.4, std::nullopt, true}, {5, Grade::marked, true}};
    question.horizons = {0.5, 1, 2, 5};
    return question;
}

std::string answerRefusal(const BeliefQuestion& question)
{
    const auto answer = answerBelief(question);
    return answer ? std::string() : say(answer.error().what);
}

/// The same by the plainest means: every node for itself, every chance by the transition matrix.
GradeChances plainly(const BeliefQuestion& question, double& logLikelihood)
{
    const auto pace = *logNormalPace(question.paceSigma, question.paceNodes);
    GradeChances sum{};
    for (std::size_t node = 0; node < pace.pace.size(); ++node) {
        GradeChances chances{};
        chances[indexOf(*question.start->grade)] = pace.weight[node];
        double clock = question.start->exposureYears;
        for (const ClockObservation& seen : question.observations) {
            const Transition step = transitionAfter(question.rates, (seen.exposureYears - clock) * pace.pace[node]);
            clock = seen.exposureYears;
            GradeChances next{};
            for (std::size_t from = 0; from < gradeCount; ++from) {
                for (std::size_t to = from; to < gradeCount; ++to)
                    next[to] += chances[from] * step[from][to];
            }
            for (std::size_t to = 0; to < gradeCount; ++to)
                chances[to] = next[to] * (seen.grade ? misgrading[to][indexOf(*seen.grade)] : to < 4 ? 1.0 : 0.0);
        }
        for (std::size_t grade = 0; grade < gradeCount; ++grade)
            sum[grade] += chances[grade];
    }
    double total = 0;
    for (const double chance : sum)
        total += chance;
    for (double& chance : sum)
        chance /= total;
    logLikelihood = std::log(total);
    return sum;
}

} // namespace

TEST(BeliefQuestion, IsAnsweredAsByThePlainestMeans)
{
    const auto answer = answerBelief(example());
    ASSERT_TRUE(answer);
    double logLikelihood = 0;
    const GradeChances expected = plainly(example(), logLikelihood);
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        EXPECT_NEAR(answer->belief.grades()[grade], expected[grade], 1e-13);
    EXPECT_NEAR(answer->belief.logLikelihood(), logLikelihood, 1e-12);
    ASSERT_EQ(answer->chanceSpent.size(), 4U);
    EXPECT_LT(answer->chanceSpent[0], answer->chanceSpent[3]);
    EXPECT_LT(*answer->toSpent.early, *answer->toSpent.late);
}

TEST(BeliefQuestion, AnUnknownStartIsFlatOnTheFirstFinding)
{
    BeliefQuestion question = example();
    question.start.reset();
    question.observations = {{7, Grade::worn, true}};
    const auto answer = answerBelief(question);
    ASSERT_TRUE(answer);
    EXPECT_NEAR(answer->belief.grades()[1], 0.9, 1e-12);
    EXPECT_NEAR(answer->belief.logLikelihood(), std::log(0.25), 1e-12);
    question.observations = {{7, Grade::spent, true}};
    EXPECT_NEAR(answerBelief(question)->belief.chanceSpent(), 1, 1e-12);
}

TEST(BeliefQuestion, WithoutObservationsItIsTheStart)
{
    BeliefQuestion question = example();
    question.observations.clear();
    EXPECT_EQ(answerBelief(question)->belief.grades()[0], 1);
}

TEST(BeliefQuestion, NamesTheObservationThatCantBe)
{
    BeliefQuestion question = example();
    question.observations.push_back({6, Grade::spent, true});
    question.observations.push_back({7, Grade::worn, true});
    EXPECT_THAT(answerRefusal(question), HasSubstr("Observation 5: grade 2 can't follow"));
    question.observations.back() = {7, std::nullopt, true};
    EXPECT_THAT(answerRefusal(question), HasSubstr("Observation 5: it can't be other than spent"));
    question.observations.back() = {7, std::nullopt, false};
    EXPECT_EQ(answerRefusal(question), "");
    question.observations.back() = {1, Grade::spent, true};
    EXPECT_THAT(answerRefusal(question), HasSubstr("Observation 5: its exposure is less"));
}

TEST(BeliefQuestion, RefusesNumbersThatCantBe)
{
    BeliefQuestion question = example();
    question.rates[2] = -0.1;
    EXPECT_THAT(answerRefusal(question), HasSubstr("Rates lie between 0 and"));
    question.rates[2] = std::nan("");
    EXPECT_THAT(answerRefusal(question), HasSubstr("Rates lie between 0 and"));
    question = example();
    question.horizons.push_back(-1);
    EXPECT_THAT(answerRefusal(question), HasSubstr("Horizons lie between 0 and"));
    question = example();
    question.paceSigma = 9;
    EXPECT_THAT(answerRefusal(question), HasSubstr("spread of the pace"));
}

} // namespace padside

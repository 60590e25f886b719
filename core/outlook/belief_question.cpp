// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/belief_question.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double highestRate = 1e6; ///< per year
constexpr double longestExposure = 1e6; ///< years
constexpr std::size_t mostObservations = 100'000;

bool liesIn(double value, double most)
{
    return value >= 0 && value <= most; // false for what is no number
}

std::optional<Problem> misfit(const BeliefQuestion& question)
{
    const auto refuse = [](std::string pattern, std::vector<Argument> more) {
        return Problem{ProblemKind::badInput, Sentence{std::move(pattern), std::move(more)}};
    };
    for (const double rate : question.rates) {
        if (!liesIn(rate, highestRate))
            return refuse(PADSIDE_SAY("Rates lie between 0 and {0} per year."), {Number{highestRate, 0}});
    }
    for (const double horizon : question.horizons) {
        if (!liesIn(horizon, longestExposure))
            return refuse(PADSIDE_SAY("Horizons lie between 0 and {0} years."), {Number{longestExposure, 0}});
    }
    if (question.observations.size() > mostObservations) {
        return refuse(PADSIDE_SAY("At most {0} observations are weighed."),
                      {static_cast<std::int64_t>(mostObservations)});
    }
    double before = question.start ? question.start->exposureYears : 0;
    if (!liesIn(before, longestExposure))
        return refuse(PADSIDE_SAY("The start lies between 0 and {0} years of exposure."), {Number{longestExposure, 0}});
    for (std::size_t place = 0; place < question.observations.size(); ++place) {
        const double now = question.observations[place].exposureYears;
        const auto number = static_cast<std::int64_t>(place + 1);
        if (!liesIn(now, longestExposure)) {
            return refuse(PADSIDE_SAY("Observation {0}: exposure lies between 0 and {1} years."),
                          {number, Number{longestExposure, 0}});
        }
        if (now < before)
            return refuse(
                PADSIDE_SAY("Observation {0}: its exposure is less than what came before it. Put them in order."),
                {number});
        before = now;
    }
    return std::nullopt;
}

GradeChances flatFor(const BeliefQuestion& question)
{
    if (!question.observations.empty() && question.observations.front().grade == Grade::spent)
        return {0.2, 0.2, 0.2, 0.2, 0.2};
    return {0.25, 0.25, 0.25, 0.25, 0};
}

bool weigh(Belief& belief, const ClockObservation& seen)
{
    if (seen.grade)
        return belief.see(*seen.grade);
    return !seen.works || belief.seeNotSpent();
}

} // namespace

Result<BeliefAnswer> answerBelief(const BeliefQuestion& question)
{
    if (auto wrong = misfit(question))
        return tl::unexpected(*std::move(wrong));
    auto pace = logNormalPace(question.paceSigma, question.paceNodes);
    if (!pace)
        return tl::unexpected(pace.error());
    const auto shared = std::make_shared<const Pace>(*std::move(pace));
    Belief belief = question.start ? Belief(shared, *question.start->grade) : Belief(shared, flatFor(question));
    double clock = 0; // an unknown start begins with the first finding
    if (question.start)
        clock = question.start->exposureYears;
    else if (!question.observations.empty())
        clock = question.observations.front().exposureYears;
    for (std::size_t place = 0; place < question.observations.size(); ++place) {
        const ClockObservation& seen = question.observations[place];
        belief.carryForward(question.rates, seen.exposureYears - clock);
        clock = seen.exposureYears;
        if (weigh(belief, seen))
            continue;
        if (!seen.grade) {
            return problem(
                ProblemKind::badInput,
                PADSIDE_SAY("Observation {0}: it can't be other than spent after what came before, yet it is "
                            "said to work. Correct one of them, or begin anew after a repair."),
                {static_cast<std::int64_t>(place + 1)});
        }
        return problem(
            ProblemKind::badInput,
            PADSIDE_SAY("Observation {0}: grade {1} can't follow from what came before at these rates. Correct "
                        "one of them, or begin anew after a repair."),
            {static_cast<std::int64_t>(place + 1), static_cast<std::int64_t>(numeral(*seen.grade))});
    }
    BeliefAnswer answer{belief, {}, exposureRangeToSpent(belief, question.rates)};
    for (const double horizon : question.horizons)
        answer.chanceSpent.push_back(chanceSpentAfter(belief, question.rates, horizon));
    return answer;
}

} // namespace padside

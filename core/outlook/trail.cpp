// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/trail.h"

#include "core/outlook/misgrading.h"

namespace padside {

namespace {

constexpr GradeChances certainlySound{1, 0, 0, 0, 0};
constexpr GradeChances flatUnspent{0.25, 0.25, 0.25, 0.25, 0};
constexpr GradeChances flatOverAll{0.2, 0.2, 0.2, 0.2, 0.2};

/// Weighs what was seen; where it can't be, the belief gives way to it. False then.
bool weighOrGiveWay(Belief& belief, const GradeChances& likelihood)
{
    if (belief.weigh(likelihood))
        return true;
    belief.repair();
    if (belief.weigh(likelihood))
        return false;
    belief.regrade(flatOverAll);
    (void)belief.weigh(likelihood); // each grade is likely from some true grade
    return false;
}

/// A person's work chose the grade, so it says nothing about the rates.
void makeGood(Belief& belief, Grade left)
{
    const double before = belief.logLikelihood();
    belief.regrade(left == Grade::spent ? flatOverAll : flatUnspent);
    (void)belief.see(left);
    belief.addLogLikelihood(before - belief.logLikelihood());
}

/// False where the step can't follow from what came before.
bool take(Belief& belief, const TrailStep& step)
{
    switch (step.event) {
    case TrailEvent::seen:
        return weighOrGiveWay(belief, chanceToSee(step.grade));
    case TrailEvent::seenOnPaint:
        return weighOrGiveWay(belief, chanceToSeeOnPaint(step.grade));
    case TrailEvent::notSpent:
        (void)belief.seeNotSpent();
        return true; // a spent part may still let the unit run
    case TrailEvent::cleaned:
        belief.regrade(certainlySound);
        return true;
    case TrailEvent::repaired:
        belief.repair();
        return true;
    case TrailEvent::madeGood:
        makeGood(belief, step.grade);
        return true;
    case TrailEvent::renewed:
        belief.renew();
        return true;
    }
    return true;
}

} // namespace

Followed follow(std::span<const TrailStep> steps, bool beginningKnown, const PacedChain& chain)
{
    const bool firstSeenSpent = !steps.empty() && steps.front().grade == Grade::spent;
    const GradeChances& unknown = firstSeenSpent ? flatOverAll : flatUnspent;
    Followed followed{Belief(chain.pace(), beginningKnown ? certainlySound : unknown), {}};
    for (const TrailStep& step : steps) {
        followed.belief.carryForward(chain, step.exposureYears, step.clockSpeed);
        if (!take(followed.belief, step))
            followed.unexplained.push_back(step.on);
    }
    return followed;
}

} // namespace padside

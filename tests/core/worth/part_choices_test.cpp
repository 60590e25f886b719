// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/compound_interest.h"
#include "core/worth/part_choices.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>

namespace padside::test {

namespace {

/// A vessel that takes the charge with it, at home in the trade's order of magnitude; figures invented.
PartCosts vesselCosts()
{
    PartCosts costs;
    costs.part = 300;
    costs.labour = 700;
    costs.treatment = 60;
    costs.charge = 350;
    costs.damage = 2500;
    costs.damageChance = 0.3;
    costs.outageADay = 40;
    costs.leadDays = 10;
    costs.spareAYear = 25;
    return costs;
}

PartDecay decay(double rate)
{
    PartDecay decay;
    decay.rates = {rate, rate, rate, rate};
    decay.treats = true;
    decay.treatmentEffect = 0.6;
    decay.treatmentYears = 3;
    return decay;
}

GradeChances certain(int grade)
{
    GradeChances chances{};
    chances.at(static_cast<std::size_t>(grade - 1)) = 1;
    return chances;
}

const ChoiceWorth& of(const std::vector<ChoiceWorth>& all, Choice choice)
{
    return *std::ranges::find(all, choice, &ChoiceWorth::choice);
}

} // namespace

TEST(PartChoices, APartThatNeverDecaysCostsNothingUnlessItIsTouched)
{
    const auto all = *partChoices(certain(1), decay(0), vesselCosts(), {});
    EXPECT_EQ(all.front().choice, Choice::leave);
    EXPECT_DOUBLE_EQ(all.front().presentCost, 0);
    EXPECT_DOUBLE_EQ(of(all, Choice::treat).presentCost, 60);
    EXPECT_DOUBLE_EQ(of(all, Choice::replaceNow).presentCost, 1040) << "part, labour, a day without the unit";
    EXPECT_NEAR(of(all, Choice::leave).yearsUntilSpent, 10, 1e-9) << "the horizon";
}

TEST(PartChoices, OneStepIsArithmetic)
{
    // Half a year, no interest: the chance of being spent times what that costs; nothing can be done in between.
    PartDecay fast = decay(0.4);
    fast.treats = false;
    const auto all = *partChoices(certain(4), fast, vesselCosts(), {0.5, 0});
    const double chance = 1 - std::exp(-0.2);
    const double spent = 300 + 700 + 350 + 0.3 * 2500 + 40 * 10;
    EXPECT_NEAR(of(all, Choice::leave).presentCost, chance * spent, 1e-9);
    EXPECT_NEAR(of(all, Choice::replaceWhenSpent).presentCost, chance * spent, 1e-9);
    EXPECT_NEAR(of(all, Choice::spareAtHand).presentCost, 12.5 + chance * (spent - 9 * 40), 1e-9);
}

TEST(PartChoices, TheBestPolicyIsNeverDearerThanDoingNothing)
{
    for (const double rate : {0.02, 0.1, 0.3, 1.0}) {
        for (int grade = 1; grade <= 4; ++grade) {
            const auto all = *partChoices(certain(grade), decay(rate), vesselCosts(), {});
            const double best = std::min({of(all, Choice::leave).presentCost, of(all, Choice::treat).presentCost,
                                          of(all, Choice::replaceNow).presentCost});
            EXPECT_LE(best, of(all, Choice::replaceWhenSpent).presentCost + 1e-9);
        }
    }
}

TEST(PartChoices, APoorVesselIsNotLeftToItself)
{
    const auto all = *partChoices(certain(4), decay(0.35), vesselCosts(), {});
    EXPECT_NE(all.front().choice, Choice::replaceWhenSpent);
    EXPECT_GT(of(all, Choice::replaceWhenSpent).presentCost, all.front().presentCost);
}

TEST(PartChoices, TreatmentGainsYearsAndDoesNotHeal)
{
    const auto all = *partChoices(certain(3), decay(0.3), vesselCosts(), {20, 0.05});
    const double gained = of(all, Choice::treat).yearsGained;
    EXPECT_GT(gained, 0);
    EXPECT_LT(gained, 3) << "never more than the years it lasts";
    EXPECT_GT(of(all, Choice::replaceNow).yearsGained, gained) << "a new part is better than a painted one";
}

TEST(PartChoices, CleaningTakesSoilingAway)
{
    PartDecay soiling = decay(0.8);
    soiling.treatmentResets = true;
    PartCosts cheap = vesselCosts();
    cheap.treatment = 20;
    const auto all = *partChoices(certain(4), soiling, cheap, {});
    EXPECT_EQ(all.front().choice, Choice::treat);
}

TEST(PartChoices, ASpareAtHandSavesTheWaitButCostsToKeep)
{
    PartCosts slow = vesselCosts();
    slow.leadDays = 60;
    const auto all = *partChoices(certain(4), decay(0.4), slow, {});
    EXPECT_LT(of(all, Choice::spareAtHand).presentCost, of(all, Choice::replaceWhenSpent).presentCost);
    slow.spareAYear = 2000;
    const auto dear = *partChoices(certain(4), decay(0.4), slow, {});
    EXPECT_GT(of(dear, Choice::spareAtHand).presentCost, of(dear, Choice::replaceWhenSpent).presentCost);
}

TEST(PartChoices, CostsRiseWithTheGrade)
{
    double last = 0;
    for (int grade = 1; grade <= 4; ++grade) {
        const auto all = *partChoices(certain(grade), decay(0.2), vesselCosts(), {});
        EXPECT_GT(of(all, Choice::leave).presentCost, last);
        last = of(all, Choice::leave).presentCost;
    }
}

TEST(PartChoices, RefuseWhatCantBe)
{
    PartCosts wrong = vesselCosts();
    wrong.labour = -1;
    EXPECT_FALSE(partChoices(certain(1), decay(0.1), wrong, {}));
    wrong = vesselCosts();
    wrong.damageChance = 1.2;
    EXPECT_FALSE(partChoices(certain(1), decay(0.1), wrong, {}));
    EXPECT_FALSE(partChoices(certain(1), decay(std::nan("")), vesselCosts(), {}));
    EXPECT_FALSE(partChoices(certain(1), decay(0.1), vesselCosts(), {0, 0.05}));
}

} // namespace padside::test

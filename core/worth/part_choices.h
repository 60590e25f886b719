// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/rates.h"
#include "core/quantity/problem.h"
#include "core/record/coded.h"

#include <vector>

namespace padside {

/// What can be done about a part.
enum class Choice { leave, treat, replaceNow, replaceWhenSpent, spareAtHand };

[[nodiscard]] constexpr auto codesOf(Choice)
{
    return std::array{Coded<Choice>{Choice::leave, "leave", "leave it for now"},
                      Coded<Choice>{Choice::treat, "treat", "treat it now"},
                      Coded<Choice>{Choice::replaceNow, "replace-now", "replace it now"},
                      Coded<Choice>{Choice::replaceWhenSpent, "replace-when-spent", "run it until it is spent"},
                      Coded<Choice>{Choice::spareAtHand, "spare-at-hand", "run it with the spare at hand"}};
}

/// What a part costs, in the person's own money; nothing is shipped. All 0 or more.
struct PartCosts
{
    double part = 0; ///< a new one
    double labour = 0; ///< to fit it
    double treatment = 0; ///< one treatment; 0 with treats = false
    double charge = 0; ///< refrigerant lost and put in again when it is spent
    double damage = 0; ///< what it takes with it when nobody notices in time
    double damageChance = 0; ///< that nobody does; 0..1
    double outageADay = 0; ///< a day without the unit
    double leadDays = 1; ///< until a spare is there, when none is at hand
    double spareAYear = 0; ///< to keep one at hand
};

/// How the part decays, on its own exposure clock.
struct PartDecay
{
    Rates rates{}; ///< per year, its pace included
    bool treats = false; ///< a treatment is possible
    bool treatmentResets = false; ///< it takes the soiling away (grade 1 again) instead of slowing
    double treatmentEffect = 0; ///< share of the rates it takes off while it lasts; 0..1
    double treatmentYears = 0; ///< how long it lasts
    double treatedYears = 0; ///< how long an earlier one of its kind still does; at most treatmentYears
};

/// Over which time money is reckoned.
struct MoneyHorizon
{
    double years = 10; ///< above 0, at most 50; half-year steps
    double rate = 0.05; ///< interest of a year, 0..1
};

/// What a choice comes to.
struct ChoiceWorth
{
    Choice choice = Choice::leave;
    double presentCost = 0; ///< expected over the horizon, today's money
    double yearsUntilSpent = 0; ///< expected of the part as it stands after the choice, within the horizon
    double yearsGained = 0; ///< against leaving it
    Sentence reason;
};

/// All choices there are, the cheapest first: a finite-horizon Markov decision process over half-year steps. Leave,
/// treat and replace now are what is done today, with the best choice at every later step; run until spent and spare at
/// hand do nothing until the end. A spent part is replaced at once. A Problem names the figure that can't be.
[[nodiscard]] Result<std::vector<ChoiceWorth>> partChoices(const GradeChances& belief, const PartDecay& decay,
                                                           const PartCosts& costs, const MoneyHorizon& horizon);

} // namespace padside

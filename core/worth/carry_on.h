// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <string>
#include <vector>

namespace padside {

/// What decides whether a unit is carried on or replaced, in the person's own money and their own assumptions.
struct CarryOnCase
{
    double years = 10; ///< over which both are compared; above 0, at most 50
    double rate = 0.05; ///< interest of a year, 0..1
    std::vector<double> repairs; ///< expected of the old unit in each year, from its outlooks; missing years: the last
    double upkeepOld = 0; ///< a year: visits and materials
    double upkeepNew = 0;
    double energyPrice = 0; ///< per kWh
    double capacityW = 0; ///< 0: energy is left out
    double fullLoadHours = 0; ///< of cooling a year
    double seerOld = 0; ///< today
    double seerNew = 0;
    double lossOldAYear = 0.02; ///< of the old one's efficiency; ours, between served yearly and seldom
    double lossNewAYear = 0.01; ///< of the new one's
    double priceNew = 0; ///< fitted, with what it needs indoors
    double lifeNew = 15; ///< years; above 0
    double repairsNew = 0; ///< expected of the new one a year
};

/// An assumption and the value at which the answer turns.
struct TurningPoint
{
    enum class Measure { money, share, years, hours, seer };

    std::string assumption; ///< "price of a new unit"; translated where it is shown
    Measure measure = Measure::money;
    double today = 0;
    double turnsAt = 0;
};

struct CarryOnAnswer
{
    double carryOnAYear = 0; ///< equivalent annual cost
    double replaceAYear = 0;
    bool carryOn = true;
    Sentence said;
    std::vector<TurningPoint> turning; ///< nearest first, by the ratio to today's value; only within 1/4 to 4 times
};

/// "price of a new unit: 3400 instead of 6500", without a full stop: it stands in lists.
[[nodiscard]] Sentence turningSentence(const TurningPoint& point);

/// Equivalent annual cost of carrying on against that of replacing, and which single assumption would turn the answer.
/// A Problem names what can't be.
[[nodiscard]] Result<CarryOnAnswer> carryOnOrReplace(const CarryOnCase& given);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/carry_on.h"

#include "core/quantity/amounts.h"
#include "core/worth/compound_interest.h"
#include "core/worth/energy_use.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

constexpr double longestComparison = 50;
constexpr double farthestTurn = 4; // an assumption that must change more than fourfold decides nothing

struct BothCosts
{
    double carryOn = 0;
    double replace = 0;
};

/// Energy of one year, whose efficiency has fallen for `age` years; 0 where it is left out.
Result<double> energyOf(const CarryOnCase& given, double seer, double lossAYear, double age)
{
    if (given.capacityW == 0 || given.energyPrice == 0)
        return 0.0;
    auto left = efficiencyLeft(lossAYear, age);
    if (!left)
        return left;
    auto used = coolingEnergyKwh(given.capacityW, given.fullLoadHours, seer * *left);
    return used ? Result<double>(*used * given.energyPrice) : used;
}

Result<BothCosts> costsOf(const CarryOnCase& given)
{
    const auto count = static_cast<std::size_t>(std::lround(given.years));
    std::vector<double> old;
    std::vector<double> fresh;
    for (std::size_t year = 0; year < count; ++year) {
        const auto age = static_cast<double>(year);
        const auto oldEnergy = energyOf(given, given.seerOld, given.lossOldAYear, age);
        const auto newEnergy = energyOf(given, given.seerNew, given.lossNewAYear, age);
        if (!oldEnergy)
            return tl::unexpected(oldEnergy.error());
        if (!newEnergy)
            return tl::unexpected(newEnergy.error());
        const double repair = given.repairs.empty() ? 0 : given.repairs[std::min(year, given.repairs.size() - 1)];
        old.push_back(repair + given.upkeepOld + *oldEnergy);
        fresh.push_back(given.repairsNew + given.upkeepNew + *newEnergy);
    }
    const auto oldAYear = equivalentAnnualCost(old, given.rate);
    const auto freshAYear = equivalentAnnualCost(fresh, given.rate);
    const auto life = interestFactors(given.rate, given.lifeNew);
    if (!oldAYear)
        return tl::unexpected(oldAYear.error());
    if (!freshAYear)
        return tl::unexpected(freshAYear.error());
    if (!life)
        return tl::unexpected(life.error());
    return BothCosts{*oldAYear, given.priceNew * life->capitalRecovery + *freshAYear};
}

struct Lever
{
    const char* name;
    double CarryOnCase::*value;
    TurningPoint::Measure measure = TurningPoint::Measure::money;
};

const std::array levers{
    Lever{PADSIDE_SAY("price of a new unit"), &CarryOnCase::priceNew},
    Lever{PADSIDE_SAY("life of a new unit"), &CarryOnCase::lifeNew, TurningPoint::Measure::years},
    Lever{PADSIDE_SAY("price of electricity"), &CarryOnCase::energyPrice},
    Lever{PADSIDE_SAY("hours of cooling a year"), &CarryOnCase::fullLoadHours, TurningPoint::Measure::hours},
    Lever{PADSIDE_SAY("efficiency of the old unit"), &CarryOnCase::seerOld, TurningPoint::Measure::seer},
    Lever{PADSIDE_SAY("efficiency of a new unit"), &CarryOnCase::seerNew, TurningPoint::Measure::seer},
    Lever{PADSIDE_SAY("upkeep of the old unit"), &CarryOnCase::upkeepOld},
    Lever{PADSIDE_SAY("interest"), &CarryOnCase::rate, TurningPoint::Measure::share}};

const Lever repairsLever{PADSIDE_SAY("repairs expected of the old unit, a year"), nullptr};

/// Positive where carrying on costs more; empty where the changed case can't be reckoned.
std::optional<double> excess(const CarryOnCase& given)
{
    const auto costs = costsOf(given);
    return costs ? std::optional(costs->carryOn - costs->replace) : std::nullopt;
}

/// The factor nearest to 1 at which the answer turns when only `change` is applied, by bisection on one side.
template <typename Change>
std::optional<double> turningFactor(const CarryOnCase& given, double now, double farthest, const Change& change)
{
    const auto at = [&](double factor) { return excess(change(given, factor)); };
    const auto end = at(farthest);
    if (!end || *end * now > 0)
        return std::nullopt;
    double near = 1;
    double far = farthest;
    for (int round = 0; round < 60; ++round) {
        const double middle = (near + far) / 2;
        const auto value = at(middle);
        if (!value)
            return std::nullopt;
        (*value * now > 0 ? near : far) = middle;
    }
    return far;
}

template <typename Change>
void findTurn(const CarryOnCase& given, double now, const Lever& lever, double today, const Change& change,
              std::vector<TurningPoint>& turning)
{
    std::optional<double> best;
    for (const double farthest : {farthestTurn, 1 / farthestTurn}) {
        const auto factor = turningFactor(given, now, farthest, change);
        if (factor && (!best || std::abs(std::log(*factor)) < std::abs(std::log(*best))))
            best = factor;
    }
    if (best)
        turning.push_back({lever.name, lever.measure, today, today * *best});
}

std::vector<TurningPoint> turningPoints(const CarryOnCase& given, double now)
{
    std::vector<TurningPoint> turning;
    for (const Lever& lever : levers) {
        const double today = given.*lever.value;
        if (!(today > 0))
            continue;
        findTurn(
            given, now, lever, today,
            [&lever](CarryOnCase changed, double factor) {
                changed.*lever.value *= factor;
                return changed;
            },
            turning);
    }
    double repairs = 0;
    for (const double year : given.repairs)
        repairs += year / static_cast<double>(given.repairs.size());
    if (repairs > 0) {
        findTurn(
            given, now, repairsLever, repairs,
            [](CarryOnCase changed, double factor) {
                for (double& year : changed.repairs)
                    year *= factor;
                return changed;
            },
            turning);
    }
    std::ranges::stable_sort(turning, {},
                             [](const TurningPoint& point) { return std::abs(std::log(point.turnsAt / point.today)); });
    return turning;
}

} // namespace

Sentence turningSentence(const TurningPoint& point)
{
    const auto said = [&point](const char* pattern, const auto& argument) {
        return Sentence{pattern, {Word{point.assumption}, argument(point.turnsAt), argument(point.today)}};
    };
    switch (point.measure) {
    case TurningPoint::Measure::money:
        return said(PADSIDE_SAY("{0}: {1} instead of {2}"), roundMoney);
    case TurningPoint::Measure::share:
        return said(PADSIDE_SAY("{0}: {1} instead of {2}"), [](double value) {
            return Amount{value, QuantityKind::ratio};
        });
    case TurningPoint::Measure::years:
        return said(PADSIDE_SAY("{0}: {1} years instead of {2}"), [](double value) { return Number{value, 0}; });
    case TurningPoint::Measure::hours:
        return said(PADSIDE_SAY("{0}: {1} h instead of {2} h"), [](double value) { return Number{value, 0}; });
    case TurningPoint::Measure::seer:
        return said(PADSIDE_SAY("{0}: SEER {1} instead of {2}"), [](double value) { return Number{value, 1}; });
    }
    return {};
}

Result<CarryOnAnswer> carryOnOrReplace(const CarryOnCase& given)
{
    for (const double money : {given.upkeepOld, given.upkeepNew, given.energyPrice, given.priceNew, given.repairsNew,
                               given.capacityW, given.fullLoadHours}) {
        if (!(money >= 0) || !std::isfinite(money))
            return problem(ProblemKind::badInput,
                           PADSIDE_SAY("Costs, capacity and hours are numbers of 0 or more. Check them."));
    }
    if (!(given.years >= 1 && given.years <= longestComparison)) {
        return problem(ProblemKind::badInput, PADSIDE_SAY("Carrying on is compared over 1 to {0} years."),
                       {static_cast<std::int64_t>(longestComparison)});
    }
    const auto costs = costsOf(given);
    if (!costs)
        return tl::unexpected(costs.error());
    CarryOnAnswer answer;
    answer.carryOnAYear = costs->carryOn;
    answer.replaceAYear = costs->replace;
    answer.carryOn = costs->carryOn <= costs->replace;
    answer.said = {answer.carryOn ? PADSIDE_SAY("Carry on: about {0} a year, {1} a year if it is replaced.")
                                  : PADSIDE_SAY("Replace: carrying on comes to about {0} a year, a new unit to {1}."),
                   {roundMoney(costs->carryOn), roundMoney(costs->replace)}};
    answer.turning = turningPoints(given, costs->carryOn - costs->replace);
    return answer;
}

} // namespace padside

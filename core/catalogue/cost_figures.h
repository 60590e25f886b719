// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <functional>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace padside {

/// What a part of one kind costs, in the person's own money; empty where they gave nothing. All 0 or more.
struct CostsOfKind
{
    std::optional<double> part; ///< a new one
    std::optional<double> labour; ///< to fit it
    std::optional<double> treatment; ///< one treatment
    std::optional<double> damage; ///< what it takes with it when nobody notices in time
    std::optional<double> damageChance; ///< that nobody does; 0..1
    std::optional<double> outageADay; ///< a day without the unit
    std::optional<double> spareAYear; ///< to keep one at hand
};

/// What money is reckoned from. Prices and costs are the person's own, nothing of the kind is shipped; the other
/// figures are ours to start with.
struct CostFigures
{
    double interest = 0; ///< of a year, 0..1
    double yearsCompared = 0; ///< 1..30
    double newUnitLifeYears = 0; ///< 1..50
    double visitsAYear = 0; ///< 0..52
    double yearlyLossOld = 0; ///< of the efficiency of the unit there is, 0..0.2
    double yearlyLossNew = 0; ///< of a new unit's
    std::optional<double> energyPrice; ///< per kWh
    std::optional<double> upkeepAVisit; ///< of either unit
    std::map<std::string, double, std::less<>> refrigerantPerKg; ///< by the refrigerant's code
    std::map<std::string, CostsOfKind, std::less<>> kinds; ///< by part kind
    std::string source; ///< of the figures that are ours

    [[nodiscard]] CostsOfKind of(std::string_view partKind) const; ///< nothing where nothing is given
};

/// Read from our catalogue with the person's own changes laid over it, as Catalogue::load reads it. A bad field is
/// named with its path in the Problem.
[[nodiscard]] Result<CostFigures> costFigures(std::span<const std::string> shipped, const std::string& ownChanges = {});

/// The code of a refrigerant in the catalogue's text, by which its price is kept: "R-410A" -> "r-410a".
[[nodiscard]] std::string priceCode(std::string designation);

/// One figure of a part kind's costs: its field in the catalogue's text and what it is called.
struct CostField
{
    std::string_view code;
    const char* label; ///< in English, for the translators
    std::optional<double> CostsOfKind::*value;
    bool percent = false; ///< written in per cent
};

[[nodiscard]] std::span<const CostField> costFields(); ///< in the order a person is asked for them

/// One general figure; either it is ours to start with, or a price of the person's own.
struct MoneyField
{
    enum class Unit { percent, years, times, money };

    std::string_view code;
    const char* label;
    Unit unit = Unit::money;
    double CostFigures::*ours = nullptr;
    std::optional<double> CostFigures::*own = nullptr;
    double lowest = 0; ///< as written
    double highest = 0;
};

[[nodiscard]] std::span<const MoneyField> moneyFields();

} // namespace padside

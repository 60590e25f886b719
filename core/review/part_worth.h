// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/cost_figures.h"
#include "core/review/expected_renewals.h"
#include "core/review/needed_figure.h"
#include "core/worth/part_choices.h"

#include <optional>
#include <vector>

namespace padside {

/// What a choice comes to, as far as the costs are known.
struct PartChoice
{
    Choice choice = Choice::leave;
    std::optional<double> presentCost; ///< expected over the years compared, today's money; empty: a cost is missing
    double yearsUntilSpent = 0; ///< expected, within the years compared
    double yearsGained = 0; ///< against leaving it
    Sentence reason;
};

/// What can be done about one part and what it is worth.
struct PartWorth
{
    PartId partId;
    ZoneId zoneId; ///< its worst zone: the likeliest to be spent within a year
    GradeChances belief{}; ///< of that zone, today
    double chanceInAYear = 0; ///< that one of the part's zones is spent
    double chanceInYearsCompared = 0;
    bool stopsUnit = false;
    bool endsUnit = false; ///< normally, or because no spare is made
    std::optional<TreatmentKind> treatment; ///< what "treat" means here
    std::optional<double> costOfFailure; ///< all that one failure costs; empty: not known
    std::vector<PartChoice> choices; ///< the cheapest first where costs are known, else the most years gained first
    std::vector<NeededFigure> needed; ///< without them no money is reckoned, or not for every choice
    std::vector<NeededFigure> leftOut; ///< not given, and counted as nothing
    std::vector<Sentence> notes; ///< what else was left out, or put in
};

/// What the costs of a unit's parts are reckoned from; all outlive what is made from it.
struct PartCostBasis
{
    const UnitRecord& record;
    const Catalogue& catalogue;
    const CostFigures& costs;
    std::optional<double> priceNew; ///< of a new unit, fitted
    Date today{};
};

/// The years compared, to the whole year.
[[nodiscard]] int wholeYears(const CostFigures& costs);

/// The choices for one part: its worst zone's belief and rates times its pace, on the site's clock, over the years
/// compared. A part without a spare is not replaced alone; what a new unit costs stands in for it.
[[nodiscard]] PartWorth partWorth(const DecayingPart& part, const PartCostBasis& basis);

} // namespace padside

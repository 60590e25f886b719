// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/part_worth.h"
#include "core/worth/carry_on.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace padside {

/// What is known of one unit and the one that would take its place; empty where nobody said. Each has a code among the
/// unit's assumptions in the record.
struct UnitFigures
{
    std::optional<double> priceNew; ///< "price-new": of a new unit, fitted with what it needs; the person's own money
    std::optional<double> capacityW; ///< "rated-cooling"
    std::optional<double> fullLoadHours; ///< "full-load-hours": of cooling, a year
    std::optional<double> seerOld; ///< "seer-old": of this unit as on its label, when it was new; Btu/Wh
    std::optional<double> seerNew; ///< "seer-new": of the new one; the same scale
};

/// What the person assumes of the unit, and its nameplate where they assume nothing.
[[nodiscard]] UnitFigures unitFigures(const UnitRecord& record);

/// What one part adds to the repairs to be expected.
struct RepairShare
{
    PartId partId;
    double renewals = 0; ///< expected over the years compared
    double cost = 0; ///< expected over the years compared, not discounted
};

/// What a unit is worth keeping for.
struct UnitWorth
{
    Date today{};
    std::vector<PartWorth> parts; ///< those that stop the unit or hurt somebody first, likeliest to be spent first
    std::vector<double> repairs; ///< expected in each of the years compared, of parts whose costs are known
    std::vector<RepairShare> shares; ///< the largest first
    std::vector<PartId> uncosted; ///< their failures are not counted: what they cost is not known
    std::optional<CarryOnCase> given; ///< what the comparison was reckoned from
    std::optional<CarryOnAnswer> answer; ///< empty: see needed
    bool energyCounted = false;
    std::vector<NeededFigure> needed; ///< without them carrying on can't be held against replacing
    std::vector<NeededFigure> leftOut; ///< not given, and counted as nothing
    std::vector<Sentence> notes; ///< what the comparison takes for granted
};

/// The figures a person may give of a unit, in the order they are asked for.
struct UnitFigureField
{
    enum class Unit { money, power, hours, seer };

    std::string_view code; ///< of the assumption
    const char* label;
    Unit unit;
    std::optional<double> UnitFigures::*value;
    double lowest; ///< in SI; above what it begins at
    double highest;
    std::string_view nameplateItem = {}; ///< where the nameplate may say it
};
[[nodiscard]] std::span<const UnitFigureField> unitFigureFields();

/// The choices for each part that decays, and carrying on against replacing as of `today`: the same record, figures and
/// rates give the same answer. What is entered later than `today` counts for nothing. A retired unit has none.
[[nodiscard]] UnitWorth unitWorth(const UnitRecord& record, const Catalogue& catalogue, const CostFigures& costs,
                                  const OutlookModel& model, Date today);

/// The same of a unit already worked out.
[[nodiscard]] UnitWorth unitWorth(const KnownUnit& known, const Catalogue& catalogue, const CostFigures& costs,
                                  const OutlookModel& model);

} // namespace padside

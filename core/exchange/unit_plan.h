// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/exchange/csv.h"
#include "core/exchange/unit_columns.h"
#include "core/record/fitted_unit.h"
#include "core/record/site.h"

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <vector>

namespace padside {

/// What is in the record already, and how a list of units is read against it.
struct UnitPlanBasis
{
    const Catalogue& catalogue;
    std::vector<Site> sites;
    std::set<std::string> tags;
    std::string usualSite; ///< for rows that name none; may be empty
    Date today{};
    /// Kinds and meterings in the reader's language by their English name; understood beside English and said in its
    /// place.
    std::map<std::string, std::string> readersWords{};
};

/// One row of the list and the unit that will be made of it.
struct PlannedUnit
{
    std::size_t line = 0; ///< of the file, where the row begins
    std::string site;
    std::string address; ///< for a site that is new
    bool newSite = false; ///< the site is not in the record yet
    Unit unit; ///< without keys
    std::vector<Sentence> problems; ///< each names its row; empty: the unit will be made

    [[nodiscard]] bool good() const { return problems.empty(); }
};

/// A list of units as it was understood, by line; bad rows stand in it with what is wrong with them.
struct UnitPlan
{
    std::vector<PlannedUnit> rows;

    [[nodiscard]] std::size_t goodCount() const;
    [[nodiscard]] std::size_t badCount() const { return rows.size() - goodCount(); }
};

/// Reads every row. `tell` gets 0..1 now and then and answers false to stop; the plan is then as far as it came.
[[nodiscard]] UnitPlan planUnits(const CsvSalvage& list, const UnitColumns& columns, const UnitPlanBasis& basis,
                                 const std::function<bool(double)>& tell);

/// What is to be added to the record.
struct NewRecords
{
    std::vector<Site> sites;
    std::vector<FittedUnit> units;
};

/// The sites and units of the good rows, with keys and with the parts of their kinds.
[[nodiscard]] NewRecords newRecords(const UnitPlan& plan, const UnitPlanBasis& basis, IdMaker& ids);

} // namespace padside

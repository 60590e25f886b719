// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/fitted_unit.h"
#include "core/record/site.h"

#include <functional>
#include <optional>
#include <set>
#include <vector>

namespace padside {

class Connection;

/// Sites, units, parts and zones in the store. All functions throw StoreError.
class SiteBook
{
public:
    explicit SiteBook(Connection& connection);

    [[nodiscard]] std::vector<Site> sites() const; ///< by name, in reading order
    [[nodiscard]] std::optional<Site> site(SiteId id) const;
    [[nodiscard]] std::vector<Unit> units() const; ///< by site name, then tag, in reading order; with nameplates
    [[nodiscard]] std::optional<Unit> unitByTag(const std::string& tag) const;

    [[nodiscard]] std::set<std::string> tags() const; ///< of all units, retired ones too

    void addSite(const Site& site);
    void changeSite(const Site& site);
    /// Adds the unit and its nameplate. A tag that is taken is refused (ProblemKind::refused).
    void addUnit(const Unit& unit);
    void changeUnit(const Unit& unit);
    /// Adds the part as fitted, with its zones.
    void addPart(const Part& part);
    void changePart(const Part& part);
    /// Closes `old` on `on` and fits `fresh` in its position, in one transaction.
    void replacePart(PartId old, Date on, const std::string& because, const Part& fresh);
    /// Takes a replacement back: `fresh` and its zones go, the part it replaced is fitted again. Refused
    /// (ProblemKind::refused) once anything was entered for the new part.
    void undoReplacement(const Part& fresh);

    /// Adds sites, units and their parts in one transaction. `tell` gets 0..1 now and then and answers false to stop:
    /// then nothing was added and the answer is false.
    [[nodiscard]] bool addAll(const std::vector<Site>& sites, const std::vector<FittedUnit>& units,
                              const std::function<bool(double)>& tell);

    /// Takes back a unit that was added by mistake, with its parts. One that was ever visited stays (refused).
    void removeUnit(UnitId id);
    /// Takes back a site that was added by mistake. One with units stays (refused).
    void removeSite(SiteId id);

private:
    Connection& m_connection;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/site.h"
#include "core/record/unit.h"

#include <optional>
#include <vector>

namespace padside {

class Connection;

/// Sites, units, parts and zones in the store. All functions throw StoreError.
class SiteBook
{
public:
    explicit SiteBook(Connection& connection);

    [[nodiscard]] std::vector<Site> sites() const; ///< by name
    [[nodiscard]] std::vector<Unit> units() const; ///< by site name, then tag; with nameplates
    [[nodiscard]] std::optional<Unit> unitByTag(const std::string& tag) const;

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

private:
    Connection& m_connection;
};

} // namespace padside

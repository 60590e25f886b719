// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/unit_record.h"

#include <functional>
#include <optional>
#include <vector>

namespace padside {

class Connection;

/// The last two grades of a zone, from the pass over the whole fleet.
struct LastTwoGrades
{
    UnitId unitId;
    ZoneId zoneId;
    Date lastOn{};
    Grade last = Grade::sound;
    std::optional<Grade> previous;
};

/// One line of the list of units.
struct UnitLine
{
    UnitId unitId;
    SiteId siteId;
    std::string siteName;
    std::string tag;
    std::string kind;
    std::string place;
    std::optional<Date> installedOn;
    bool retired = false;
    bool hasOpenVisit = false;
    std::optional<Date> lastVisitOn; ///< closed visits
    std::optional<Grade> worst; ///< worst last-seen grade over fitted zones
};

/// Reads whole records. All functions throw StoreError.
class RecordReader
{
public:
    explicit RecordReader(Connection& connection);

    /// Everything about one unit; a unit that is not there is refused.
    [[nodiscard]] UnitRecord unitRecord(UnitId id) const;

    /// Calls `take` for each zone of each unit that was ever seen, in key order, with its last two grades as found: one
    /// streaming pass over the findings, no sorting.
    void lastTwoGrades(const std::function<void(const LastTwoGrades&)>& take) const;

    /// One line per unit, by site name and tag.
    [[nodiscard]] std::vector<UnitLine> unitLines() const;

private:
    Connection& m_connection;
};

} // namespace padside

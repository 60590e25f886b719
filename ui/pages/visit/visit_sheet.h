// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "ui/models/visit_log.h"

#include <optional>
#include <vector>

namespace padside {

/// One zone at this visit beside what is known from before.
struct ZoneLine
{
    Part part;
    Zone zone;
    bool fittedToday = false; ///< the part replaced another at this visit: nothing to look at yet
    std::optional<Finding> found; ///< today, as found
    std::optional<Finding> left; ///< today, as left
    std::optional<Finding> lastSeen; ///< the last finding with a grade before this visit, as found
    std::optional<Finding> lastLook; ///< the last finding before this visit, seen or not
    std::optional<Photo> lastPhoto; ///< the newest one from before this visit
    std::vector<Photo> photos; ///< today's
    std::vector<Treatment> work; ///< today's, of the zone or its whole part

    [[nodiscard]] const std::optional<Finding>& today(Phase phase) const
    {
        return phase == Phase::asFound ? found : left;
    }
    [[nodiscard]] VisitLog::Look look(Phase phase) const { return VisitLog::Look{zone.id, phase, today(phase)}; }
};

/// One visit as the page shows it: corrections resolved, zones in the catalogue's order of parts and zones.
struct VisitSheet
{
    UnitRecord record;
    Visit visit;
    std::vector<ZoneLine> zones;
    std::vector<Reading> readings; ///< today's
    std::vector<ChargeEntry> charges; ///< today's
    std::vector<FollowUp> followUps; ///< promised today

    [[nodiscard]] int zonesToLookAt() const;
    [[nodiscard]] int zonesLookedAt() const;
    /// The last value of the same reading before this visit.
    [[nodiscard]] std::optional<Reading> readingBefore(const std::string& kind, std::optional<PartId> part,
                                                       std::optional<ZoneId> zone = std::nullopt) const;
    [[nodiscard]] std::optional<Reading> readingToday(const std::string& kind, std::optional<PartId> part,
                                                      Phase phase = Phase::asFound,
                                                      std::optional<ZoneId> zone = std::nullopt) const;
};

/// The visit `id` of `record`; a visit that is not there gives a sheet with a null visit id.
[[nodiscard]] VisitSheet visitSheet(UnitRecord record, VisitId id, const Catalogue& catalogue);

} // namespace padside

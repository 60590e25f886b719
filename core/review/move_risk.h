// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/site_season.h"

#include <optional>

namespace padside {

/// What the day chosen for a trip does to the chance that something is already spent when it is looked at.
struct MoveRisk
{
    /// The zone whose chance rises most, measured by what is tolerated for it.
    struct Zone
    {
        std::shared_ptr<const ReviewedUnit> unit;
        PartId partId;
        ZoneId zoneId;
        double before = 0; ///< 0..1, on the day it is looked at without the choice
        double after = 0; ///< on the day it is looked at with it
        double tolerance = 0;
        Number tolerancePercent;
    };

    Date instead{}; ///< the first day on which something of the trip is looked at without the choice
    Date on{}; ///< the day chosen
    /// That at least one of the trip's zones is spent when it is looked at; zones taken as independent.
    double anyBefore = 0;
    double anyAfter = 0;
    std::optional<Zone> worst; ///< empty: no zone's chance rises by as much as is worth saying
};

/// Of the day chosen for the trip with this index, which costs `cost` (see SiteSeason::costOfMove and costOfChoice).
[[nodiscard]] MoveRisk riskOfMove(const SiteSeason& season, std::size_t trip, const MoveCost& cost);

/// "The chance that something is already spent …": any of the trip's zones, then the one whose chance rises most; none
/// where nothing rises worth saying (by less than a tenth of a percent).
[[nodiscard]] std::vector<Sentence> riskSentences(const MoveRisk& risk, const Catalogue& catalogue);

} // namespace padside

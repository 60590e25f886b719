// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/site_season.h"

#include <optional>

namespace padside {

/// What moving a trip does to the chance that something is found spent unseen.
struct MoveRisk
{
    /// The zone whose chance rises most, measured by what is tolerated for it.
    struct Zone
    {
        std::shared_ptr<const ReviewedUnit> unit;
        PartId partId;
        ZoneId zoneId;
        double before = 0; ///< 0..1, on the day it is seen without the move
        double after = 0; ///< on the day it is seen with it
        double tolerance = 0;
        Number tolerancePercent;
    };

    double anyBefore
        = 0; ///< that at least one of the trip's zones is spent when it is seen; zones taken as independent
    double anyAfter = 0;
    std::optional<Zone> worst; ///< empty: no zone's chance rises by as much as is worth saying
};

/// Of moving the trip with this index to another day, which costs `cost` (see SiteSeason::costOfMove).
[[nodiscard]] MoveRisk riskOfMove(const SiteSeason& season, std::size_t trip, const MoveCost& cost);

/// Of a trip whose day a person chose, against the day that was worked out; empty for other trips.
[[nodiscard]] std::optional<MoveRisk> riskOfChosenDay(const SiteSeason& season, std::size_t trip);

/// "It lifts the chance that …": the worst zone, then any of them; none where nothing rises worth saying (by less than
/// a tenth of a percent).
[[nodiscard]] std::vector<Sentence> riskSentences(const MoveRisk& risk, const Catalogue& catalogue);

} // namespace padside

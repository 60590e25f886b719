// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/outlook_model.h"
#include "core/outlook/zone_trail.h"

#include <memory>
#include <optional>
#include <vector>

namespace padside {

/// What the record supports about one zone today.
struct ZoneBelief
{
    ZoneTrail trail;
    Belief belief; ///< today
    Rates rates{}; ///< of its part kind
    std::shared_ptr<const PacedChain> chain; ///< of those rates; never null
    std::vector<Date> unexplained; ///< see Followed
};

/// The belief at the end of a trail, today.
[[nodiscard]] ZoneBelief believe(ZoneTrail trail, const OutlookModel& model);

/// Those of all zones of fitted parts, in the record's order; see zoneTrails(). A zone never seen whose beginning is
/// unknown has flat chances of 1 to 4.
[[nodiscard]] std::vector<ZoneBelief> zoneBeliefs(const UnitRecord& record, const Catalogue& catalogue,
                                                  const OutlookModel& model, Date today);

/// The one of a single zone; empty if it belongs to no fitted part.
[[nodiscard]] std::optional<ZoneBelief> zoneBelief(const UnitRecord& record, const Catalogue& catalogue,
                                                   const OutlookModel& model, ZoneId zone, Date today);

} // namespace padside

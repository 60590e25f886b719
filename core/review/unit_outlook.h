// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"
#include "core/review/zone_chances.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace padside {

/// One part that stops its unit when spent.
struct PartOutlook
{
    PartId partId;
    bool endsUnit = false; ///< normally the unit is not worth another
    std::array<double, horizonCount> chance{}; ///< that one of its zones is spent by each horizon
};

/// The outlook of a whole unit.
struct UnitOutlook
{
    std::vector<ChanceBy> stops; ///< that at least one stopping part is spent, by each horizon
    std::vector<PartOutlook> parts; ///< all stopping parts; likeliest by the last horizon first
    std::optional<PartId> likeliestToStop; ///< empty: no stopping part
    std::optional<PartId> likeliestToEnd; ///< of the parts that normally end the unit
    Sentence because; ///< which part it is, and that zones and parts are taken to fail independently
};

/// Puts the zones' chances together. Zones of a part and parts of a unit are taken to fail independently of each other,
/// given their records: 1 less the product of what is left of each. Which part "most likely ends it" is the one with
/// the greatest chance by the last horizon.
[[nodiscard]] UnitOutlook unitOutlook(const UnitRecord& record, const Catalogue& catalogue,
                                      std::span<const ZoneChances> zones, Date today);

/// Of a unit's outlook only the chance that at least one of its stopping parts is spent by each horizon: for fleets.
[[nodiscard]] std::array<double, horizonCount> stopChances(const UnitRecord& record, const Catalogue& catalogue,
                                                           std::span<const ZoneChances> zones);

} // namespace padside

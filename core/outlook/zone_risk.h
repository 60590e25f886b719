// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/forecast.h"

#include <optional>
#include <span>
#include <vector>

namespace padside {

/// How far ahead risks are looked into: beyond the next check of any zone.
constexpr int riskMonths = 18;

/// How long one zone may go unseen, and what going unseen risks.
struct ZoneRisk
{
    PartId partId;
    ZoneId zoneId;
    bool soils = false; ///< gets dirty rather than decays
    Consequence toleratedAs = Consequence::looks; ///< whose tolerance it has
    double tolerance = 0; ///< chance of being spent unseen that is tolerated
    /// The last day on which the chance of being spent, as far as the last sighting (or its fitting) tells, is within
    /// the tolerance. Looks in vain since then don't move it. The day before that sighting: over even then. Empty: not
    /// within `riskMonths` from today, or there is nothing to reckon from.
    std::optional<Date> withinUntil;
    /// The first day from today on on which that chance, by all that is known, is over the tolerance; empty: not within
    /// `riskMonths`.
    std::optional<Date> overOn;
    std::vector<ChanceBy> course; ///< chances of being spent from today on, by all that is known, by day; at least two

    /// The chance that it is spent on a day; between the days of `course` as if it came at a steady rate, before and
    /// after them that of the nearest.
    [[nodiscard]] double chanceOn(Date day) const;
    /// The tolerance in percent, with as many decimals as it takes (2 at most): "2", "0.5".
    [[nodiscard]] Number tolerancePercent() const;

    friend bool operator==(const ZoneRisk&, const ZoneRisk&) = default;
};

/// The risk of one zone.
[[nodiscard]] ZoneRisk zoneRisk(const ZoneBelief& zone, const Catalogue& catalogue);

/// Those of all zones believed, in their order.
[[nodiscard]] std::vector<ZoneRisk> zoneRisks(std::span<const ZoneBelief> zones, const Catalogue& catalogue);

/// The risk of this zone, or nullptr.
[[nodiscard]] const ZoneRisk* riskOf(std::span<const ZoneRisk> risks, ZoneId zone);

} // namespace padside

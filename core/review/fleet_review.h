// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/unit_review.h"
#include "core/schedule/trips.h"

#include <span>
#include <vector>

namespace padside {

/// Checks of one site bundled into one day.
struct SiteTrip
{
    SiteId siteId;
    Date on{};
    std::vector<Check> checks; ///< what is looked at on that day, by unit
    std::size_t forcedBy = 0; ///< index into `checks`: the one that set the day

    friend bool operator==(const SiteTrip&, const SiteTrip&) = default;
};

/// The fewest trips per site that meet every check of the units reviewed. Windows that are over are served today;
/// windows that began earlier begin today. Working days in the site's spring and fall weeks are preferred. Retired
/// units are left out by the caller.
[[nodiscard]] std::vector<SiteTrip> siteTrips(const Site& site, std::span<const UnitReview> units, Date today);

} // namespace padside

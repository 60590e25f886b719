// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/fleet_review.h"

#include "core/schedule/season.h"

#include <algorithm>

namespace padside {

std::vector<SiteTrip> siteTrips(const Site& site, std::span<const UnitReview> units, Date today)
{
    std::vector<const Check*> checks;
    std::vector<Window> windows;
    for (const UnitReview& unit : units) {
        for (const Check& check : unit.checks) {
            checks.push_back(&check);
            windows.push_back({std::max(check.earliest, today), std::max(check.latest, today)});
        }
    }

    std::vector<SiteTrip> trips;
    for (const Trip& trip : fewestTrips(windows, [&](Date day) { return isWorkingDayInSeason(site, day); })) {
        SiteTrip siteTrip;
        siteTrip.siteId = site.id;
        siteTrip.on = trip.on;
        for (const std::size_t index : trip.windows) { // ascending, so by unit as the units came
            if (index == trip.forcedBy)
                siteTrip.forcedBy = siteTrip.checks.size();
            siteTrip.checks.push_back(*checks[index]);
        }
        trips.push_back(std::move(siteTrip));
    }
    return trips;
}

} // namespace padside

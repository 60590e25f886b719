// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/trips.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <numeric>

namespace padside {

namespace {

std::vector<std::size_t> byLatestDay(std::span<const Window> windows)
{
    std::vector<std::size_t> order(windows.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t index) { return windows[index].latest; });
    return order;
}

} // namespace

void moveToPreferredDay(Trip& trip, std::span<const Window> windows, const std::function<bool(Date)>& preferred)
{
    Date earliest = windows[trip.forcedBy].earliest;
    for (const std::size_t index : trip.windows)
        earliest = std::max(earliest, windows[index].earliest);
    for (Date day = trip.on; day >= earliest; day -= std::chrono::days(1)) {
        if (preferred(day)) {
            trip.on = day;
            return;
        }
    }
}

std::vector<Trip> fewestTrips(std::span<const Window> windows, const std::function<bool(Date)>& preferred)
{
    std::vector<Trip> trips;
    for (const std::size_t index : byLatestDay(windows)) {
        const Window& window = windows[index];
        assert(window.earliest <= window.latest);
        // Windows come by their last day, so only the newest trip can lie within this one.
        if (trips.empty() || window.earliest > trips.back().on)
            trips.push_back({window.latest, {}, index});
        trips.back().windows.push_back(index);
    }
    for (Trip& trip : trips) {
        std::ranges::sort(trip.windows);
        if (preferred)
            moveToPreferredDay(trip, windows, preferred);
    }
    return trips;
}

std::vector<TripGroup> fewestTripsByGroup(std::span<const Window> windows, std::span<const std::string> groups,
                                          const std::function<bool(Date)>& preferred)
{
    assert(windows.size() == groups.size());
    std::map<std::string, std::vector<std::size_t>> members;
    for (std::size_t i = 0; i < windows.size(); ++i)
        members[groups[i]].push_back(i);

    std::vector<TripGroup> result;
    std::vector<Window> own;
    for (const auto& [name, indices] : members) {
        own.clear();
        for (const std::size_t index : indices)
            own.push_back(windows[index]);
        TripGroup group{name, fewestTrips(own, preferred)};
        for (Trip& trip : group.trips) {
            trip.forcedBy = indices[trip.forcedBy];
            for (std::size_t& index : trip.windows)
                index = indices[index];
        }
        result.push_back(std::move(group));
    }
    return result;
}

} // namespace padside

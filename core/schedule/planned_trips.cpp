// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/planned_trips.h"

#include <algorithm>
#include <cassert>
#include <iterator>

namespace padside {

namespace {

bool holds(const Window& window, Date day)
{
    return window.earliest <= day && day <= window.latest;
}

/// One empty trip for each day chosen, in order of date.
std::vector<PlannedTrip> chosenTrips(std::span<const MovedTrip> moves, Date today)
{
    std::vector<PlannedTrip> trips;
    for (const MovedTrip& move : moves) {
        const auto same = std::ranges::find(trips, move.to, &PlannedTrip::on);
        if (same != trips.end())
            same->moved->insteadOf = std::min(same->moved->insteadOf, move.insteadOf);
        else if (move.to >= today)
            trips.push_back(PlannedTrip{move.to, {}, {}, 0, move});
    }
    std::ranges::sort(trips, {}, &PlannedTrip::on);
    return trips;
}

/// The chosen trip that takes the window along though it comes too late for it.
PlannedTrip* lateTripFor(std::vector<PlannedTrip>& chosen, std::span<const MovedTrip> moves, const Window& window,
                         Date today)
{
    for (PlannedTrip& trip : chosen) {
        const bool takes = trip.on > window.latest && std::ranges::any_of(moves, [&](const MovedTrip& move) {
                               return move.to == trip.on && holds(window, std::max(move.insteadOf, today));
                           });
        if (takes)
            return &trip;
    }
    return nullptr;
}

PlannedTrip* inTime(std::vector<PlannedTrip>& trips, const Window& window)
{
    const auto trip = std::ranges::find_if(trips, [&](const PlannedTrip& one) { return holds(window, one.on); });
    return trip == trips.end() ? nullptr : &*trip;
}

std::vector<PlannedTrip> furtherTrips(std::span<const Window> windows, const std::vector<std::size_t>& open,
                                      const std::function<bool(Date)>& preferred)
{
    std::vector<Window> left;
    for (const std::size_t index : open)
        left.push_back(windows[index]);
    std::vector<PlannedTrip> trips;
    for (const Trip& trip : fewestTrips(left, preferred)) {
        PlannedTrip planned{trip.on, {}, {}, open[trip.forcedBy], std::nullopt};
        for (const std::size_t index : trip.windows)
            planned.windows.push_back(open[index]);
        trips.push_back(std::move(planned));
    }
    return trips;
}

void finish(PlannedTrip& trip, std::span<const Window> windows)
{
    std::ranges::sort(trip.windows);
    std::ranges::sort(trip.late);
    const auto first
        = std::ranges::min_element(trip.windows, {}, [&](std::size_t index) { return windows[index].latest; });
    if (first != trip.windows.end())
        trip.forcedBy = *first;
}

} // namespace

std::vector<PlannedTrip> plannedTrips(std::span<const Window> windows, std::span<const MovedTrip> moves, Date today,
                                      const std::function<bool(Date)>& preferred)
{
    std::vector<PlannedTrip> chosen = chosenTrips(moves, today);
    std::vector<std::size_t> open;
    std::vector<std::size_t> putOff;
    for (std::size_t i = 0; i < windows.size(); ++i) {
        assert(windows[i].latest >= today);
        if (PlannedTrip* trip = inTime(chosen, windows[i]))
            trip->windows.push_back(i);
        else if (lateTripFor(chosen, moves, windows[i], today))
            putOff.push_back(i);
        else
            open.push_back(i);
    }
    std::vector<PlannedTrip> trips = furtherTrips(windows, open, preferred);
    for (const std::size_t index : putOff) {
        if (PlannedTrip* trip = inTime(trips, windows[index])) {
            trip->windows.push_back(index);
        } else {
            PlannedTrip* late = lateTripFor(chosen, moves, windows[index], today);
            late->windows.push_back(index);
            late->late.push_back(index);
        }
    }
    std::ranges::move(chosen, std::back_inserter(trips));
    for (PlannedTrip& trip : trips)
        finish(trip, windows);
    std::ranges::stable_sort(trips, {}, &PlannedTrip::on);
    return trips;
}

} // namespace padside

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
        if (same != trips.end()) {
            same->moved->insteadOf = std::min(same->moved->insteadOf, move.insteadOf);
            same->moved->takesAlongFrom = std::max(same->moved->takesAlongFrom, move.takesAlongFrom);
        } else if (move.to >= today)
            trips.push_back(PlannedTrip{move.to, {}, {}, 0, move});
    }
    std::ranges::sort(trips, {}, &PlannedTrip::on);
    return trips;
}

/// A window on its way to a trip.
struct Due
{
    const Window& window;
    Date by{}; ///< before the window if it is overdue
};

/// Whether a move takes along what it comes too late for.
bool takesAlong(const MovedTrip& move, const Due& due, Date today)
{
    return holds(due.window, std::max(move.insteadOf, today))
        || (move.takesAlongFrom && due.by >= *move.takesAlongFrom);
}

/// The chosen trip that takes the window along though it comes too late for it.
PlannedTrip* lateTripFor(std::vector<PlannedTrip>& chosen, std::span<const MovedTrip> moves, const Due& due, Date today)
{
    for (PlannedTrip& trip : chosen) {
        const bool takes = trip.on > due.window.latest && std::ranges::any_of(moves, [&](const MovedTrip& move) {
                               return move.to == trip.on && takesAlong(move, due, today);
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

/// The fewest trips for some of the windows, each on the last day it can wait for.
std::vector<Trip> fewestFor(std::span<const Window> windows, const std::vector<std::size_t>& some)
{
    std::vector<Window> own;
    own.reserve(some.size());
    for (const std::size_t index : some)
        own.push_back(windows[index]);
    std::vector<Trip> trips = fewestTrips(own);
    for (Trip& trip : trips) {
        trip.forcedBy = some[trip.forcedBy];
        for (std::size_t& index : trip.windows)
            index = some[index];
    }
    return trips;
}

/// For each window the one that forces the trip it is served by if no day is chosen.
std::vector<std::size_t> forcedByUnchosen(std::span<const Window> windows)
{
    std::vector<std::size_t> forcing(windows.size());
    for (const Trip& trip : fewestTrips(windows)) {
        for (const std::size_t index : trip.windows)
            forcing[index] = trip.forcedBy;
    }
    return forcing;
}

/// Takes those out of `some` whose own trip, the one with no day chosen, is needed anyway, and leaves them to it.
void leaveToOwnTrips(std::vector<std::size_t>& some, std::vector<Trip>& further, std::span<const Window> windows)
{
    if (some.empty())
        return;
    std::erase_if(some, [&, forcing = forcedByUnchosen(windows)](std::size_t index) {
        const auto own = std::ranges::find(further, forcing[index], &Trip::forcedBy);
        if (own != further.end())
            own->windows.push_back(index);
        return own != further.end();
    });
}

std::vector<PlannedTrip> onPreferredDays(std::vector<Trip> trips, std::span<const Window> windows,
                                         const std::function<bool(Date)>& preferred)
{
    std::vector<PlannedTrip> planned;
    for (Trip& trip : trips) {
        if (preferred)
            moveToPreferredDay(trip, windows, preferred);
        planned.push_back(PlannedTrip{trip.on, std::move(trip.windows), {}, trip.forcedBy, std::nullopt});
    }
    return planned;
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
                                      const std::function<bool(Date)>& preferred, std::span<const Date> dueBy)
{
    assert(dueBy.empty() || dueBy.size() == windows.size());
    const auto due = [&](std::size_t index) {
        return Due{windows[index], dueBy.empty() ? windows[index].latest : dueBy[index]};
    };
    std::vector<PlannedTrip> chosen = chosenTrips(moves, today);
    std::vector<std::size_t> forChosen;
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < windows.size(); ++i) {
        assert(windows[i].latest >= today);
        const bool isForChosen = inTime(chosen, windows[i]) || lateTripFor(chosen, moves, due(i), today);
        (isForChosen ? forChosen : open).push_back(i);
    }
    std::vector<Trip> further = fewestFor(windows, open);
    leaveToOwnTrips(forChosen, further, windows);
    std::vector<PlannedTrip> trips = onPreferredDays(std::move(further), windows, preferred);
    for (const std::size_t index : forChosen) {
        PlannedTrip* trip = inTime(chosen, windows[index]);
        if (trip == nullptr)
            trip = inTime(trips, windows[index]);
        if (trip == nullptr) {
            trip = lateTripFor(chosen, moves, due(index), today);
            trip->late.push_back(index);
        }
        trip->windows.push_back(index);
    }
    std::ranges::move(chosen, std::back_inserter(trips));
    for (PlannedTrip& trip : trips)
        finish(trip, windows);
    std::ranges::stable_sort(trips, {}, &PlannedTrip::on);
    return trips;
}

} // namespace padside

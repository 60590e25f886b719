// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/date.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <span>
#include <string>
#include <vector>

namespace padside {

/// A closed range of days within which something must be attended to once.
struct Window
{
    Date earliest{};
    Date latest{}; ///< not before earliest

    friend bool operator==(const Window&, const Window&) = default;
};

/// One attendance: its day, the windows it serves, the window that forced it (the one that ended first).
struct Trip
{
    Date on{};
    std::vector<std::size_t> windows; ///< indices into the input, ascending; each window is served by one trip
    std::size_t forcedBy = 0; ///< index of the served window with the earliest latest day

    friend bool operator==(const Trip&, const Trip&) = default;
};

/// The fewest days that meet every window (interval stabbing: serve the window that ends first on its last day, drop
/// all it meets, repeat; optimal for closed intervals on a line). Each trip is then moved to the latest day within the
/// common part of its windows for which `preferred` is true (a day of the site's season), if there is one; the count
/// does not change. Trips come in order of date. Windows with latest before earliest are the caller's mistake (assert).
/// Empty input: no trips. O(n log n), and one look at `preferred` for each day of the common part at most.
[[nodiscard]] std::vector<Trip> fewestTrips(std::span<const Window> windows,
                                            const std::function<bool(Date)>& preferred = {});

/// Moves a trip to the latest day within the common part of its windows for which `preferred` is true, if there is one.
/// Its day is the last of that part.
void moveToPreferredDay(Trip& trip, std::span<const Window> windows, const std::function<bool(Date)>& preferred);

/// The trips of one group (a unit, a site): its name, and trips whose indices point into the whole input.
struct TripGroup
{
    std::string name;
    std::vector<Trip> trips;

    friend bool operator==(const TripGroup&, const TripGroup&) = default;
};

/// The fewest trips within each group, in order of name. `groups` has the group's name for each window, in the same
/// order; sizes that differ are the caller's mistake (assert). Where all names are the same, all windows lie on one
/// line.
[[nodiscard]] std::vector<TripGroup> fewestTripsByGroup(std::span<const Window> windows,
                                                        std::span<const std::string> groups,
                                                        const std::function<bool(Date)>& preferred = {});

} // namespace padside

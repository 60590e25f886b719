// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/schedule/trips.h"

#include <optional>

namespace padside {

/// A day a person chose for a trip: another than the one worked out, or that one, kept as it is.
struct MovedTrip
{
    Date insteadOf{}; ///< the day worked out when the person first chose; the same as `to` if it was kept
    Date to{};
    /// Set where a day was kept: what comes to be due from this day on goes along, though late. What can't wait that
    /// long gets a trip of its own.
    std::optional<Date> takesAlongFrom{};

    [[nodiscard]] bool isKept() const { return takesAlongFrom && insteadOf == to; }

    friend bool operator==(const MovedTrip&, const MovedTrip&) = default;
};

/// One attendance: worked out, or moved to a day of the person's choice.
struct PlannedTrip
{
    Date on{};
    std::vector<std::size_t> windows; ///< indices into the input, ascending; each window is served by one trip
    std::vector<std::size_t> late; ///< those of `windows` that end before `on`; only a moved trip has any
    std::size_t forcedBy = 0; ///< the served window that ends first; meaningless if `windows` is empty
    std::optional<MovedTrip> moved; ///< empty: worked out

    friend bool operator==(const PlannedTrip&, const PlannedTrip&) = default;
};

/// The trips of one site with the days a person chose kept.
///
/// - A window that holds a chosen day is served on it, unless the trip it would be served by if no day were chosen is
///   needed anyway: choosing the day of one trip leaves the others alone, and keeping a day changes nothing.
/// - A window that holds the day a trip was moved *from*, but ends before the day it was moved *to*, goes along and is
///   late: moving a trip puts off what it was for. So does what
///   comes to be due shortly before a day that is kept (see MovedTrip::takesAlongFrom). If another trip comes in time,
///   that one serves it.
/// - What is left over gets the fewest further trips (see fewestTrips): what begins only after the chosen day, say.
///
/// Chosen days before `today` are over and play no part; windows must not end before `today` (assert), as for
/// siteTrips(). A chosen day that serves nothing any more still stands, as a trip without windows. Trips come in order
/// of date; two trips moved to one day are one. `dueBy` has for each window the day by which it should have been
/// served, which for one that is overdue lies before its window; empty: none is overdue.
[[nodiscard]] std::vector<PlannedTrip> plannedTrips(std::span<const Window> windows, std::span<const MovedTrip> moves,
                                                    Date today, const std::function<bool(Date)>& preferred = {},
                                                    std::span<const Date> dueBy = {});

} // namespace padside

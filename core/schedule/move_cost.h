// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"
#include "core/schedule/planned_trips.h"

namespace padside {

/// What moving a trip to another day costs, against leaving it where it is.
struct MoveCost
{
    struct Late
    {
        std::size_t window = 0;
        int days = 0; ///< after its latest day

        friend bool operator==(const Late&, const Late&) = default;
    };

    std::vector<Late> late; ///< of the windows the trip serves now: those it would come too late for; the latest first
    std::vector<std::size_t> tooEarly; ///< windows the trip serves now that would not have begun: they wait for another
    std::vector<Date> servedOn; ///< of the windows the trip serves now, in their order: the day they are served then
    int furtherTrips = 0; ///< trips more (or, if negative, fewer) than now
    std::vector<Date> onlyThen; ///< days of trips there would be then and are not now, the moved one left out

    [[nodiscard]] bool isNothing() const { return late.empty() && tooEarly.empty() && furtherTrips == 0; }

    friend bool operator==(const MoveCost&, const MoveCost&) = default;
};

/// `moves` with the trip on `from` moved to `to`: a trip moved before keeps the day it was moved from first; one moved
/// back to that day is not moved any more.
[[nodiscard]] std::vector<MovedTrip> withMove(std::span<const MovedTrip> moves, Date from, Date to);

/// What it would cost to move `trip` (one of plannedTrips() for these windows and moves) to `to`.
[[nodiscard]] MoveCost costOfMove(std::span<const Window> windows, std::span<const MovedTrip> moves, Date today,
                                  const PlannedTrip& trip, Date to, const std::function<bool(Date)>& preferred = {});

/// One sentence for each thing it costs or saves; a single one where it costs nothing.
[[nodiscard]] std::vector<Sentence> costSentences(const MoveCost& cost);

} // namespace padside

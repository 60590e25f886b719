// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"
#include "core/schedule/planned_trips.h"

namespace padside {

/// What a day chosen for a trip costs, against leaving the trip where it is, or against no day chosen.
struct MoveCost
{
    struct Late
    {
        std::size_t window = 0;
        int days = 0; ///< after its latest day

        friend bool operator==(const Late&, const Late&) = default;
    };

    Date to{}; ///< the chosen day
    std::vector<Late> late; ///< of the windows the trip serves now: those it would come too late for; the latest first
    std::vector<std::size_t> tooEarly; ///< windows the trip serves now that would not have begun: they wait for another
    std::vector<Date> servedBefore; ///< of the windows the trip serves, in their order: the day they are served without
    std::vector<Date> servedOn; ///< the same with the day chosen
    int furtherTrips = 0; ///< trips more (or, if negative, fewer) than now
    std::vector<Date> onlyThen; ///< days of trips there would be then and are not now, the moved one left out

    [[nodiscard]] bool isNothing() const { return late.empty() && tooEarly.empty() && furtherTrips == 0; }

    friend bool operator==(const MoveCost&, const MoveCost&) = default;
};

/// `moves` with the trip on `from` moved to `to`: a trip moved before keeps the day it was moved from first; one moved
/// back to that day is not moved any more, but kept if it was kept there.
[[nodiscard]] std::vector<MovedTrip> withMove(std::span<const MovedTrip> moves, Date from, Date to);

/// `moves` with the day of `trips[trip]` (of plannedTrips() for these windows) kept; one whose day was chosen already
/// stays as it is. What comes to be due up to `graceDays` before that day will go along, but nothing that the trip
/// before is for.
[[nodiscard]] std::vector<MovedTrip> withKept(std::span<const Window> windows, std::span<const MovedTrip> moves,
                                              std::span<const PlannedTrip> trips, std::size_t trip, int graceDays);

/// `moves` with the trip on a day worked out again, however often its day was chosen.
[[nodiscard]] std::vector<MovedTrip> withoutChoice(std::span<const MovedTrip> moves, Date day);

/// What it would cost to move `trip` (one of plannedTrips() for these windows and moves) to `to`.
[[nodiscard]] MoveCost costOfMove(std::span<const Window> windows, std::span<const MovedTrip> moves, Date today,
                                  const PlannedTrip& trip, Date to, const std::function<bool(Date)>& preferred = {},
                                  std::span<const Date> dueBy = {});

/// What it costs that the day of `trip` (one of plannedTrips() for these windows and moves) stays as chosen, against
/// working it out again today.
[[nodiscard]] MoveCost costOfChoice(std::span<const Window> windows, std::span<const MovedTrip> moves, Date today,
                                    const PlannedTrip& trip, const std::function<bool(Date)>& preferred = {},
                                    std::span<const Date> dueBy = {});

/// One sentence for each thing it costs or saves; a single one where it costs nothing.
[[nodiscard]] std::vector<Sentence> costSentences(const MoveCost& cost);

} // namespace padside

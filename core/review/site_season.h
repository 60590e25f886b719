// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/reviewed_fleet.h"
#include "core/schedule/move_cost.h"

namespace padside {

/// One check of a reviewed unit, not copied.
struct SeasonCheck
{
    std::shared_ptr<const ReviewedUnit> unit;
    std::size_t index = 0; ///< into the unit's checks
    int daysLate = 0; ///< how long after its latest day the trip comes; 0 for one that is in time

    [[nodiscard]] const Check& check() const { return unit->review.checks[index]; }
};

/// A day at the site and what is to be looked at on it.
struct SeasonTrip
{
    Date on{};
    std::vector<SeasonCheck> checks; ///< by unit; empty for a chosen day that nothing needs any more
    std::size_t forcedBy = 0; ///< index into `checks`: the one that can wait least
    std::optional<MovedTrip> moved; ///< set if a person chose the day

    [[nodiscard]] int daysLate() const; ///< of the check that is latest
    [[nodiscard]] std::vector<std::shared_ptr<const ReviewedUnit>> units() const; ///< each once, in order
};

/// All trips to one site, and what they were worked out from.
struct SiteSeason
{
    Site site;
    Date today{};
    std::vector<std::shared_ptr<const ReviewedUnit>> units; ///< of the site, retired ones left out
    std::vector<MovedTrip> moves;
    std::vector<SeasonTrip> trips; ///< by date
    std::vector<Window> windows; ///< of all checks, unit by unit: begun ones begin today, overdue ones are due today
    std::vector<Date> dueBy; ///< of the same checks: the latest day of each, over or not
    std::vector<PlannedTrip> planned; ///< the trips over `windows`, in the order of `trips`

    /// What it would cost to move the trip with this index to another day, not before today (assert).
    [[nodiscard]] MoveCost costOfMove(std::size_t trip, Date to) const;
    /// What it costs today that the day of the trip with this index stays as a person chose it, against working it out.
    [[nodiscard]] MoveCost costOfChoice(std::size_t trip) const;
    /// The chosen days with that of the trip with this index kept.
    [[nodiscard]] std::vector<MovedTrip> movesWithKept(std::size_t trip, const Catalogue& catalogue) const;
    /// The trip, its day chosen by a person, without whose choice there would be none on `on`; empty: there is none.
    [[nodiscard]] std::optional<std::size_t> chosenTripThatNeeds(Date on) const;
    /// The check of a window.
    [[nodiscard]] SeasonCheck checkOf(std::size_t window) const;
};

/// The trips to the site of these units, days chosen by a person kept. All units are of one site; at least one
/// (assert).
[[nodiscard]] SiteSeason siteSeason(std::vector<std::shared_ptr<const ReviewedUnit>> units,
                                    std::vector<MovedTrip> moves, Date today);

/// What sort of visit a trip's unit is due: that of its checklist on this trip, else the season the day lies in, else a
/// call-out.
[[nodiscard]] VisitReason reasonOnTrip(const SeasonTrip& trip, const ReviewedUnit& unit);

} // namespace padside

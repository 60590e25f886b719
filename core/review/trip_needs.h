// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/review/site_season.h"

#include <optional>

namespace padside {

/// A part that a spare should be ordered for before the trip.
struct SpareNeed
{
    std::shared_ptr<const ReviewedUnit> unit;
    PartId partId;
    Sentence why; ///< grade, since when, whether a spare can be had; or when it is likely to be spent
    std::optional<Date> orderBy{}; ///< empty: the outlook doesn't press
    bool made = true; ///< false: no longer made

    friend bool operator==(const SpareNeed&, const SpareNeed&) = default;
};

/// What to have on the truck.
struct TripNeeds
{
    std::vector<std::string> bring; ///< the catalogue's words, each once, in the order of the checks
    std::vector<SpareNeed> spares; ///< by unit, then in the catalogue's order of parts
};

/// What a trip needs, as far as record and catalogue tell: for a checklist what its tasks ask for, for a part that is
/// no longer sound or worn what it takes to look after it, and a spare for every part of the trip's units that is poor
/// or spent (dirt left out), or that is over its tolerance of being spent by the day of the trip, and of which a
/// separate spare is made.
[[nodiscard]] TripNeeds tripNeeds(const SeasonTrip& trip, const Catalogue& catalogue);

} // namespace padside

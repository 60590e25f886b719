// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/horizon.h"
#include "core/record/kept_forecast.h"
#include "core/record/unit_record.h"

#include <optional>
#include <span>
#include <vector>

namespace padside {

/// What became of "spent by this day".
enum class Outcome {
    waiting, ///< the day is still to come, or the zone was not seen since
    spent, ///< found spent by then
    notSpent, ///< seen not spent on that day or later
    untold, ///< the record will never tell
};

/// A forecast as it was kept, and what closed visits after it found of its zone.
struct HeldForecast
{
    KeptForecast forecast;
    PartId partId;
    std::string partKind;
    bool soils = false; ///< the zone gets dirty rather than decays
    std::optional<Date> notSpentOn; ///< the last day it was seen and not spent; empty: not seen since
    std::optional<Date> spentOn; ///< the first day it was found spent
    std::optional<Grade> lastGrade; ///< found that last time
    /// The day from which on the record speaks of something else: made better, cleaned, replaced, or the unit retired.
    std::optional<Date> endedOn;
    Date today{};

    /// Whether it was spent by `day`:
    /// - found spent on or before it: `spent`; seen and not spent on it or later: `notSpent`;
    /// - last seen not spent before it and found spent after it, or made better, replaced or retired before anybody
    ///   could tell: `untold`;
    /// - else, or while the day itself is to come: `waiting`. A zone found spent early waits for its day too: those
    ///   that last can't be told before it, and the early ones alone would make every forecast look too hopeful.
    [[nodiscard]] Outcome by(Date day) const;
    /// The same for one of the horizons of `horizonMonths`.
    [[nodiscard]] Outcome at(std::size_t horizon) const;
    /// The day of a horizon.
    [[nodiscard]] Date dayOf(std::size_t horizon) const;
};

/// Holds the forecasts kept of one unit against its record as of `today`. Only closed visits count, corrected entries
/// as they stand today. A zone that was spent already on the day of the forecast, found so or by what was measured of
/// it, foretold nothing and is left out, as is one that is no longer in the record. Visits of the forecast's own day
/// say nothing of it. "Seen not spent" is a grade from 1 to 4; "not seen" settles nothing, even where the unit ran.
/// Only a grade 5 says "spent": why a part was taken out is a person's own words, and parts are taken out for many
/// reasons.
[[nodiscard]] std::vector<HeldForecast> holdForecasts(const UnitRecord& record, std::span<const KeptForecast> forecasts,
                                                      const Catalogue& catalogue, Date today);

} // namespace padside

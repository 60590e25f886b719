// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/forecast.h"
#include "core/verdict/zone_measure.h"

#include <optional>
#include <span>
#include <vector>

namespace padside {

/// What an outlook is drawn from.
enum class OutlookBy { grades, wall, rust };

[[nodiscard]] constexpr auto codesOf(OutlookBy)
{
    return std::array{Coded<OutlookBy>{OutlookBy::grades, "grades", "the grades seen"},
                      Coded<OutlookBy>{OutlookBy::wall, "wall", "the wall measured"},
                      Coded<OutlookBy>{OutlookBy::rust, "rust", "the rusted share measured"}};
}

/// When a measured wall is down to what must be left, or a rusted share up to where its zone counts as spent: from the
/// last value at the measured rate, which is uncertain (taken as normally distributed around it; ours) and does not
/// change.
struct MeasuredOutlook
{
    ZoneId zoneId;
    OutlookBy by = OutlookBy::wall;
    Date lastOn{};
    double last = 0; ///< SI
    double limit = 0; ///< SI
    double left = 0; ///< from the last value to the limit, SI, >= 0
    double perYear = 0; ///< towards the limit, SI
    double errorPerYear = 0; ///< its standard error
    SpentDates dates;

    /// The chance that the limit is reached by a day; 0 before the last reading, unless it was reached then.
    [[nodiscard]] double chanceBy(Date day) const;
};

/// The greatest chance that a zone is spent by a day of all that speak of it, and which of them says so.
struct LeadingChance
{
    double chance = 0;
    OutlookBy by = OutlookBy::grades;
};

/// Holds what the grades say of a zone against what was measured of it; of `measured` those of other zones are passed
/// over.
[[nodiscard]] LeadingChance leadingChance(double byGrades, ZoneId zone, std::span<const MeasuredOutlook> measured,
                                          Date day);

/// The outlook of one measure: a wall by its controlling rate and what the gauge can't tell apart; a rusted share by
/// its Theil-Sen slope and limits (four readings or more). Empty where no rate can be told, unless the limit is reached
/// already. No day before `today` or after `furthest`.
[[nodiscard]] std::optional<MeasuredOutlook> measuredOutlook(const ZoneMeasure& measure, const Catalogue& catalogue,
                                                             Date today, Date furthest);

/// Those of all measures of a record, by zone and kind of reading as zoneMeasures() has them; no dates beyond what the
/// catalogue's outlook tells.
[[nodiscard]] std::vector<MeasuredOutlook> measuredOutlooks(const UnitRecord& record, const Catalogue& catalogue,
                                                            Date today);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/horizon.h"
#include "core/review/known_unit.h"
#include "core/review/leading_outlook.h"
#include "core/review/unit_outlook.h"

#include <array>
#include <vector>

namespace padside {

/// What comes, of one unit.
struct UnitForecast
{
    Date today{};
    std::array<Date, horizonCount> by{};
    std::vector<ZoneForecast> zones; ///< of fitted parts, likeliest to be spent within a year first
    std::vector<LeadingOutlook> leading; ///< of the same zones, walls and rust beside the grades, likeliest first too
    UnitOutlook unit; ///< that it stops, by the same days, from what leads of each zone

    [[nodiscard]] const ZoneForecast* of(ZoneId zone) const; ///< or nullptr
    [[nodiscard]] const LeadingOutlook* leadingOf(ZoneId zone) const; ///< or nullptr
};

/// The outlook of one unit as of `today`: the same record, catalogue and rates give the same answer. What is entered
/// later than `today` counts for nothing. A retired unit has none.
[[nodiscard]] UnitForecast unitForecast(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                                        Date today);

/// The same of a unit already worked out.
[[nodiscard]] UnitForecast unitForecast(const KnownUnit& known, const Catalogue& catalogue);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/unit_outlook.h"
#include "core/review/known_unit.h"

#include <array>
#include <vector>

namespace padside {

/// The days a unit's outlook is told for.
enum class Horizon { nextVisit, oneYear, twoYears, fiveYears };
constexpr std::size_t horizonCount = 4;

/// Half a year, one, two and five years after `today`: the next visit at the latest, and what one plans for.
[[nodiscard]] std::array<Date, horizonCount> horizonsAfter(Date today);

/// What comes, of one unit.
struct UnitForecast
{
    Date today{};
    std::array<Date, horizonCount> by{};
    std::vector<ZoneForecast> zones; ///< of fitted parts, likeliest to be spent within a year first
    UnitOutlook unit; ///< that it stops, by the same days

    [[nodiscard]] const ZoneForecast* of(ZoneId zone) const; ///< or nullptr
};

/// The outlook of one unit as of `today`: the same record, catalogue and rates give the same answer. What is entered
/// later than `today` counts for nothing. A retired unit has none.
[[nodiscard]] UnitForecast unitForecast(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                                        Date today);

/// The same of a unit already worked out.
[[nodiscard]] UnitForecast unitForecast(const KnownUnit& known, const Catalogue& catalogue);

} // namespace padside

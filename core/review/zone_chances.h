// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/unit_forecast.h"

#include <array>
#include <vector>

namespace padside {

/// The chances of one zone alone, without dates and words: for fleets, where those would take most of the time.
struct ZoneChances
{
    PartId partId;
    ZoneId zoneId;
    std::array<double, horizonCount> spent{}; ///< the greatest of what grades, wall and rust say
    std::array<OutlookBy, horizonCount> by{}; ///< which of them says so
};

/// Those of all zones of fitted parts as of `today`, in the record's order; the same chances as in the leading outlooks
/// of unitForecast(). A retired unit has none.
[[nodiscard]] std::vector<ZoneChances> zoneChances(const KnownUnit& known, const Catalogue& catalogue);
[[nodiscard]] std::vector<ZoneChances> zoneChances(const UnitRecord& record, const Catalogue& catalogue,
                                                   const OutlookModel& model, Date today);

} // namespace padside

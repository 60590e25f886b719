// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/unit_record.h"
#include "core/trend/trend_point.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace padside {

/// Which readings make one series.
struct SeriesKey
{
    std::string readingKind; ///< code in the catalogue
    std::optional<PartId> partId;
    std::optional<ZoneId> zoneId;

    friend bool operator==(const SeriesKey&, const SeriesKey&) = default;
};

/// The standing readings of one series since its last reset, oldest first, time in days since 1970-01-01, value in SI.
/// A treatment of one of the kinds in `resets` starts the series anew if it was done to the series' zone or to its
/// whole part (a series of the unit as a whole has no reset). On the day of the reset, readings as found still belong
/// to what was before, readings as left to what comes after. Where one day has both without a reset, the reading as
/// found stands: it shows the state that use has brought about.
[[nodiscard]] std::vector<TrendPoint> seriesSinceReset(const UnitRecord& record, const SeriesKey& key,
                                                       std::span<const TreatmentKind> resets);

} // namespace padside

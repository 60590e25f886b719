// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/corrosion/wall_readings.h"
#include "core/record/unit_record.h"
#include "core/trend/series_summary.h"
#include "core/verdict/required_wall_of.h"
#include "core/verdict/verdict.h"

#include <optional>
#include <vector>

namespace padside {

/// Something measured of one zone through the years (wall thickness, rusted share) and what it means.
struct ZoneMeasure
{
    PartId partId;
    ZoneId zoneId;
    std::string readingKind;
    std::vector<TrendPoint> points; ///< since the last reset, days since 1970-01-01 and SI; oldest first, at least one
    SeriesSummary summary; ///< of the points
    std::optional<WallOutlook> wall; ///< of a wall
    std::optional<WallAsked> wallAsked; ///< what must be left of it
    Verdict verdict; ///< on the last point
};

/// One zone's measure; `now` is a reading still being typed, after all that are in the record. Empty without any point
/// and for kinds that nothing is known of.
[[nodiscard]] std::optional<ZoneMeasure> zoneMeasure(const UnitRecord& record, const Catalogue& catalogue,
                                                     const Part& part, const Zone& zone, const std::string& readingKind,
                                                     std::optional<TrendPoint> now = std::nullopt);

/// All that were ever taken of zones of fitted parts, in the order of parts and zones of the record.
[[nodiscard]] std::vector<ZoneMeasure> zoneMeasures(const UnitRecord& record, const Catalogue& catalogue);

} // namespace padside

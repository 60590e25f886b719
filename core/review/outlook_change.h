// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/unit_forecast.h"

#include <vector>

namespace padside {

/// What a visit did to the outlook of one zone.
struct OutlookChange
{
    PartId partId;
    ZoneId zoneId;
    double before = 0; ///< chance of spent within a year, 0..1
    double now = 0; ///< the same after the visit
    SpentDates datesBefore;
    SpentDates datesNow;
    Sentence because;

    friend bool operator==(const OutlookChange&, const OutlookChange&) = default;
};

/// Zones whose chance of being spent within a year is another by at least two points in a hundred after the visit, the
/// greatest change first. Before: as of the day of the visit, but without what was entered at it; for a zone that was
/// looked for in vain, as was told at the visit before; for a new part, that of the part it replaces. A visit that is
/// not in the record changes nothing.
[[nodiscard]] std::vector<OutlookChange> outlookChanges(const UnitRecord& record, const Catalogue& catalogue,
                                                        const OutlookModel& model, VisitId visit);

} // namespace padside

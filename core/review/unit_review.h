// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/flags/flag.h"
#include "core/outlook/outlook_model.h"
#include "core/outlook/zone_risk.h"
#include "core/record/unit_record.h"
#include "core/review/known_unit.h"
#include "core/schedule/check.h"
#include "core/trend/zone_history.h"

#include <vector>

namespace padside {

/// What one unit's record means today.
struct UnitReview
{
    UnitId unitId;
    Date today{};
    std::vector<ZoneHistory> zones; ///< zones of fitted parts, in the catalogue's order of parts and zones
    std::vector<ZoneRisk> risks; ///< of the same zones, in the same order
    std::vector<Flag> flags; ///< acknowledged ones last; most severe first, then worst grade first
    std::vector<Check> checks; ///< by latest date

    friend bool operator==(const UnitReview&, const UnitReview&) = default;
};

/// Puts the subjects together for one unit. A pure function: the same record, catalogue, model and day give the same
/// review. The model is made once for a catalogue. Entries dated after `today` are left out.
[[nodiscard]] UnitReview review(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model,
                                Date today);

/// The same of a unit already worked out.
[[nodiscard]] UnitReview review(const KnownUnit& known, const Catalogue& catalogue);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/zone_risk.h"
#include "core/record/unit_record.h"
#include "core/trend/zone_history.h"

namespace padside {

/// One zone of a fitted part with all that a rule may ask about it. It refers to data that must outlive it.
struct ZoneView
{
    const UnitRecord& record; ///< standing entries up to today
    const Catalogue& catalogue;
    Date today{};
    const Part& part;
    const Zone& zone;
    const PartKind* kind = nullptr; ///< nullptr: not in the catalogue
    const ZoneKind* zoneKind = nullptr; ///< nullptr: not in the catalogue
    const ZoneHistory& history;
    const ZoneRisk* risk = nullptr; ///< nullptr: nothing is known of it
    Date nextVisit{}; ///< by when the next visit is to be expected

    [[nodiscard]] bool soils() const { return zoneKind != nullptr && zoneKind->soiling; }
    [[nodiscard]] bool takesWithIt(Consequence consequence) const
    {
        return kind != nullptr && kind->consequences.contains(consequence);
    }
};

} // namespace padside

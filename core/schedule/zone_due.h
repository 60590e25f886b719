// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/zone_risk.h"
#include "core/record/unit_record.h"
#include "core/schedule/trips.h"
#include "core/trend/zone_history.h"

#include <vector>

namespace padside {

/// Why a zone is to be looked at again.
enum class DueCause {
    routine, ///< sound or worn: the season's rhythm
    marked, ///< marked or poor, and not expected to be spent before its time is over
    outlook, ///< the chance that it is spent reaches its tolerance
    spent, ///< to be dealt with
    wet, ///< was wet when seen: see it dry
    notSeen, ///< looked for in vain since it was last seen
    neverSeen,
};

/// When one zone is to be looked at again, and why.
struct ZoneDue
{
    DueCause cause = DueCause::routine;
    Window window;
    std::vector<Condition> conditions;
    bool byOutlook = false; ///< the outlook set `window.latest`

    friend bool operator==(const ZoneDue&, const ZoneDue&) = default;
};

/// See zoneChecks() for the rules. The record holds standing entries up to `today`. Without a risk the zone's grade
/// alone sets its date.
[[nodiscard]] ZoneDue zoneDue(const UnitRecord& record, const Catalogue& catalogue, Date today, const Part& part,
                              const ZoneHistory& zone, const ZoneRisk* risk);

/// Opens between the last sighting and the latest date, at the assumption "window-open-share" of that time.
[[nodiscard]] Date openingOf(const Catalogue& catalogue, Date seen, Date latest);

} // namespace padside

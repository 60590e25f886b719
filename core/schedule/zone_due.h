// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "core/schedule/trips.h"
#include "core/trend/zone_history.h"

#include <vector>

namespace padside {

/// Why a zone is to be looked at again.
enum class DueCause {
    routine, ///< sound or worn: the season's rhythm
    marked, ///< marked or poor: sooner
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

    friend bool operator==(const ZoneDue&, const ZoneDue&) = default;
};

/// See zoneChecks() for the rules. The record holds standing entries up to `today`.
[[nodiscard]] ZoneDue zoneDue(const UnitRecord& record, const Catalogue& catalogue, Date today, const Part& part,
                              const ZoneHistory& zone);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/quantity/sentence.h"
#include "core/record/id.h"

#include <optional>
#include <vector>

namespace padside {

/// A thing to look at again.
struct Check
{
    UnitId unitId;
    std::optional<ZoneId> zoneId; ///< set where it is about a single zone
    std::optional<PartId> partId;
    std::optional<FollowUpId> followUpId; ///< set where a person promised it
    Sentence what; ///< "Suction accumulator, bottom: look again"
    Date earliest{};
    Date latest{}; ///< not before earliest; may lie in the past: overdue
    std::vector<Condition> conditions;
    Sentence why;
    std::optional<VisitReason> checklist; ///< set where it is the season's checklist of the unit
    std::vector<ZoneId> zones{}; ///< all zones that are looked at; none for a checklist

    friend bool operator==(const Check&, const Check&) = default;
};

} // namespace padside

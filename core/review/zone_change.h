// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/visit_changes.h"

#include <optional>

namespace padside {

/// What one visit says of one zone.
struct ZoneFindings
{
    std::optional<Finding> asFound;
    std::optional<Finding> asLeft;

    void take(const Finding& finding)
    {
        std::optional<Finding>& place = finding.phase == Phase::asFound ? asFound : asLeft;
        place = finding;
    }
};

/// What a visit changed in what is known of a zone. `history` is the zone's before the visit, `before` the record it is
/// from.
[[nodiscard]] ZoneChange zoneChange(const UnitRecord& before, const Catalogue& catalogue, const ZoneHistory& history,
                                    const ZoneFindings& findings);

} // namespace padside

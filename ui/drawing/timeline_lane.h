// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/timeline.h"

#include <span>

namespace padside {

/// The days a lane may cover.
struct LaneSpan
{
    Date first{};
    Date today{};
};

/// One lane for each kind (and name) of zone the parts of one place have had; a lane of the whole part if none has
/// zones. `parts` are oldest first. The record's entries must be standing ones. `kind` gives the order of zones; may be
/// null.
[[nodiscard]] std::vector<TimelineLane> lanesOf(std::span<const Part* const> parts, const UnitRecord& record,
                                                const PartKind* kind, const LaneSpan& span);

/// The lanes that belong to no part: visits, and refrigerant if any was put in or taken out.
[[nodiscard]] std::vector<TimelineLane> wholeUnitLanes(const UnitRecord& record, const LaneSpan& span);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/site.h"
#include "core/record/visit.h"
#include "sample-db/scenario.h"

#include <cstdint>
#include <vector>

namespace padside {

/// One attendance to be told.
struct PlannedVisit
{
    Date on{};
    VisitReason reason = VisitReason::spring;
    bool open = false; ///< not finished on the last day
};

/// The days one unit is visited, in order: each spring and fall, a few missed, call-outs where its story has one; none
/// before it was installed, after it was retired, or after the last day.
[[nodiscard]] std::vector<PlannedVisit> plannedVisits(const ScenarioUnit& unit, std::size_t block, int years,
                                                      Date lastDay, std::uint64_t seed);

/// When the scenario's unit was installed and, for the one that retires, taken out.
[[nodiscard]] Date installedOn(const ScenarioUnit& unit, Date lastDay);
[[nodiscard]] std::optional<Date> retiredOn(const ScenarioUnit& unit, Date lastDay);

} // namespace padside

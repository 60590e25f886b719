// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/zone_trail.h"

#include <vector>

namespace padside {

/// The trails of all zones of parts that were ever fitted by `today`, those taken out too, as closed visits have them:
/// what rates are learned from and forecasts are held against. Without the parts that were taken out only those that
/// lasted would be counted.
[[nodiscard]] std::vector<ZoneTrail> trailsOfEverFitted(const UnitRecord& record, const Catalogue& catalogue,
                                                        Date today);

} // namespace padside

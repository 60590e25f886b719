// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/flags/flag.h"
#include "core/outlook/zone_risk.h"
#include "core/record/unit_record.h"
#include "core/trend/zone_history.h"

#include <span>
#include <vector>

namespace padside {

/// The flags every rule raises over one unit and its zones: those that stand before those acknowledged, then most
/// severe first, then those about the unit as a whole, then worst known grade, then in the order of `zones`; those
/// about a part's spare stand behind. The record holds standing entries up to `today`; each history's part and zone
/// must be in it. Rules about chances are silent on zones without a risk.
[[nodiscard]] std::vector<Flag> raiseFlags(const UnitRecord& record, const Catalogue& catalogue, Date today,
                                           std::span<const ZoneHistory> zones, std::span<const ZoneRisk> risks);

} // namespace padside

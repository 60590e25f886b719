// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/zone_risk.h"
#include "core/record/unit_record.h"
#include "core/trend/zone_history.h"

#include <span>

namespace padside {

/// A whole unit with all that a rule may ask about it. It refers to data that must outlive it.
struct UnitView
{
    const UnitRecord& record; ///< standing entries up to today
    const Catalogue& catalogue;
    Date today{};
    std::span<const ZoneHistory> zones{}; ///< of fitted parts
    std::span<const ZoneRisk> risks{}; ///< of their zones
};

} // namespace padside

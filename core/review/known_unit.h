// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/zone_belief.h"

#include <vector>

namespace padside {

/// One unit as it is known on a day, with what is believed of its zones: review and outlook are both drawn from it, so
/// who wants both works it out once.
struct KnownUnit
{
    UnitRecord record; ///< as it stood at the end of `today`, parts and zones in the catalogue's order
    Date today{};
    std::vector<ZoneBelief> beliefs; ///< in the record's order; none of a retired unit

    [[nodiscard]] bool isRetired() const { return record.unit.retiredOn && *record.unit.retiredOn <= today; }
};

/// Entries dated after `today` are left out.
[[nodiscard]] KnownUnit knownUnit(UnitRecord record, const Catalogue& catalogue, const OutlookModel& model, Date today);

} // namespace padside

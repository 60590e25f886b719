// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/schedule/zone_due.h"

#include <vector>

namespace padside {

/// A zone waiting for its check, with all that the check's sentences name.
struct WaitingZone
{
    ZoneDue due;
    const Part* part = nullptr;
    const Zone* zone = nullptr;
    const ZoneHistory* history = nullptr;
    const ZoneRisk* risk = nullptr; ///< nullptr: nothing is known of it
    bool soils = false;
};

/// Zones that share one check, the most pressing first: it stands for all of them.
using ZoneGroup = std::vector<WaitingZone>;

/// How many parts the zones of a group belong to.
[[nodiscard]] std::int64_t partsIn(const ZoneGroup& group);

/// What the check asks for: "Suction accumulator, bottom: look again".
[[nodiscard]] Sentence whatOf(const UnitRecord& record, const Catalogue& catalogue, const ZoneGroup& group);

/// Why, and why by that date.
[[nodiscard]] Sentence whyOf(const UnitRecord& record, const Catalogue& catalogue, const ZoneGroup& group, Date today);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/horizon.h"
#include "core/review/known_unit.h"
#include "core/review/measured_outlook.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace padside {

/// The chances of one zone alone, without dates and words: for fleets, where those would take most of the time, and for
/// whole parts and units.
struct ZoneChances
{
    PartId partId;
    ZoneId zoneId;
    std::array<double, horizonCount> spent{}; ///< the greatest of what grades, wall and rust say
    std::array<OutlookBy, horizonCount> by{}; ///< which of them says so
};

/// Those of all zones of fitted parts as of `today`, in the record's order; the same chances as in the leading outlooks
/// of unitForecast(). A retired unit has none.
[[nodiscard]] std::vector<ZoneChances> zoneChances(const KnownUnit& known, const Catalogue& catalogue);
[[nodiscard]] std::vector<ZoneChances> zoneChances(const UnitRecord& record, const Catalogue& catalogue,
                                                   const OutlookModel& model, Date today);

/// The same where the outlooks of what was measured are worked out already.
[[nodiscard]] std::vector<ZoneChances> zoneChances(const KnownUnit& known, std::span<const MeasuredOutlook> measured);

/// That at least one of a part's zones is spent by each horizon; they are taken to fail independently. Empty where none
/// of the zones is the part's.
[[nodiscard]] std::optional<std::array<double, horizonCount>> chancesOfPart(PartId part,
                                                                            std::span<const ZoneChances> zones);

} // namespace padside

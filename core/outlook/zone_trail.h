// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/exposure_clock.h"
#include "core/outlook/trail.h"
#include "core/record/unit_record.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// All that a record says about one zone of a fitted part, as steps on its exposure clock.
struct ZoneTrail
{
    PartId partId;
    ZoneId zoneId;
    std::string partKind;
    std::string zoneKind;
    bool soils = false; ///< gets dirty rather than decays
    std::optional<Date> fittedOn; ///< empty: unknown, so is its beginning
    std::vector<TrailStep> steps;
    ExposureClock clock;
    Date today{};
    double exposureSince = 0; ///< from the last step (or the beginning) to today
    double exposureSinceFitted = 0; ///< 0 where that is unknown
    std::optional<Date> seenOn; ///< the last day it was graded, as found or as left
    std::optional<Grade> seenGrade; ///< then; as found where both were written down
    std::optional<Date> notSeenOn; ///< the last day after that on which it was looked for in vain
    std::optional<Coat> coat; ///< the one that lasts longest, if it still lasts today
    bool corrodes = false; ///< air and wetness count
    AirFactor air; ///< counted only where it corrodes
};

/// The trails of all zones of fitted parts, in the record's order. Corrected entries and entries after `today` are left
/// out here, so any record will do. What the work of a visit means:
/// - replaced without a new part: new from then on; repaired: better, to the grade as left where that was graded;
/// - cleaned: sound again, or as left, where it is dirt; on other zones it changes nothing;
/// - brushed and coated, greased, lubricated: the clock slows (`protections`), the belief stays: a better grade as left
///   is the paint's, and until the coat's life is over a grade found says "at least";
/// - graded better as left without any work written down: as repaired; graded worse as left: that look was the closer.
/// "Not seen" says "not spent" where the unit was noted as running and the part is one that stops it.
[[nodiscard]] std::vector<ZoneTrail> zoneTrails(const UnitRecord& record, const Catalogue& catalogue, Date today);

/// Whether a unit stops with a spent part of this kind: cooling or heating, charge, compressor or the unit itself goes.
[[nodiscard]] bool stopsUnit(const PartKind& kind);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "core/trend/zone_history.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// What one visit did to what is known of a zone.
enum class ZoneChangeKind {
    worse, ///< found worse than when last seen
    betterWithoutWork, ///< found better though nothing was done to it in between: one of the two grades is doubtful
    betterAfterWork, ///< found better after work at an earlier visit, or left better by this visit's work
    firstSeen, ///< never seen before
    same,
    notSeen, ///< looked for in vain
};

[[nodiscard]] constexpr auto codesOf(ZoneChangeKind)
{
    return std::array{
        Coded<ZoneChangeKind>{ZoneChangeKind::worse, "worse", "worse"},
        Coded<ZoneChangeKind>{ZoneChangeKind::betterWithoutWork, "better-without-work", "better without work"},
        Coded<ZoneChangeKind>{ZoneChangeKind::betterAfterWork, "better-after-work", "better after work"},
        Coded<ZoneChangeKind>{ZoneChangeKind::firstSeen, "first-seen", "seen for the first time"},
        Coded<ZoneChangeKind>{ZoneChangeKind::same, "same", "same"},
        Coded<ZoneChangeKind>{ZoneChangeKind::notSeen, "not-seen", "not seen"}};
}

/// One zone at one visit beside the last time it was seen before.
struct ZoneChange
{
    PartId partId;
    ZoneId zoneId;
    ZoneChangeKind kind = ZoneChangeKind::same;
    std::optional<SeenGrade> before; ///< as found, the last time it was seen before this visit
    std::optional<Grade> asFound; ///< empty: not seen as found
    std::optional<Grade> asLeft; ///< after this visit's work, where that was graded
    std::optional<NotSeenReason> notSeenBecause; ///< set where it was looked for in vain
    std::optional<Wetness> wetness; ///< as found
    std::string note; ///< of the finding as found, else as left
    Sentence sentence; ///< "Suction accumulator, bottom: 3 marked, 2 worn on 2025-05-06; one grade worse."

    friend bool operator==(const ZoneChange&, const ZoneChange&) = default;
};

/// A reading of the visit beside the last one of the same kind, part, zone and phase before it.
struct ReadingChange
{
    Reading reading;
    std::optional<Reading> before;

    friend bool operator==(const ReadingChange&, const ReadingChange&) = default;
};

/// What changed at one visit: for closing it and for its summary.
struct VisitChanges
{
    VisitId visitId;
    Date on{};
    std::vector<ZoneChange>
        zones; ///< by kind in the order of ZoneChangeKind, then in the catalogue's order of parts and zones
    std::vector<ZoneId> notLookedAt; ///< zones of parts fitted that day without any finding, in the catalogue's order
    std::vector<ReadingChange> readings; ///< in the order of their being entered
    std::vector<Treatment> treatments; ///< in the order of their being entered
    std::vector<ChargeEntry> charges; ///< in the order of their being entered
    std::vector<PartId> partsFitted; ///< parts fitted on the day of the visit in the place of another
    std::vector<FollowUp> promised; ///< follow-ups made at this visit
    std::vector<FollowUp> settled; ///< follow-ups settled at this visit

    /// How many zones changed in this way.
    [[nodiscard]] int count(ZoneChangeKind kind) const;

    friend bool operator==(const VisitChanges&, const VisitChanges&) = default;
};

/// What changed at one visit, against everything before it in the record; what came later doesn't matter. Corrections
/// are resolved. A visit that is not in the record gives an empty answer with a null visitId.
[[nodiscard]] VisitChanges visitChanges(const UnitRecord& record, const Catalogue& catalogue, VisitId visit);

} // namespace padside

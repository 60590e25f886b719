// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/unit_record.h"

#include <optional>
#include <vector>

namespace padside {

/// A grade and when it was seen.
struct SeenGrade
{
    Date on{};
    Grade grade = Grade::sound;
    FindingId findingId;

    friend bool operator==(const SeenGrade&, const SeenGrade&) = default;
};

/// Work done to a zone, and the grade it was left at.
struct EarlierWork
{
    Date on{};
    TreatmentKind kind = TreatmentKind::clean;
    std::optional<SeenGrade>
        left; ///< as left at that visit, else as found there, else last seen before; empty: never seen by then

    friend bool operator==(const EarlierWork&, const EarlierWork&) = default;
};

/// One zone of a fitted part through time, told by its findings and the work done to it.
struct ZoneHistory
{
    PartId partId;
    ZoneId zoneId;
    std::vector<SeenGrade> seen; ///< as found, oldest first; one per visit
    std::optional<SeenGrade> lastSeen;
    std::optional<SeenGrade> previousSeen;
    std::optional<Grade> asLeft; ///< after the work of the last visit at which it was seen, where that was graded
    std::optional<SeenGrade> known; ///< what holds now: as left where that was graded, else as found; empty: never seen
    std::optional<Grade> worstEver;
    std::optional<int> delta; ///< grades since the previous time it was seen; positive is worse
    std::optional<Date> atGradeSince; ///< first of the unbroken run of sightings at the last grade
    std::optional<double> rate; ///< grades per year over the last interval seen; negative after cleaning or repair
    std::optional<double> rateBefore; ///< over the interval before that
    std::optional<Date>
        notSeenSince; ///< the first of the visits since it was last seen at which it was looked for in vain
    std::optional<Date> notSeenLast; ///< the last of those visits
    int timesNotSeen = 0; ///< how many such visits
    std::optional<NotSeenReason> lastNotSeenReason;
    std::optional<Wetness> lastWetness; ///< as found, at the last visit that recorded it
    std::optional<Date> lastWetnessOn; ///< the day of `lastWetness`
    std::optional<Date> lastTreatedOn;
    std::optional<EarlierWork> earlierWork; ///< the last work at a visit before the one at which it was last seen

    friend bool operator==(const ZoneHistory&, const ZoneHistory&) = default;
};

/// The history of each zone of each fitted part, in the record's order of parts and zones. Entries must be standing
/// ones (no corrected entries); their order does not matter. A zone never seen has a history too, an empty one.
[[nodiscard]] std::vector<ZoneHistory> zoneHistories(const UnitRecord& record);

} // namespace padside

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

/// One zone of a fitted part through time, told by its findings alone.
struct ZoneHistory
{
    PartId partId;
    ZoneId zoneId;
    std::vector<SeenGrade> seen; ///< as found, oldest first; one per visit
    std::optional<SeenGrade> lastSeen;
    std::optional<SeenGrade> previousSeen;
    std::optional<Grade> asLeft; ///< after the last visit's work, where that was graded
    std::optional<Grade> worstEver;
    std::optional<int> delta; ///< grades since the previous time it was seen; positive is worse
    std::optional<Date> atGradeSince; ///< first of the unbroken run of sightings at the last grade
    std::optional<double> rate; ///< grades per year over the last interval seen; negative after cleaning or repair
    std::optional<double> rateBefore; ///< over the interval before that
    std::optional<Date> notSeenSince; ///< the first of the visits since it was last seen at which it was looked for in vain
    int timesNotSeen = 0; ///< how many such visits
    std::optional<NotSeenReason> lastNotSeenReason;
    std::optional<Wetness> lastWetness; ///< at the last visit that recorded it
    std::optional<Date> lastTreatedOn;

    friend bool operator==(const ZoneHistory&, const ZoneHistory&) = default;
};

/// The history of each zone of each fitted part. Findings must be standing ones (no corrected entries), in order of date.
[[nodiscard]] std::vector<ZoneHistory> zoneHistories(const UnitRecord& record);

} // namespace padside

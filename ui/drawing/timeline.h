// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/forecast.h"
#include "core/outlook/grade_course.h"
#include "core/record/unit_record.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// What happened in one lane on one visit (or on one day, where the record names no visit).
struct TimelineMark
{
    enum class Subject {
        zone, ///< a zone was looked at, worked on or photographed; or the part was fitted that day
        visit, ///< somebody was there
        charge, ///< refrigerant went in or out
    };

    Subject subject = Subject::zone;
    Date on{};
    VisitId visitId; ///< null where the record names no visit
    std::optional<VisitReason> reason;
    bool openVisit = false;

    std::optional<Grade> before; ///< what the zone was last known to be, when this part's zone was seen before
    std::optional<Date> beforeOn;
    std::optional<Grade> found; ///< as found
    std::optional<Grade> left; ///< as left
    std::optional<NotSeenReason> notSeen;
    std::optional<Wetness> wetness;
    std::string note;
    std::vector<Treatment> treatments;
    bool fitted = false; ///< a part took the place of an earlier one
    std::string fittedBecause; ///< why the earlier one went
    int photos = 0;
    std::vector<PhotoId> pictures; ///< of the zone, in the order they were entered
    std::vector<FindingId> findings; ///< what the mark shows
    std::string worstZone; ///< in a part's worst lane: the zone that gave the grade
    std::string correction; ///< why the entry was corrected; empty: it was not
    std::vector<ChargeEntry> charges;
    std::size_t zonesSeen = 0; ///< of a visit, or of a part in its worst lane
    std::size_t zonesNotSeen = 0; ///< of the same
};

/// A grade that holds from one sighting to the next.
struct TimelineBand
{
    Date from{};
    Date to{};
    Grade grade = Grade::sound;
    bool sure = true; ///< false from the first visit at which the zone was not seen

    friend bool operator==(const TimelineBand&, const TimelineBand&) = default;
};

/// The time one part was fitted, within the timeline.
struct TimelineLife
{
    Date from{};
    Date to{};

    friend bool operator==(const TimelineLife&, const TimelineLife&) = default;
};

/// How a lane is expected to go on after today.
struct TimelineOutlook
{
    std::vector<GradesBy> course; ///< chances of its grades, today first
    SpentDates spent;
    Sentence when; ///< the range of dates of spent, in words
    std::vector<Sentence> because;
    std::string zone; ///< in a part's worst lane: the zone that is spent first
};

/// One zone through the years; the zones of a part and of what replaced it follow one another.
struct TimelineLane
{
    std::string name; ///< English for catalogue names, as typed otherwise
    std::vector<ZoneId> zones; ///< oldest part first; empty for the lanes of the whole unit
    std::vector<TimelineLife> lives;
    std::vector<TimelineBand> bands;
    std::vector<TimelineMark> marks; ///< by date
    std::optional<TimelineOutlook> outlook = {};
};

/// One place for a part and the parts that have stood in it.
struct TimelineGroup
{
    std::string name;
    std::string position; ///< empty where the unit has only one
    bool fitted = true; ///< false: the last part was removed and nothing took its place
    std::vector<TimelineLane> lanes;
    TimelineLane worst = {}; ///< the part's worst grade through the years, for when its lanes are folded away

    /// A single lane, and those of the whole unit, can't be folded.
    [[nodiscard]] bool foldable() const { return lanes.size() > 1 && !lanes.front().zones.empty(); }
};

/// Stands for a group's worst lane where a lane is asked for.
constexpr std::size_t worstLane = static_cast<std::size_t>(-1);

/// A unit's history, told in lanes; the first group is the whole unit.
struct Timeline
{
    Date first{}; ///< the first day shown
    Date today{};
    std::optional<Date> until; ///< the last day of the outlook; empty: nothing is told of what comes
    SeasonWeeks spring;
    SeasonWeeks fall;
    std::vector<TimelineGroup> groups;
};

/// A lane by its number, or its group's worst one.
[[nodiscard]] inline const TimelineLane& laneOf(const Timeline& timeline, std::size_t group, std::size_t lane)
{
    const TimelineGroup& one = timeline.groups[group];
    return lane == worstLane ? one.worst : one.lanes[lane];
}

/// The lanes of a unit's record up to `today`; later entries are left out. Corrected entries give way to those that
/// stand for them. Parts stand in the catalogue's order, unknown kinds last, by their codes.
[[nodiscard]] Timeline timelineOf(const UnitRecord& record, const Catalogue& catalogue, Date today);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline.h"

#include "ui/drawing/timeline_lane.h"
#include "ui/drawing/timeline_worst.h"

#include <algorithm>
#include <chrono>

namespace padside {

namespace {

/// The parts of one place, oldest first.
struct Place
{
    std::vector<const Part*> parts;

    [[nodiscard]] const Part& newest() const { return *parts.back(); }
};

std::size_t rankOf(const Catalogue& catalogue, const std::string& partKind)
{
    const auto& kinds = catalogue.partKinds();
    const auto kind = std::ranges::find(kinds, partKind, &PartKind::code);
    return static_cast<std::size_t>(kind - kinds.begin());
}

bool standsIn(const Place& place, const Part& part)
{
    return std::ranges::any_of(place.parts, [&part](const Part* one) {
        return part.replaces == one->id || one->replaces == part.id
            || (one->kind == part.kind && one->position == part.position);
    });
}

/// Removed parts before fitted ones, then by the day they were fitted; an unknown day comes first.
bool olderPart(const Part* one, const Part* other)
{
    const auto key = [](const Part* part) {
        return std::pair(part->removedOn.value_or(Date::max()), part->fittedOn.value_or(Date::min()));
    };
    return key(one) < key(other);
}

std::vector<Place> placesOf(const UnitRecord& record, const Catalogue& catalogue, Date today)
{
    std::vector<Place> places;
    for (const Part& part : record.parts) {
        if (part.fittedOn && *part.fittedOn > today)
            continue;
        const auto place = std::ranges::find_if(places, [&part](const Place& one) { return standsIn(one, part); });
        if (place == places.end())
            places.push_back(Place{{&part}});
        else
            place->parts.push_back(&part);
    }
    for (Place& place : places)
        std::ranges::stable_sort(place.parts, olderPart);
    std::ranges::stable_sort(places, {}, [&](const Place& place) { return rankOf(catalogue, place.newest().kind); });
    return places;
}

Date firstDay(const UnitRecord& record, Date today)
{
    Date first = today;
    for (const Visit& visit : record.visits)
        first = std::min(first, visit.on);
    if (record.visits.empty() && record.unit.installedOn)
        first = std::min(first, *record.unit.installedOn);
    // Whole years, so that the first year is as wide as the others; at least one year.
    const Date yearStart = std::chrono::year(yearOf(first)) / std::chrono::January / 1;
    return std::min(yearStart, addMonths(today, -12));
}

TimelineGroup groupOf(const Place& place, const UnitRecord& record, const Catalogue& catalogue, const LaneSpan& span)
{
    TimelineGroup group;
    const Part& part = place.newest();
    const PartKind* kind = catalogue.partKind(part.kind);
    group.name = kind ? kind->name : part.kind;
    group.position = part.position;
    group.fitted = !part.removedOn || *part.removedOn > span.today;
    group.lanes = lanesOf(place.parts, record, kind, span);
    if (group.foldable())
        group.worst = worstOf(group.lanes);
    return group;
}

} // namespace

Timeline timelineOf(const UnitRecord& record, const Catalogue& catalogue, Date today)
{
    UnitRecord known = record;
    std::erase_if(known.visits, [today](const Visit& visit) { return visit.on > today; });
    known.findings = standing(record.findings);
    known.treatments = standing(record.treatments);
    known.photos = standing(record.photos);
    known.charges = standing(record.charges);

    Timeline timeline;
    timeline.today = today;
    timeline.first = firstDay(known, today);
    timeline.spring = record.site.spring;
    timeline.fall = record.site.fall;
    const LaneSpan span{timeline.first, today};
    timeline.groups.push_back(TimelineGroup{PADSIDE_SAY("Whole unit"), {}, true, wholeUnitLanes(known, span)});
    for (const Place& place : placesOf(record, catalogue, today))
        timeline.groups.push_back(groupOf(place, known, catalogue, span));
    return timeline;
}

} // namespace padside

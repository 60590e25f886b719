// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_lane.h"

#include <algorithm>

namespace padside {

namespace {

/// A zone and the part it belongs to.
struct ZoneOfPart
{
    const Part* part;
    const Zone* zone; ///< null: the lane stands for the whole part
};

TimelineMark& markAt(TimelineLane& lane, const UnitRecord& record, VisitId visitId, Date on)
{
    const auto known = std::ranges::find_if(lane.marks, [&](const TimelineMark& mark) {
        return visitId.isNull() || mark.visitId.isNull() ? mark.on == on : mark.visitId == visitId;
    });
    TimelineMark& mark = known == lane.marks.end() ? lane.marks.emplace_back() : *known;
    mark.on = on;
    if (mark.visitId.isNull())
        mark.visitId = visitId;
    if (const Visit* visit = findVisit(record, mark.visitId)) {
        mark.reason = visit->reason;
        mark.openVisit = visit->isOpen();
    }
    return mark;
}

void addFinding(TimelineMark& mark, const Finding& finding)
{
    mark.findings.push_back(finding.id);
    const bool later = finding.phase == Phase::asLeft || mark.found.has_value();
    if (!finding.seen())
        mark.notSeen = std::get<NotSeenReason>(finding.sight);
    else if (later)
        mark.left = finding.grade();
    else
        mark.found = finding.grade();
    if (finding.wetness && !mark.wetness)
        mark.wetness = finding.wetness;
    if (!finding.note.empty())
        mark.note += (mark.note.empty() ? "" : "; ") + finding.note;
    if (finding.correction)
        mark.correction = finding.correction->reason;
}

void addFittings(TimelineLane& lane, const UnitRecord& record, std::span<const ZoneOfPart> zones, const LaneSpan& span)
{
    for (const ZoneOfPart& one : zones) {
        const Date from = std::max(span.first, one.part->fittedOn.value_or(span.first));
        const Date to = std::min(span.today, one.part->removedOn.value_or(span.today));
        if (from <= to)
            lane.lives.push_back(TimelineLife{from, to});
        // Only a part that took another's place is news; the first ones came with the unit.
        const bool took = one.part->replaces.has_value() || one.part != zones.front().part;
        if (!took || !one.part->fittedOn || *one.part->fittedOn < span.first || *one.part->fittedOn > span.today)
            continue;
        const auto visit = std::ranges::find(record.visits, *one.part->fittedOn, &Visit::on);
        TimelineMark& mark
            = markAt(lane, record, visit == record.visits.end() ? VisitId{} : visit->id, *one.part->fittedOn);
        mark.fitted = true;
        for (const ZoneOfPart& old : zones) {
            if (old.part->removedOn == one.part->fittedOn)
                mark.fittedBecause = old.part->removedBecause;
        }
    }
}

/// The grade after each sighting holds until the next one or until the part goes.
void addBands(TimelineLane& lane, const UnitRecord& record, const ZoneOfPart& one, const LaneSpan& span)
{
    const Date end = std::min(span.today, one.part->removedOn.value_or(span.today));
    std::vector<const Finding*> findings;
    for (const Finding& finding : record.findings) {
        if (one.zone && finding.zoneId == one.zone->id && finding.on <= end)
            findings.push_back(&finding);
    }
    std::ranges::stable_sort(findings, {},
                             [](const Finding* finding) { return std::pair(finding->on, finding->phase); });
    std::optional<TimelineBand> open;
    const auto close = [&](Date to) {
        if (open && to > open->from)
            lane.bands.push_back(TimelineBand{open->from, to, open->grade, open->sure});
    };
    for (const Finding* finding : findings) {
        if (const auto grade = finding->grade()) {
            close(finding->on);
            open = TimelineBand{finding->on, finding->on, *grade, true};
        } else if (open && open->sure && finding->on > open->from) {
            close(finding->on);
            open = TimelineBand{finding->on, finding->on, open->grade, false};
        }
    }
    close(end);
}

void addEntries(TimelineLane& lane, const UnitRecord& record, const ZoneOfPart& one, const LaneSpan& span)
{
    for (const Finding& finding : record.findings) {
        if (one.zone && finding.zoneId == one.zone->id && finding.on <= span.today)
            addFinding(markAt(lane, record, finding.visitId, finding.on), finding);
    }
    for (const Treatment& treatment : record.treatments) {
        const bool here
            = treatment.partId == one.part->id && (!treatment.zoneId || !one.zone || *treatment.zoneId == one.zone->id);
        if (here && treatment.on <= span.today)
            markAt(lane, record, treatment.visitId, treatment.on).treatments.push_back(treatment);
    }
    for (const Photo& photo : record.photos) {
        if (!one.zone || photo.zoneId != one.zone->id || photo.on > span.today)
            continue;
        TimelineMark& mark = markAt(lane, record, photo.visitId, photo.on);
        ++mark.photos;
        mark.pictures.push_back(photo.id);
    }
}

/// What each sighting is held against: the grade known before it, of the part that is fitted then.
void addBefore(TimelineLane& lane)
{
    std::optional<Grade> known;
    std::optional<Date> knownOn;
    for (TimelineMark& mark : lane.marks) {
        if (mark.fitted && !mark.found)
            known.reset(); // what was known was of the part that went
        mark.before = known;
        mark.beforeOn = known ? knownOn : std::nullopt;
        if (mark.fitted)
            known.reset();
        if (const auto now = mark.left ? mark.left : mark.fitted ? std::nullopt : mark.found) {
            known = now;
            knownOn = mark.on;
        }
    }
}

TimelineLane laneOfZones(std::span<const ZoneOfPart> zones, const UnitRecord& record, const LaneSpan& span)
{
    TimelineLane lane;
    lane.name = zones.back().zone ? zones.back().zone->name : std::string(PADSIDE_SAY("whole part"));
    for (const ZoneOfPart& one : zones) {
        if (one.zone)
            lane.zones.push_back(one.zone->id);
        addEntries(lane, record, one, span);
        addBands(lane, record, one, span);
    }
    addFittings(lane, record, zones, span);
    std::ranges::stable_sort(lane.marks, {}, &TimelineMark::on);
    std::ranges::stable_sort(lane.bands, {}, &TimelineBand::from);
    addBefore(lane);
    return lane;
}

bool sameLane(const ZoneOfPart& one, const ZoneOfPart& other)
{
    // Two zones of one part never share a lane, even if they are of one kind (two service valves).
    return one.part != other.part && one.zone->kind == other.zone->kind && one.zone->name == other.zone->name;
}

std::size_t zoneRank(const PartKind* kind, const ZoneOfPart& one)
{
    if (!kind)
        return 0;
    return static_cast<std::size_t>(std::ranges::find(kind->zones, one.zone->kind, &ZoneKind::code)
                                    - kind->zones.begin());
}

} // namespace

std::vector<TimelineLane> lanesOf(std::span<const Part* const> parts, const UnitRecord& record, const PartKind* kind,
                                  const LaneSpan& span)
{
    std::vector<std::vector<ZoneOfPart>> lanes;
    std::vector<ZoneOfPart> whole;
    for (const Part* part : parts) {
        whole.push_back(ZoneOfPart{part, nullptr});
        for (const Zone& zone : part->zones) {
            const ZoneOfPart one{part, &zone};
            const auto lane
                = std::ranges::find_if(lanes, [&one](const auto& zones) { return sameLane(zones.back(), one); });
            if (lane == lanes.end())
                lanes.push_back({one});
            else
                lane->push_back(one);
        }
    }
    if (lanes.empty())
        lanes.push_back(whole);
    else
        std::ranges::stable_sort(lanes, {}, [kind](const auto& zones) { return zoneRank(kind, zones.back()); });
    std::vector<TimelineLane> result;
    result.reserve(lanes.size());
    for (const auto& zones : lanes)
        result.push_back(laneOfZones(zones, record, span));
    return result;
}

std::vector<TimelineLane> wholeUnitLanes(const UnitRecord& record, const LaneSpan& span)
{
    TimelineLane visits;
    visits.name = PADSIDE_SAY("visits");
    visits.lives.push_back(TimelineLife{span.first, span.today});
    for (const Visit& visit : record.visits) {
        TimelineMark& mark = markAt(visits, record, visit.id, visit.on);
        mark.subject = TimelineMark::Subject::visit;
        mark.note = visit.note;
        for (const Finding& finding : record.findings) {
            if (finding.visitId == visit.id && finding.phase == Phase::asFound)
                ++(finding.seen() ? mark.zonesSeen : mark.zonesNotSeen);
        }
        mark.photos = static_cast<int>(std::ranges::count(record.photos, visit.id, &Photo::visitId));
    }
    std::ranges::stable_sort(visits.marks, {}, &TimelineMark::on);
    TimelineLane charges;
    charges.name = PADSIDE_SAY("refrigerant");
    charges.lives = visits.lives;
    for (const ChargeEntry& charge : record.charges) {
        if (charge.on > span.today)
            continue;
        TimelineMark& mark = markAt(charges, record, charge.visitId, charge.on);
        mark.subject = TimelineMark::Subject::charge;
        mark.charges.push_back(charge);
        if (charge.correction)
            mark.correction = charge.correction->reason;
    }
    std::ranges::stable_sort(charges.marks, {}, &TimelineMark::on);
    std::vector<TimelineLane> lanes{visits};
    if (!charges.marks.empty())
        lanes.push_back(charges);
    return lanes;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/visit_changes.h"

#include "core/review/record_at.h"
#include "core/review/zone_change.h"

#include <algorithm>
#include <unordered_map>

namespace padside {

namespace {

template <typename AnyEntry> std::vector<AnyEntry> enteredAt(const std::vector<AnyEntry>& entries, VisitId visit)
{
    std::vector<AnyEntry> kept = standing(entries);
    std::erase_if(kept, [&](const AnyEntry& entry) { return entry.visitId != visit; });
    return kept;
}

std::vector<ReadingChange> readingChanges(const std::vector<Reading>& now, const std::vector<Reading>& before)
{
    std::vector<ReadingChange> changes;
    for (const Reading& reading : now) {
        ReadingChange& change = changes.emplace_back(ReadingChange{reading, std::nullopt});
        for (const Reading& earlier : before) {
            const bool alike = earlier.kind == reading.kind && earlier.partId == reading.partId
                && earlier.zoneId == reading.zoneId && earlier.phase == reading.phase;
            if (alike && (!change.before || change.before->on <= earlier.on))
                change.before = earlier;
        }
    }
    return changes;
}

/// A part put in the place of another on the day of the visit.
bool isFresh(const Part& part, Date day)
{
    return part.replaces && part.fittedOn == day;
}

bool removedBy(const UnitRecord& record, PartId id, Date day)
{
    const Part* part = findPart(record, id);
    return part != nullptr && part->removedOn && *part->removedOn <= day;
}

} // namespace

int VisitChanges::count(ZoneChangeKind kind) const
{
    return static_cast<int>(std::ranges::count(zones, kind, &ZoneChange::kind));
}

VisitChanges visitChanges(const UnitRecord& record, const Catalogue& catalogue, VisitId visitId)
{
    VisitChanges changes;
    const Visit* visit = findVisit(record, visitId);
    if (visit == nullptr)
        return changes;
    changes.visitId = visitId;
    changes.on = visit->on;

    UnitRecord before = recordBefore(record, *visit);
    putInCatalogueOrder(before.parts, before.unit, catalogue);
    std::unordered_map<ZoneId, ZoneFindings> today;
    for (const Finding& finding : enteredAt(record.findings, visitId))
        today[finding.zoneId].take(finding);

    for (const ZoneHistory& history : zoneHistories(before)) {
        const Part& part = *findPart(before, history.partId);
        if (const auto found = today.find(history.zoneId); found != today.end())
            changes.zones.push_back(zoneChange(before, catalogue, history, found->second));
        else if (!isFresh(part, visit->on) && !removedBy(record, part.id, visit->on))
            changes.notLookedAt.push_back(history.zoneId);
    }
    std::ranges::stable_sort(changes.zones, {}, &ZoneChange::kind);

    changes.readings = readingChanges(enteredAt(record.readings, visitId), before.readings);
    changes.treatments = enteredAt(record.treatments, visitId);
    changes.charges = enteredAt(record.charges, visitId);
    for (const Part& part : before.parts) {
        if (isFresh(part, visit->on))
            changes.partsFitted.push_back(part.id);
    }
    std::ranges::copy_if(record.followUps, std::back_inserter(changes.promised),
                         [&](const FollowUp& promise) { return promise.madeAt == visitId; });
    std::ranges::copy_if(record.followUps, std::back_inserter(changes.settled),
                         [&](const FollowUp& promise) { return promise.settledAt == visitId; });
    return changes;
}

} // namespace padside

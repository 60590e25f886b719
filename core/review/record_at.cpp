// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/record_at.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <span>
#include <tuple>
#include <unordered_set>
#include <utility>

namespace padside {

namespace {

using VisitIds = std::unordered_set<VisitId>;

/// Leaves the standing entries of these visits.
template <typename AnyEntry> void keepEntries(std::vector<AnyEntry>& entries, const VisitIds& visits)
{
    if (std::ranges::any_of(entries, [](const AnyEntry& entry) { return entry.correction.has_value(); }))
        entries = standing(entries);
    std::optional<VisitId> last; // entries of one visit mostly stand together: it is looked up once
    bool wanted = false;
    std::erase_if(entries, [&](const AnyEntry& entry) {
        if (last != entry.visitId)
            wanted = visits.contains(entry.visitId);
        last = entry.visitId;
        return !wanted;
    });
}

void keepPromises(std::vector<FollowUp>& promises, const VisitIds& visits)
{
    std::erase_if(promises, [&](const FollowUp& promise) { return !visits.contains(promise.madeAt); });
    for (FollowUp& promise : promises) {
        if (promise.settledAt && !visits.contains(*promise.settledAt)) {
            promise.settledAt.reset();
            promise.settledNote.clear();
        }
    }
}

/// Leaves the visits for which `keep` answers true and what was entered at them.
template <typename KeepVisit> void keepVisits(UnitRecord& record, const KeepVisit& keep)
{
    std::erase_if(record.visits, [&](const Visit& visit) { return !keep(visit); });
    VisitIds visits;
    for (const Visit& visit : record.visits)
        visits.insert(visit.id);
    keepEntries(record.findings, visits);
    keepEntries(record.readings, visits);
    keepEntries(record.treatments, visits);
    keepEntries(record.photos, visits);
    keepEntries(record.charges, visits);
    keepPromises(record.followUps, visits);
}

/// Acknowledgements made by `day`; one taken back later holds on that day.
void keepAcknowledged(std::vector<Acknowledgement>& all, Date day)
{
    std::erase_if(all, [day](const Acknowledgement& one) { return localDate(one.at) > day; });
    for (Acknowledgement& one : all) {
        if (one.takenBackAt && localDate(*one.takenBackAt) > day)
            one.takenBackAt.reset();
    }
}

/// Parts fitted by `day`. Those removed from `stillFitted` on count as fitted.
void keepFitted(std::vector<Part>& parts, Date day, Date stillFitted)
{
    std::erase_if(parts, [day](const Part& part) { return part.fittedOn && *part.fittedOn > day; });
    for (Part& part : parts) {
        if (part.removedOn && *part.removedOn >= stillFitted) {
            part.removedOn.reset();
            part.removedBecause.clear();
        }
    }
}

template <typename Rows, typename Matches> std::size_t placeIn(const Rows& rows, const Matches& matches)
{
    return static_cast<std::size_t>(std::distance(rows.begin(), std::ranges::find_if(rows, matches)));
}

} // namespace

UnitRecord recordAt(UnitRecord record, Date day)
{
    keepVisits(record, [day](const Visit& visit) { return visit.on <= day; });
    keepFitted(record.parts, day, day + std::chrono::days(1));
    keepAcknowledged(record.acknowledgements, day);
    return record;
}

UnitRecord recordBefore(const UnitRecord& record, const Visit& visit)
{
    VisitIds earlier; // visits of one day are in the order of their being opened
    for (const Visit& other : record.visits) {
        if (other.id == visit.id)
            break;
        earlier.insert(other.id);
    }
    UnitRecord kept = record;
    keepVisits(kept, [&](const Visit& other) {
        return other.on < visit.on || (other.on == visit.on && earlier.contains(other.id));
    });
    keepFitted(kept.parts, visit.on, visit.on);
    kept.acknowledgements.clear();
    return kept;
}

void putInCatalogueOrder(std::vector<Part>& parts, const Unit& unit, const Catalogue& catalogue)
{
    const UnitKind* unitKind = catalogue.unitKind(unit.kind);
    const std::vector<UnitKind::Fitted> fitted
        = unitKind != nullptr ? unitKind->parts : std::vector<UnitKind::Fitted>{};
    using Place = std::tuple<std::size_t, std::size_t, std::size_t, std::size_t>;
    std::vector<Place> places; // the last number is where the part stood
    places.reserve(parts.size());
    for (const Part& part : parts) {
        const auto sameKind = [&](const UnitKind::Fitted& one) { return one.partKind == part.kind; };
        const auto samePlace
            = [&](const UnitKind::Fitted& one) { return sameKind(one) && one.position == part.position; };
        places.emplace_back(placeIn(fitted, sameKind),
                            placeIn(catalogue.partKinds(), [&](const PartKind& one) { return one.code == part.kind; }),
                            placeIn(fitted, samePlace), places.size());
    }
    std::ranges::sort(places);
    std::vector<Part> ordered;
    ordered.reserve(parts.size());
    for (const Place& place : places)
        ordered.push_back(std::move(parts[std::get<3>(place)]));
    parts = std::move(ordered);
    for (Part& part : parts) {
        const PartKind* kind = catalogue.partKind(part.kind);
        if (kind == nullptr)
            continue;
        std::ranges::stable_sort(part.zones, {}, [&](const Zone& zone) {
            return placeIn(kind->zones, [&](const ZoneKind& one) { return one.code == zone.kind; });
        });
    }
}

} // namespace padside

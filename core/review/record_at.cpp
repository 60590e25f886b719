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

template <typename AnyEntry>
std::vector<AnyEntry> entriesOf(const VisitIds& visits, const std::vector<AnyEntry>& entries)
{
    std::vector<AnyEntry> kept = standing(entries);
    std::optional<VisitId> last; // entries of one visit mostly stand together: it is looked up once
    bool wanted = false;
    std::erase_if(kept, [&](const AnyEntry& entry) {
        if (last != entry.visitId)
            wanted = visits.contains(entry.visitId);
        last = entry.visitId;
        return !wanted;
    });
    return kept;
}

std::vector<FollowUp> promisesOf(const VisitIds& visits, const std::vector<FollowUp>& promises)
{
    std::vector<FollowUp> kept;
    for (const FollowUp& promise : promises) {
        if (!visits.contains(promise.madeAt))
            continue;
        FollowUp& one = kept.emplace_back(promise);
        if (one.settledAt && !visits.contains(*one.settledAt)) {
            one.settledAt.reset();
            one.settledNote.clear();
        }
    }
    return kept;
}

/// The record with the visits for which `keep` answers true and what was entered at them.
template <typename KeepVisit> UnitRecord withVisits(const UnitRecord& record, const KeepVisit& keep)
{
    UnitRecord kept;
    kept.site = record.site;
    kept.unit = record.unit;
    std::ranges::copy_if(record.visits, std::back_inserter(kept.visits), keep);
    VisitIds visits;
    for (const Visit& visit : kept.visits)
        visits.insert(visit.id);
    kept.findings = entriesOf(visits, record.findings);
    kept.readings = entriesOf(visits, record.readings);
    kept.treatments = entriesOf(visits, record.treatments);
    kept.photos = entriesOf(visits, record.photos);
    kept.charges = entriesOf(visits, record.charges);
    kept.followUps = promisesOf(visits, record.followUps);
    return kept;
}

/// Acknowledgements made by `day`; one taken back later holds on that day.
std::vector<Acknowledgement> acknowledgedBy(const std::vector<Acknowledgement>& all, Date day)
{
    std::vector<Acknowledgement> kept;
    for (const Acknowledgement& acknowledgement : all) {
        if (localDate(acknowledgement.at) > day)
            continue;
        Acknowledgement& one = kept.emplace_back(acknowledgement);
        if (one.takenBackAt && localDate(*one.takenBackAt) > day)
            one.takenBackAt.reset();
    }
    return kept;
}

/// Parts fitted by `day`. Those removed from `stillFitted` on count as fitted.
std::vector<Part> partsFittedBy(const std::vector<Part>& parts, Date day, Date stillFitted)
{
    std::vector<Part> kept;
    for (const Part& part : parts) {
        if (part.fittedOn && *part.fittedOn > day)
            continue;
        Part& one = kept.emplace_back(part);
        if (one.removedOn && *one.removedOn >= stillFitted) {
            one.removedOn.reset();
            one.removedBecause.clear();
        }
    }
    return kept;
}

template <typename Rows, typename Matches> std::size_t placeIn(const Rows& rows, const Matches& matches)
{
    return static_cast<std::size_t>(std::distance(rows.begin(), std::ranges::find_if(rows, matches)));
}

} // namespace

UnitRecord recordAt(const UnitRecord& record, Date day)
{
    UnitRecord kept = withVisits(record, [day](const Visit& visit) { return visit.on <= day; });
    kept.parts = partsFittedBy(record.parts, day, day + std::chrono::days(1));
    kept.acknowledgements = acknowledgedBy(record.acknowledgements, day);
    return kept;
}

UnitRecord recordBefore(const UnitRecord& record, const Visit& visit)
{
    VisitIds earlier; // visits of one day are in the order of their being opened
    for (const Visit& other : record.visits) {
        if (other.id == visit.id)
            break;
        earlier.insert(other.id);
    }
    UnitRecord kept = withVisits(record, [&](const Visit& other) {
        return other.on < visit.on || (other.on == visit.on && earlier.contains(other.id));
    });
    kept.parts = partsFittedBy(record.parts, visit.on, visit.on);
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

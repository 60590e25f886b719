// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/trip_needs.h"

#include "core/catalogue/subject.h"
#include "core/review/parts_to_order.h"

#include <algorithm>

namespace padside {

namespace {

void addOnce(std::vector<std::string>& words, const std::vector<std::string>& more)
{
    for (const std::string& word : more) {
        if (std::ranges::find(words, word) == words.end())
            words.push_back(word);
    }
}

void addForChecklist(std::vector<std::string>& bring, const ReviewedUnit& unit, VisitReason season,
                     const Catalogue& catalogue)
{
    for (const Part& part : unit.fitted) {
        const PartKind* kind = catalogue.partKind(part.kind);
        if (kind == nullptr)
            continue;
        for (const Task& task : kind->tasks) {
            if (task.season == season)
                addOnce(bring, task.bring);
        }
    }
}

/// The worst of the part's zones as they are known today; of one zone if that is given.
std::optional<SeenGrade> worstOf(const ReviewedUnit& unit, PartId part, std::optional<ZoneId> only)
{
    std::optional<SeenGrade> worst;
    for (const ZoneHistory& zone : unit.review.zones) {
        const bool counts = zone.partId == part && (!only || zone.zoneId == *only);
        if (counts && zone.known && (!worst || worst->grade < zone.known->grade))
            worst = zone.known;
    }
    return worst;
}

const Part* partWith(const ReviewedUnit& unit, PartId id)
{
    const auto part = std::ranges::find(unit.fitted, id, &Part::id);
    return part == unit.fitted.end() ? nullptr : &*part;
}

void addForPart(std::vector<std::string>& bring, const SeasonCheck& check, const Catalogue& catalogue)
{
    const Part* part = partWith(*check.unit, *check.check().partId);
    const PartKind* kind = part != nullptr ? catalogue.partKind(part->kind) : nullptr;
    const auto worst = worstOf(*check.unit, *check.check().partId, check.check().zoneId);
    if (kind != nullptr && worst && worst->grade >= Grade::marked)
        addOnce(bring, kind->bring);
}

/// The worst decayed zone of the part; dirt is washed off, not ordered.
const ZoneHistory* worstDecayed(const ReviewedUnit& unit, const Part& part, const Catalogue& catalogue)
{
    const ZoneHistory* worst = nullptr;
    for (const ZoneHistory& history : unit.review.zones) {
        const auto zone = std::ranges::find(part.zones, history.zoneId, &Zone::id);
        if (zone == part.zones.end() || !history.known || history.known->grade < Grade::poor)
            continue;
        const ZoneKind* kind = catalogue.zoneKind(part.kind, zone->kind);
        const bool soils = kind != nullptr && kind->soiling;
        if (!soils && (worst == nullptr || worst->known->grade < history.known->grade))
            worst = &history;
    }
    return worst;
}

Sentence whyOf(const UnitRecord& record, const Catalogue& catalogue, const Part& part, const ZoneHistory& worst,
               const PartKind& kind)
{
    const SeenGrade& known = *worst.known;
    const std::vector<Argument> rest{static_cast<std::int64_t>(numeral(known.grade)),
                                     Word{std::string(wordOf(known.grade))}, known.on,
                                     Word{std::string(wordOf(kind.spare))}};
    const auto subject = subjectOf(record, catalogue, part, findZone(record, worst.zoneId));
    return kind.consequences.contains(Consequence::endsUnit)
        ? about(
            subject,
            PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}. Once spent, this part normally ends the unit; a spare is {6}."),
            rest)
        : about(subject, PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}. A spare is {6}."), rest);
}

} // namespace

TripNeeds tripNeeds(const SeasonTrip& trip, const Catalogue& catalogue)
{
    TripNeeds needs;
    for (const SeasonCheck& check : trip.checks) {
        if (check.check().checklist)
            addForChecklist(needs.bring, *check.unit, *check.check().checklist, catalogue);
        else if (check.check().partId)
            addForPart(needs.bring, check, catalogue);
    }
    for (const auto& unit : trip.units()) {
        UnitRecord named; // as much of a record as it takes to name a part
        named.unit = unit->unit;
        named.parts = unit->fitted;
        for (const Part& part : unit->fitted) {
            const PartKind* kind = catalogue.partKind(part.kind);
            const ZoneHistory* worst = worstDecayed(*unit, part, catalogue);
            if (kind == nullptr || kind->spare == Spare::none)
                continue;
            const auto order = partToOrder(unit, part, catalogue);
            const bool atRisk = order && order->needed <= trip.on;
            if (worst == nullptr && !atRisk)
                continue;
            SpareNeed need{unit, part.id, worst != nullptr ? whyOf(named, catalogue, part, *worst, *kind) : order->why};
            need.made = catalogue.supplyOf(part.kind).made;
            if (order)
                need.orderBy = order->orderBy;
            needs.spares.push_back(std::move(need));
        }
    }
    return needs;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/reviewed_fleet.h"

#include "core/record/reading_order.h"
#include "core/review/record_at.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace padside {

namespace {

bool isBefore(const ReviewedUnit& one, const ReviewedUnit& other)
{
    if (const int bySite = inReadingOrder(one.site.name, other.site.name); bySite != 0)
        return bySite < 0;
    if (one.site.id != other.site.id) // two sites of one name
        return one.site.id < other.site.id;
    return inReadingOrder(one.unit.tag, other.unit.tag) < 0;
}

} // namespace

ReviewedUnit reviewedUnit(UnitRecord record, const Catalogue& catalogue, const OutlookModel& model, Date today)
{
    ReviewedUnit reviewed;
    reviewed.fitted = record.parts;
    std::erase_if(reviewed.fitted, [today](const Part& part) {
        return (part.removedOn && *part.removedOn <= today) || (part.fittedOn && *part.fittedOn > today);
    });
    putInCatalogueOrder(reviewed.fitted, record.unit, catalogue);
    KnownUnit known = knownUnit(std::move(record), catalogue, model, today);
    reviewed.review = review(known, catalogue);
    const std::vector<ZoneChances> zones = zoneChances(known, catalogue);
    reviewed.losses = likelyLosses(known.record, catalogue, zones);
    reviewed.stops = stopChances(known.record, catalogue, zones);
    reviewed.site = std::move(known.record.site);
    reviewed.unit = std::move(known.record.unit);
    return reviewed;
}

void put(ReviewedFleet& fleet, std::vector<std::shared_ptr<const ReviewedUnit>> units,
         const std::vector<UnreadUnit>& unread)
{
    std::set<UnitId> fresh;
    for (const auto& unit : units)
        fresh.insert(unit->unit.id);
    for (const UnreadUnit& unit : unread)
        fresh.insert(unit.unitId);
    std::erase_if(fleet.units, [&](const auto& one) { return fresh.contains(one->unit.id); });
    std::erase_if(fleet.unread, [&](const UnreadUnit& one) { return fresh.contains(one.unitId); });

    const auto inOrder = [](const auto& one, const auto& other) { return isBefore(*one, *other); };
    std::ranges::sort(units, inOrder);
    std::vector<std::shared_ptr<const ReviewedUnit>> merged;
    merged.reserve(fleet.units.size() + units.size());
    std::ranges::merge(fleet.units, units, std::back_inserter(merged), inOrder);
    fleet.units = std::move(merged);
    fleet.unread.insert(fleet.unread.end(), unread.begin(), unread.end());
    fleet.count = std::max(fleet.count, fleet.units.size() + fleet.unread.size());
}

} // namespace padside

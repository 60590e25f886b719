// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/parts_to_order.h"

#include "core/catalogue/subject.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace padside {

namespace {

/// What nobody ever saw is to be looked at before a spare for it is bought.
bool wasSeen(const ReviewedUnit& unit, ZoneId zone)
{
    const auto history = std::ranges::find(unit.review.zones, zone, &ZoneHistory::zoneId);
    return history != unit.review.zones.end() && history->known.has_value();
}

const ZoneRisk* mostPressing(const ReviewedUnit& unit, PartId part)
{
    const ZoneRisk* first = nullptr;
    for (const ZoneRisk& risk : unit.review.risks) {
        if (risk.partId != part || risk.soils || !risk.overOn || risk.toleratedAs == Consequence::looks)
            continue;
        if (!wasSeen(unit, risk.zoneId))
            continue;
        if (first == nullptr || *risk.overOn < *first->overOn)
            first = &risk;
    }
    return first;
}

Sentence whyOf(const ReviewedUnit& unit, const Part& part, const ZoneRisk& risk, const Catalogue& catalogue,
               const Supply& supply)
{
    UnitRecord named; // as much of a record as it takes to name a zone
    named.unit = unit.unit;
    named.parts = unit.fitted;
    const std::vector<Argument> rest{risk.tolerancePercent(), Word{std::string(wordOf(risk.toleratedAs))}, *risk.overOn,
                                     std::int64_t{std::lround(supply.leadDays)}, Chance{risk.course.front().chance}};
    const auto subject = subjectOf(named, catalogue, part, findZone(named, risk.zoneId));
    if (!supply.made) {
        return about(subject,
                     PADSIDE_SAY("{0}{1}, {2}: the chance that it is spent passes {3} % ({4}) on about {5}. No longer "
                                 "made: look for one in time, or for another way."),
                     rest);
    }
    if (*risk.overOn <= unit.review.today) {
        return about(subject,
                     PADSIDE_SAY("{0}{1}, {2}: the chance that it is spent is {7} today, more than the {3} % tolerated "
                                 "({4}). Days a spare takes: about {6}."),
                     rest);
    }
    return about(subject,
                 PADSIDE_SAY("{0}{1}, {2}: the chance that it is spent passes {3} % ({4}) on about {5}. Days a spare "
                             "takes: about {6}."),
                 rest);
}

} // namespace

std::optional<PartToOrder> partToOrder(const std::shared_ptr<const ReviewedUnit>& unit, const Part& part,
                                       const Catalogue& catalogue)
{
    const PartKind* kind = catalogue.partKind(part.kind);
    const ZoneRisk* risk = mostPressing(*unit, part.id);
    if (kind == nullptr || kind->spare == Spare::none || risk == nullptr)
        return std::nullopt;
    const Supply supply = catalogue.supplyOf(part.kind);
    PartToOrder order;
    order.unit = unit;
    order.partId = part.id;
    order.zoneId = risk->zoneId;
    order.chanceToday = risk->course.front().chance;
    order.needed = *risk->overOn;
    order.leadDays = supply.leadDays;
    order.made = supply.made;
    const std::chrono::days lead(static_cast<int>(std::ceil(supply.leadDays)));
    order.orderBy = std::max(unit->review.today, order.needed - lead);
    order.why = whyOf(*unit, part, *risk, catalogue, supply);
    return order;
}

std::vector<PartToOrder> partsToOrder(std::span<const std::shared_ptr<const ReviewedUnit>> units,
                                      const Catalogue& catalogue)
{
    std::vector<PartToOrder> orders;
    for (const auto& unit : units) {
        const bool presses
            = std::ranges::any_of(unit->review.risks, [](const ZoneRisk& risk) { return risk.overOn && !risk.soils; });
        if (!presses)
            continue; // most units of a fleet
        for (const Part& part : unit->fitted) {
            if (auto order = partToOrder(unit, part, catalogue))
                orders.push_back(*std::move(order));
        }
    }
    std::ranges::stable_sort(orders, [](const PartToOrder& one, const PartToOrder& other) {
        return std::pair(one.orderBy, -one.chanceToday) < std::pair(other.orderBy, -other.chanceToday);
    });
    return orders;
}

} // namespace padside

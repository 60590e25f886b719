// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_outlook.h"

#include <algorithm>

namespace padside {

namespace {

Sentence likeliestSentence(const UnitRecord& record, const Catalogue& catalogue, const UnitOutlook& outlook)
{
    if (!outlook.likeliestToStop)
        return {PADSIDE_SAY("No part of this unit is known to stop it."), {}};
    const Part* part = findPart(record, *outlook.likeliestToStop);
    return {PADSIDE_SAY("{0}{1} is the likeliest to stop it by {2}, with a chance of {3}. Parts are taken to fail "
                        "independently of each other."),
            {Word{catalogue.partKind(part->kind)->name}, Bracketed{part->position}, outlook.stops.back().by,
             Chance{outlook.parts.front().chance.back()}}};
}

} // namespace

UnitOutlook unitOutlook(const UnitRecord& record, const Catalogue& catalogue, std::span<const ZoneChances> zones,
                        Date today)
{
    UnitOutlook outlook;
    for (const Part& part : record.parts) {
        const PartKind* kind = catalogue.partKind(part.kind);
        if (kind == nullptr || !stopsUnit(*kind))
            continue;
        if (const auto chances = chancesOfPart(part.id, zones))
            outlook.parts.push_back({part.id, kind->consequences.contains(Consequence::endsUnit), *chances});
    }
    const auto by = horizonsAfter(today);
    const auto stops = stopChances(record, catalogue, zones);
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon)
        outlook.stops.push_back({by[horizon], stops[horizon]});
    if (!outlook.parts.empty()) {
        std::ranges::stable_sort(outlook.parts, std::ranges::greater{},
                                 [](const PartOutlook& part) { return part.chance.back(); });
        outlook.likeliestToStop = outlook.parts.front().partId;
        const auto ending = std::ranges::find(outlook.parts, true, &PartOutlook::endsUnit);
        if (ending != outlook.parts.end())
            outlook.likeliestToEnd = ending->partId;
    }
    outlook.because = likeliestSentence(record, catalogue, outlook);
    return outlook;
}

std::array<double, horizonCount> stopChances(const UnitRecord& record, const Catalogue& catalogue,
                                             std::span<const ZoneChances> zones)
{
    std::array<double, horizonCount> chances{};
    for (std::size_t horizon = 0; horizon < horizonCount; ++horizon) {
        double none = 1;
        for (const ZoneChances& zone : zones) {
            const Part* part = findPart(record, zone.partId);
            const PartKind* kind = part != nullptr ? catalogue.partKind(part->kind) : nullptr;
            if (kind != nullptr && stopsUnit(*kind))
                none *= 1 - zone.spent[horizon];
        }
        chances[horizon] = 1 - none;
    }
    return chances;
}

} // namespace padside

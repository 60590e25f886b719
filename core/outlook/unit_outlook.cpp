// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/unit_outlook.h"

#include "core/outlook/chance_percent.h"

#include <algorithm>

namespace padside {

namespace {

/// Of the unit, from those of its parts, on one of the days.
double anyOf(const std::vector<PartOutlook>& parts, std::size_t day)
{
    double none = 1;
    for (const PartOutlook& part : parts)
        none *= 1 - part.chance[day];
    return 1 - none;
}

PartOutlook partOutlook(const Part& part, const PartKind& kind, std::span<const ZoneBelief> zones,
                        std::span<const Date> by)
{
    PartOutlook outlook;
    outlook.partId = part.id;
    outlook.endsUnit = kind.consequences.contains(Consequence::endsUnit);
    std::vector<double> none(by.size(), 1.0);
    for (const ZoneBelief& zone : zones) {
        if (zone.trail.partId != part.id)
            continue;
        for (std::size_t day = 0; day < by.size(); ++day)
            none[day] *= 1 - chanceSpentBy(zone, by[day]);
    }
    for (const double left : none)
        outlook.chance.push_back(1 - left);
    return outlook;
}

Sentence likeliestSentence(const UnitRecord& record, const Catalogue& catalogue, const UnitOutlook& outlook)
{
    if (!outlook.likeliestToStop)
        return {PADSIDE_SAY("No part of this unit is known to stop it."), {}};
    const Part* part = findPart(record, *outlook.likeliestToStop);
    return {PADSIDE_SAY("{0}{1} is the likeliest to stop it by {2}, with a chance of {3} %. Parts are taken to fail "
                        "independently of each other."),
            {Word{catalogue.partKind(part->kind)->name}, Bracketed{part->position}, outlook.stops.back().by,
             chancePercent(outlook.parts.front().chance.back())}};
}

} // namespace

UnitOutlook unitOutlook(const UnitRecord& record, const Catalogue& catalogue, std::span<const ZoneBelief> zones,
                        std::span<const Date> by)
{
    UnitOutlook outlook;
    for (const Part& part : record.parts) {
        const PartKind* kind = catalogue.partKind(part.kind);
        const bool believed
            = std::ranges::any_of(zones, [&](const ZoneBelief& zone) { return zone.trail.partId == part.id; });
        if (kind != nullptr && believed && stopsUnit(*kind))
            outlook.parts.push_back(partOutlook(part, *kind, zones, by));
    }
    for (std::size_t day = 0; day < by.size(); ++day)
        outlook.stops.push_back({by[day], anyOf(outlook.parts, day)});
    if (!by.empty() && !outlook.parts.empty()) {
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

} // namespace padside

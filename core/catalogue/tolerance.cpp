// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/catalogue.h"

#include <algorithm>

namespace padside {

namespace {

constexpr double leastTolerance = 0.0001;
constexpr double mostTolerance = 0.5;

} // namespace

double Catalogue::spentTolerance(Consequence consequence) const
{
    return std::clamp(assumption("spent-tolerance-" + std::string(codeOf(consequence))), leastTolerance, mostTolerance);
}

Consequence Catalogue::toleratedAs(std::string_view partCode, std::string_view zoneCode) const
{
    const ZoneKind* zone = zoneKind(partCode, zoneCode);
    if (zone != nullptr && zone->toleratedAs)
        return *zone->toleratedAs;
    const PartKind* part = partKind(partCode);
    if (part == nullptr || part->consequences.empty())
        return Consequence::looks;
    // Of several tolerated alike the first one in the order of the list is named.
    return *std::ranges::min_element(part->consequences, {}, [this](Consequence one) { return spentTolerance(one); });
}

} // namespace padside

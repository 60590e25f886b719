// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/cylinder_ledger.h"

#include "core/catalogue/refrigerant.h"
#include "core/ledger/sum_of_masses.h"
#include "core/record/reading_order.h"

#include <algorithm>
#include <tuple>

namespace padside {

void CylinderLedger::take(const UnitRecord& record, Date today)
{
    for (const ChargeEntry& entry : standing(record.charges)) {
        if (entry.on > today || entry.direction == ChargeDirection::lost || !isMassMoved(entry.mass.si))
            continue;
        const auto [place, isNew] = m_moved.try_emplace(std::pair(entry.cylinder, bareDesignation(entry.refrigerant)));
        Moved& moved = place->second;
        moved.names.insert(entry.refrigerant);
        (entry.direction == ChargeDirection::added ? moved.out : moved.into).push_back(entry.mass.si);
        moved.units.insert(record.unit.id);
        moved.first = isNew ? entry.on : std::min(moved.first, entry.on);
        moved.last = isNew ? entry.on : std::max(moved.last, entry.on);
    }
}

std::vector<CylinderLine> CylinderLedger::lines() const
{
    std::map<std::string, int> recoveredSorts; // how many refrigerants went into a cylinder
    for (const auto& [key, moved] : m_moved)
        recoveredSorts[key.first] += moved.into.empty() ? 0 : 1;
    std::vector<CylinderLine> all;
    for (const auto& [key, moved] : m_moved) {
        CylinderLine line;
        line.cylinder = key.first;
        line.refrigerant = *std::ranges::min_element(
            moved.names, [](const auto& one, const auto& other) { return inReadingOrder(one, other) < 0; });
        line.outKg = sumOfMasses(moved.out);
        line.intoKg = sumOfMasses(moved.into);
        line.units = static_cast<int>(moved.units.size());
        line.first = moved.first;
        line.last = moved.last;
        line.mixed = !line.cylinder.empty() && recoveredSorts[line.cylinder] > 1;
        all.push_back(std::move(line));
    }
    std::ranges::stable_sort(all, [](const CylinderLine& one, const CylinderLine& other) {
        const int order = inReadingOrder(one.cylinder, other.cylinder);
        return order != 0 ? order < 0 : inReadingOrder(one.refrigerant, other.refrigerant) < 0;
    });
    return all;
}

Sentence cylinderSentence(const CylinderLine& line)
{
    const std::vector<Argument> arguments{Amount{line.outKg, QuantityKind::mass},
                                          Amount{line.intoKg, QuantityKind::mass},
                                          static_cast<std::int64_t>(line.units), line.first, line.last};
    if (line.mixed) {
        return {
            PADSIDE_SAY("Out of it {0}, into it {1}, at units: {2}, {3} to {4}. Different refrigerants were recovered "
                        "into it: what is in it can't be used again."),
            arguments};
    }
    return {PADSIDE_SAY("Out of it {0}, into it {1}, at units: {2}, {3} to {4}."), arguments};
}

} // namespace padside

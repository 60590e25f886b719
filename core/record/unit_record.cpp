// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/record/unit_record.h"

#include <algorithm>
#include <unordered_set>

namespace padside {

namespace {

/// Corrections are rare: mostly there are none.
template <typename AnyEntry> auto correctedAmong(const std::vector<AnyEntry>& entries)
{
    std::unordered_set<decltype(AnyEntry::id)> corrected;
    for (const AnyEntry& entry : entries) {
        if (entry.correction)
            corrected.insert(entry.correction->of);
    }
    return corrected;
}

template <typename AnyEntry> std::vector<AnyEntry> withoutCorrected(const std::vector<AnyEntry>& entries)
{
    const auto corrected = correctedAmong(entries);
    if (corrected.empty())
        return entries;
    std::vector<AnyEntry> result;
    result.reserve(entries.size());
    std::ranges::copy_if(entries, std::back_inserter(result),
                         [&](const AnyEntry& entry) { return !corrected.contains(entry.id); });
    return result;
}

template <typename AnyEntry> std::vector<const AnyEntry*> withoutCorrectedAmong(const std::vector<AnyEntry>& entries)
{
    const auto corrected = correctedAmong(entries);
    std::vector<const AnyEntry*> result;
    result.reserve(entries.size());
    for (const AnyEntry& entry : entries) {
        if (corrected.empty() || !corrected.contains(entry.id))
            result.push_back(&entry);
    }
    return result;
}

template <typename Rows, typename AnyId> auto find(const Rows& rows, AnyId id) -> decltype(rows.data())
{
    const auto row = std::ranges::find_if(rows, [id](const auto& one) { return one.id == id; });
    return row == rows.end() ? nullptr : &*row;
}

} // namespace

std::vector<Finding> standing(const std::vector<Finding>& entries)
{
    return withoutCorrected(entries);
}
std::vector<Reading> standing(const std::vector<Reading>& entries)
{
    return withoutCorrected(entries);
}
std::vector<Treatment> standing(const std::vector<Treatment>& entries)
{
    return withoutCorrected(entries);
}
std::vector<Photo> standing(const std::vector<Photo>& entries)
{
    return withoutCorrected(entries);
}
std::vector<ChargeEntry> standing(const std::vector<ChargeEntry>& entries)
{
    return withoutCorrected(entries);
}

std::vector<const Finding*> standingAmong(const std::vector<Finding>& entries)
{
    return withoutCorrectedAmong(entries);
}
std::vector<const Reading*> standingAmong(const std::vector<Reading>& entries)
{
    return withoutCorrectedAmong(entries);
}
std::vector<const Treatment*> standingAmong(const std::vector<Treatment>& entries)
{
    return withoutCorrectedAmong(entries);
}

const Part* findPart(const UnitRecord& record, PartId id)
{
    return find(record.parts, id);
}

const Zone* findZone(const UnitRecord& record, ZoneId id)
{
    const Part* part = partOfZone(record, id);
    return part ? find(part->zones, id) : nullptr;
}

const Part* partOfZone(const UnitRecord& record, ZoneId id)
{
    const auto part
        = std::ranges::find_if(record.parts, [id](const Part& one) { return find(one.zones, id) != nullptr; });
    return part == record.parts.end() ? nullptr : &*part;
}

const Visit* findVisit(const UnitRecord& record, VisitId id)
{
    return find(record.visits, id);
}

} // namespace padside

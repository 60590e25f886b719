// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/raise_flags.h"

#include "core/flags/rule.h"

#include <algorithm>

namespace padside {

namespace {

/// A flag and what it is ordered by.
struct Ranked
{
    Flag flag;
    int severity = 0;
    int grade = 0; ///< 0: never seen
};

Ranked ranked(const ZoneView& view, std::string_view rule, Worry worry)
{
    Ranked result;
    result.severity = static_cast<int>(worry.severity);
    result.grade = view.history.known ? numeral(view.history.known->grade) : 0;
    result.flag
        = Flag{std::string(rule),         worry.severity,          view.record.unit.id,      view.part.id, view.zone.id,
               std::move(worry.sentence), std::move(worry.clears), std::move(worry.evidence)};
    return result;
}

} // namespace

std::vector<Flag> raiseFlags(const UnitRecord& record, const Catalogue& catalogue, Date today,
                             std::span<const ZoneHistory> zones)
{
    std::vector<Ranked> raised;
    for (const ZoneHistory& history : zones) {
        const Part* part = findPart(record, history.partId);
        const Zone* zone = part != nullptr ? findZone(record, history.zoneId) : nullptr;
        if (zone == nullptr)
            continue; // a history of another record
        const ZoneView view{record,
                            catalogue,
                            today,
                            *part,
                            *zone,
                            catalogue.partKind(part->kind),
                            catalogue.zoneKind(part->kind, zone->kind),
                            history};
        for (const Rule& rule : allRules()) {
            if (auto worry = rule.judge(view))
                raised.push_back(ranked(view, rule.id, std::move(*worry)));
        }
    }
    std::ranges::stable_sort(raised, [](const Ranked& a, const Ranked& b) {
        return std::pair(a.severity, a.grade) > std::pair(b.severity, b.grade);
    });
    std::vector<Flag> flags;
    flags.reserve(raised.size());
    for (Ranked& one : raised)
        flags.push_back(std::move(one.flag));
    return flags;
}

} // namespace padside

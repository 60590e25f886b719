// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/raise_flags.h"

#include "core/flags/acknowledge.h"
#include "core/flags/rule.h"
#include "core/schedule/next_checks.h"

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

/// Before every grade: a worry about the whole unit stands first among those as severe.
constexpr int wholeUnit = 6;

Ranked ranked(const UnitRecord& record, std::string_view rule, Worry worry)
{
    Ranked result;
    result.severity = static_cast<int>(worry.severity);
    result.grade = worry.grade ? 0 : wholeUnit;
    result.flag.rule = rule;
    result.flag.severity = worry.severity;
    result.flag.unitId = record.unit.id;
    result.flag.sentence = std::move(worry.sentence);
    result.flag.clears = std::move(worry.clears);
    result.flag.evidence = std::move(worry.evidence);
    result.flag.charges = std::move(worry.charges);
    result.flag.readings = std::move(worry.readings);
    result.flag.partId = worry.partId;
    result.flag.aspect = std::move(worry.aspect);
    result.flag.extent = worry.extent;
    result.flag.grade = worry.grade;
    return result;
}

Ranked ranked(const ZoneView& view, std::string_view rule, Worry worry)
{
    Ranked result = ranked(view.record, rule, std::move(worry));
    result.grade = view.history.known ? numeral(view.history.known->grade) : 0;
    result.flag.partId = view.part.id;
    result.flag.zoneId = view.zone.id;
    if (view.history.known)
        result.flag.grade = view.history.known->grade;
    return result;
}

} // namespace

std::vector<Flag> raiseFlags(const UnitRecord& record, const Catalogue& catalogue, Date today,
                             std::span<const ZoneHistory> zones, std::span<const ZoneRisk> risks)
{
    const Date nextVisit = nextVisitBy(record, catalogue, today);
    std::vector<Ranked> raised;
    for (const UnitRule& rule : allUnitRules()) {
        for (Worry& worry : rule.judge(UnitView{record, catalogue, today, zones, risks}))
            raised.push_back(ranked(record, rule.id, std::move(worry)));
    }
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
                            history,
                            riskOf(risks, zone->id),
                            nextVisit};
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
    markAcknowledged(flags, record.acknowledgements, catalogue);
    return flags;
}

} // namespace padside

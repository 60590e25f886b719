// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/last_readings.h"

#include "core/verdict/verdicts.h"

#include <algorithm>

namespace padside {

namespace {

bool tookOne(const UnitView& unit, const Visit& visit, const std::string& kind)
{
    return std::ranges::any_of(unit.record.readings, [&](const Reading& reading) {
        return reading.visitId == visit.id && !reading.zoneId && (kind.empty() || reading.kind == kind);
    });
}

} // namespace

std::optional<LastReadings> lastReadings(const UnitView& unit, const std::string& kind)
{
    if (!kind.empty() && std::ranges::find(unit.record.readings, kind, &Reading::kind) == unit.record.readings.end())
        return std::nullopt; // mostly: not every kind is measured
    const auto& visits = unit.record.visits;
    const auto last
        = std::find_if(visits.rbegin(), visits.rend(), [&](const Visit& visit) { return tookOne(unit, visit, kind); });
    if (last == visits.rend())
        return std::nullopt;
    LastReadings result;
    result.visit = &*last;
    result.verdicts = verdictsOn(measuredAt(unit.record, *last, Phase::asFound, unit.catalogue));
    const bool takenAgain = std::ranges::any_of(unit.record.readings, [&](const Reading& reading) {
        return reading.visitId == last->id && reading.phase == Phase::asLeft;
    });
    if (!takenAgain)
        return result;
    for (Verdict& left : verdictsOn(measuredAt(unit.record, *last, Phase::asLeft, unit.catalogue))) {
        std::erase_if(result.verdicts,
                      [&](const Verdict& found) { return found.code == left.code && found.partId == left.partId; });
        result.verdicts.push_back(std::move(left));
    }
    return result;
}

std::vector<ReadingId> readingsBehind(const UnitView& unit, const Visit& visit, const Verdict& verdict)
{
    std::vector<ReadingId> ids;
    for (const Reading& reading : unit.record.readings) {
        if (reading.visitId == visit.id && std::ranges::find(verdict.from, reading.kind) != verdict.from.end()
            && (!verdict.partId || !reading.partId || verdict.partId == reading.partId))
            ids.push_back(reading.id);
    }
    return ids;
}

} // namespace padside

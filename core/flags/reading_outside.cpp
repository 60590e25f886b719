// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/last_readings.h"
#include "core/flags/rules.h"

namespace padside {

namespace {

/// Has a rule of its own, with other words.
constexpr std::string_view heaterVerdict = "crankcase-heater";

/// How far past its bound, in its own unit.
std::optional<double> distanceOutside(const Verdict& verdict)
{
    if (verdict.value && verdict.lowest && verdict.value->si < verdict.lowest->si)
        return verdict.lowest->si - verdict.value->si;
    if (verdict.value && verdict.highest && verdict.value->si > verdict.highest->si)
        return verdict.value->si - verdict.highest->si;
    return std::nullopt;
}

} // namespace

std::vector<Worry> readingOutside(const UnitView& unit)
{
    std::vector<Worry> worries;
    const auto last = lastReadings(unit);
    if (!last)
        return worries;
    for (const Verdict& verdict : last->verdicts) {
        if (verdict.judgement != Judgement::outside || verdict.code == heaterVerdict)
            continue;
        Worry worry;
        worry.severity = Severity::plan;
        worry.sentence = verdict.sentence;
        worry.clears = {PADSIDE_SAY("Measured again, inside its limit; last measured on {0}."), {last->visit->on}};
        worry.partId = verdict.partId;
        worry.aspect = verdict.code;
        worry.extent = distanceOutside(verdict);
        worry.readings = readingsBehind(unit, *last->visit, verdict);
        worries.push_back(std::move(worry));
    }
    return worries;
}

} // namespace padside

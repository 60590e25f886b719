// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/last_readings.h"
#include "core/flags/rules.h"

#include <algorithm>

namespace padside {

std::vector<Worry> crankcaseHeaterCold(const UnitView& unit)
{
    const auto last = lastReadings(unit, "shell-temperature");
    if (!last)
        return {};
    const auto cold = std::ranges::find(last->verdicts, "crankcase-heater", &Verdict::code);
    if (cold == last->verdicts.end() || cold->judgement != Judgement::outside)
        return {};
    Worry worry;
    worry.severity = Severity::plan;
    worry.sentence
        = {PADSIDE_SAY("Crankcase heater cold on {0}: the compressor shell was only {1} warmer than the air. "
                       "Liquid in the oil at the first cold start can end the compressor."),
           {last->visit->on, *cold->value}};
    worry.clears
        = {PADSIDE_SAY("The shell measured warm with the heater on for 12 hours, or the heater replaced."), {}};
    worry.partId = cold->partId;
    worry.readings = readingsBehind(unit, *last->visit, *cold);
    return {worry};
}

} // namespace padside

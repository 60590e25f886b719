// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

namespace padside {

std::optional<Worry> endOfUnitPartPoor(const ZoneView& zone)
{
    const auto& known = zone.history.known;
    const bool endsUnit = zone.takesWithIt(Consequence::endsUnit);
    const bool noSpare = zone.kind != nullptr && zone.kind->spare == Spare::none;
    if (!known || known->grade < Grade::poor || zone.soils() || (!endsUnit && !noSpare))
        return std::nullopt;
    const std::vector<Argument> rest{numeralOf(known->grade), nameOf(known->grade), known->on};
    Worry worry;
    worry.severity = known->grade == Grade::spent ? Severity::act : Severity::plan;
    worry.sentence = endsUnit
        ? about(subjectOf(zone),
                PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}. Once spent, this part normally ends the unit."), rest)
        : about(subjectOf(zone), PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}. No separate spare is made for this part."),
                rest);
    worry.clears = Sentence{PADSIDE_SAY("Repaired and left at {0} {1} or better, or the part replaced."),
                            {numeralOf(Grade::marked), nameOf(Grade::marked)}};
    worry.evidence = {known->findingId};
    return worry;
}

} // namespace padside

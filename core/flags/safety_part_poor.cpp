// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

namespace padside {

std::optional<Worry> safetyPartPoor(const ZoneView& zone)
{
    const auto& known = zone.history.known;
    if (!known || known->grade < Grade::poor || zone.soils() || !zone.takesWithIt(Consequence::safety))
        return std::nullopt;
    Worry worry;
    worry.severity = Severity::act;
    worry.sentence
        = about(subjectOf(zone), PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}, and its failure can hurt someone."),
                {numeralOf(known->grade), nameOf(known->grade), known->on});
    worry.clears = Sentence{PADSIDE_SAY("Made good and left at {0} {1} or better, or the part replaced."),
                            {numeralOf(Grade::marked), nameOf(Grade::marked)}};
    worry.evidence = {known->findingId};
    return worry;
}

} // namespace padside

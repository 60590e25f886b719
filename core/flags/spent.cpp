// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

namespace padside {

std::optional<Worry> spent(const ZoneView& zone)
{
    const auto& known = zone.history.known;
    if (!known || known->grade != Grade::spent)
        return std::nullopt;
    const std::vector<Argument> rest{numeralOf(known->grade), nameOf(known->grade), known->on};
    Worry worry;
    worry.severity = Severity::act;
    if (zone.soils()) {
        worry.sentence = about(subjectOf(zone),
                               PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}. Clean it before the unit runs on."), rest);
        worry.clears = Sentence{PADSIDE_SAY("Cleaned and left better."), {}};
    } else {
        worry.sentence = about(
            subjectOf(zone),
            PADSIDE_SAY("{0}{1}, {2}: {3} {4} on {5}. Repair or replace it, or take the unit out of service."), rest);
        worry.clears = Sentence{PADSIDE_SAY("Repaired and left better, or the part replaced."), {}};
    }
    worry.evidence = {known->findingId};
    return worry;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/measured_zone.h"
#include "core/flags/rules.h"
#include "core/flags/wording.h"

namespace padside {

std::optional<Worry> wallNearMinimum(const ZoneView& zone)
{
    const auto measure = zoneMeasure(zone.record, zone.catalogue, zone.part, zone.zone, "wall-thickness");
    if (!measure || !measure->wall)
        return std::nullopt;
    const Judgement judgement = measure->verdict.judgement;
    if (judgement != Judgement::outside && judgement != Judgement::watch)
        return std::nullopt;
    const Amount wall{measure->wall->thicknessM, QuantityKind::length};
    const Amount asked{measure->wallAsked->metres, QuantityKind::length};
    Worry worry;
    if (judgement == Judgement::outside) {
        worry.severity = Severity::act;
        worry.sentence = about(subjectOf(zone),
                               PADSIDE_SAY("{0}{1}, {2}: the wall of {3} is not more than the {4} that must be left. "
                                           "While charged, keep clear of it; a licensed technician decides."),
                               {wall, asked});
    } else {
        worry.severity = Severity::plan;
        worry.sentence
            = about(subjectOf(zone),
                    PADSIDE_SAY("{0}{1}, {2}: the wall of {3} reaches the {4} that must be left in about {5} "
                                "years."),
                    {wall, asked, Number{*measure->wall->remainingYears, 1}});
    }
    worry.clears
        = {PADSIDE_SAY("The part replaced; or measured again at the bare spot with a rate that leaves longer."), {}};
    worry.extent = asked.si / wall.si; // the less is left, the larger
    worry.readings = readingsOf(zone, "wall-thickness");
    return worry;
}

} // namespace padside

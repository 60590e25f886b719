// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

#include <algorithm>

namespace padside {

namespace {

const Finding* findingOf(const ZoneView& zone, FindingId id)
{
    const auto found = std::ranges::find(zone.record.findings, id, &Finding::id);
    return found == zone.record.findings.end() ? nullptr : &*found;
}

bool coatedSince(const ZoneView& zone, Date day)
{
    return std::ranges::any_of(zone.record.treatments, [&](const Treatment& work) {
        return work.kind == TreatmentKind::brushAndCoat && work.on >= day && work.partId == zone.part.id
            && (!work.zoneId || work.zoneId == zone.zone.id);
    });
}

/// A zone of the catalogue that does not die of rust; of zones of the person's own it is not known.
bool isKnownNotToRust(const ZoneView& zone)
{
    return zone.zoneKind != nullptr && !zone.catalogue.outlook().corrodes(zone.part.kind, zone.zone.kind);
}

} // namespace

std::optional<Worry> wetAndBare(const ZoneView& zone)
{
    const auto& seen = zone.history.lastSeen;
    if (zone.soils() || isKnownNotToRust(zone) || !seen || numeral(seen->grade) < numeral(Grade::marked))
        return std::nullopt;
    const Finding* finding = findingOf(zone, seen->findingId);
    if (finding == nullptr || !finding->wetness || *finding->wetness == Wetness::dry || coatedSince(zone, seen->on))
        return std::nullopt;
    Worry worry;
    worry.severity = Severity::look;
    worry.sentence
        = about(subjectOf(zone),
                PADSIDE_SAY("{0}{1}, {2}: found {3} at {4} {5} on {6} and not coated since; what is wet "
                            "and bare goes on rusting."),
                {Word{std::string(wordOf(*finding->wetness))}, numeralOf(seen->grade), nameOf(seen->grade), seen->on});
    worry.clears = {PADSIDE_SAY("Found dry, or brushed and coated."), {}};
    worry.evidence = {seen->findingId};
    return worry;
}

} // namespace padside

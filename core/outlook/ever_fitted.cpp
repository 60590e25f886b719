// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/ever_fitted.h"

#include <unordered_set>

namespace padside {

std::vector<ZoneTrail> trailsOfEverFitted(const UnitRecord& record, const Catalogue& catalogue, Date today)
{
    UnitRecord closed;
    closed.site = record.site;
    closed.unit = record.unit;
    closed.parts = record.parts;
    closed.visits = record.visits;
    closed.findings = record.findings;
    closed.treatments = record.treatments;
    std::unordered_set<VisitId> open;
    for (const Visit& visit : record.visits) {
        if (visit.isOpen())
            open.insert(visit.id);
    }
    const auto isOpen = [&](const auto& entry) { return open.contains(entry.visitId); };
    std::erase_if(closed.findings, isOpen);
    std::erase_if(closed.treatments, isOpen);
    for (Part& part : closed.parts)
        part.removedOn.reset();
    return zoneTrails(closed, catalogue, today);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_review.h"

#include "core/flags/raise_flags.h"
#include "core/outlook/zone_belief.h"
#include "core/review/record_at.h"
#include "core/schedule/next_checks.h"

namespace padside {

UnitReview review(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model, Date today)
{
    UnitRecord known = recordAt(record, today);
    putInCatalogueOrder(known.parts, known.unit, catalogue);

    const std::vector<ZoneBelief> beliefs = zoneBeliefs(known, catalogue, model, today);
    UnitReview result;
    result.unitId = record.unit.id;
    result.today = today;
    result.zones = zoneHistories(known);
    if (!known.unit.retiredOn || *known.unit.retiredOn > today)
        result.flags = raiseFlags(known, catalogue, today, result.zones);
    result.checks = nextChecks(known, catalogue, today, result.zones);
    return result;
}

} // namespace padside

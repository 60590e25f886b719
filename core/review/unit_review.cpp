// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_review.h"

#include "core/flags/raise_flags.h"
#include "core/outlook/zone_risk.h"
#include "core/review/record_at.h"
#include "core/schedule/next_checks.h"

namespace padside {

UnitReview review(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model, Date today)
{
    UnitRecord known = recordAt(record, today);
    putInCatalogueOrder(known.parts, known.unit, catalogue);

    UnitReview result;
    result.unitId = record.unit.id;
    result.today = today;
    result.zones = zoneHistories(known);
    if (known.unit.retiredOn && *known.unit.retiredOn <= today)
        return result; // nothing is asked of it any more
    result.risks = zoneRisks(zoneBeliefs(known, catalogue, model, today), catalogue);
    result.flags = raiseFlags(known, catalogue, today, result.zones, result.risks);
    result.checks = nextChecks(known, catalogue, today, result.zones, result.risks);
    return result;
}

} // namespace padside

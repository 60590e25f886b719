// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_review.h"

#include "core/flags/raise_flags.h"
#include "core/outlook/zone_risk.h"
#include "core/schedule/next_checks.h"

namespace padside {

UnitReview review(const KnownUnit& known, const Catalogue& catalogue)
{
    const UnitRecord& record = known.record;
    UnitReview result;
    result.unitId = record.unit.id;
    result.today = known.today;
    result.zones = zoneHistories(record);
    if (known.isRetired())
        return result; // nothing is asked of it any more
    result.risks = zoneRisks(known.beliefs, catalogue);
    result.flags = raiseFlags(record, catalogue, known.today, result.zones, result.risks);
    result.checks = nextChecks(record, catalogue, known.today, result.zones, result.risks);
    return result;
}

UnitReview review(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model, Date today)
{
    return review(knownUnit(record, catalogue, model, today), catalogue);
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/known_unit.h"

#include "core/review/record_at.h"

#include <utility>

namespace padside {

KnownUnit knownUnit(UnitRecord record, const Catalogue& catalogue, const OutlookModel& model, Date today)
{
    KnownUnit known{recordAt(std::move(record), today), today, {}};
    putInCatalogueOrder(known.record.parts, known.record.unit, catalogue);
    if (!known.isRetired())
        known.beliefs = zoneBeliefs(known.record, catalogue, model, today);
    return known;
}

} // namespace padside

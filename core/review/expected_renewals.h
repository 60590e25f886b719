// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/zone_belief.h"

#include <span>
#include <vector>

namespace padside {

constexpr int monthsAYear = 12;

/// One part and the beliefs of its zones that decay; dirt is no reason for a new part.
struct DecayingPart
{
    const Part* part = nullptr;
    const PartKind* kind = nullptr;
    std::vector<const ZoneBelief*> zones; ///< never empty
};

/// The fitted parts of known kinds, in the record's order. Record, catalogue and beliefs outlive it.
[[nodiscard]] std::vector<DecayingPart> decayingParts(const UnitRecord& record, const Catalogue& catalogue,
                                                      std::span<const ZoneBelief> beliefs);

/// That one of its zones is spent by a day; they are taken to fail independently.
[[nodiscard]] double chanceSpentBy(const DecayingPart& part, Date by);

/// How fast the zone's clock runs once what coats it has is over, everything else staying as it was last found.
[[nodiscard]] double bareSpeed(const ZoneBelief& zone);

/// How often in each of `years` years the part is expected to be spent, each time a new one of its kind taking its
/// place: the renewal function of elementary renewal theory in yearly steps. What is spent today counts in the first.
[[nodiscard]] std::vector<double> expectedRenewals(const DecayingPart& part, const OutlookModel& model, Date today,
                                                   int years);

/// The same of a part that is new today, at the same place.
[[nodiscard]] std::vector<double> expectedRenewalsOfNew(const DecayingPart& part, const OutlookModel& model, int years);

/// Renewals in each step, from the chance that the first one is spent by the end of each step and that of all later
/// ones. Both rise, and are equally long.
[[nodiscard]] std::vector<double> renewals(std::span<const double> firstSpentBy, std::span<const double> nextSpentBy);

} // namespace padside

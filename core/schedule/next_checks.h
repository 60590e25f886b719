// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/zone_risk.h"
#include "core/record/unit_record.h"
#include "core/schedule/check.h"
#include "core/trend/zone_history.h"

#include <span>
#include <vector>

namespace padside {

/// When each zone of the fitted parts is to be looked at again: by the last day on which the chance that it is spent
/// unseen is within its tolerance, never later than 12 months after it was last seen (or its grade's own months), dry
/// if it was wet, at the next season's visit if it was not seen. A look in vain never makes it later. Zones of one unit
/// that wait for the same routine look or were never seen, and zones of one part with the same reason and windows that
/// meet, share one check.
[[nodiscard]] std::vector<Check> zoneChecks(const UnitRecord& record, const Catalogue& catalogue, Date today,
                                            std::span<const ZoneHistory> zones, std::span<const ZoneRisk> risks);

/// When each measured wall of the fitted parts is to be measured again: half of its remaining life after the last
/// reading, capped (see WallOutlook). Left out while its window opens more than a year from today.
[[nodiscard]] std::vector<Check> wallChecks(const UnitRecord& record, const Catalogue& catalogue, Date today);

/// The next spring and the next fall checklist of the unit's fitted parts, one check each. A checklist missed stays
/// overdue until the other season begins; then it rolls forward and says since when it was due.
[[nodiscard]] std::vector<Check> checklistChecks(const UnitRecord& record, const Catalogue& catalogue, Date today);

/// What a person promised to look at and has not settled. Promises about parts since removed are left out.
[[nodiscard]] std::vector<Check> promisedChecks(const UnitRecord& record, const Catalogue& catalogue);

/// All of the above by latest date, then earliest; none for a retired unit. The record holds standing entries up to
/// `today`, `zones` are its histories.
[[nodiscard]] std::vector<Check> nextChecks(const UnitRecord& record, const Catalogue& catalogue, Date today,
                                            std::span<const ZoneHistory> zones, std::span<const ZoneRisk> risks);

/// By when the next visit is to be expected: the end of the season whose checklist is due first; one overdue, today.
[[nodiscard]] Date nextVisitBy(const UnitRecord& record, const Catalogue& catalogue, Date today);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/site_season.h"

#include <memory>
#include <span>
#include <vector>

namespace padside {

/// What of a unit should have been looked at before today.
struct OverdueUnit
{
    std::shared_ptr<const ReviewedUnit> unit;
    std::vector<SeasonCheck> checks; ///< what presses most first; at least one
    double pressure = 0; ///< of the first
};

/// How much is overdue.
struct OverdueCount
{
    std::size_t checks = 0;
    std::size_t units = 0; ///< that have one or more
};

/// How much a check presses on a day: of the zones it looks at, the chance that one is spent by then, in multiples of
/// what is tolerated for it. Over 1: past the tolerance. 0 for what looks at no zone the outlook knows.
[[nodiscard]] double pressureOf(const SeasonCheck& check, Date on);

/// Whether `one` presses more than `other` on a day; where neither does, the one that was due first.
[[nodiscard]] bool pressesMore(const SeasonCheck& one, const SeasonCheck& other, Date on);

/// How much of these units' checks is overdue.
[[nodiscard]] OverdueCount overdueCount(std::span<const std::shared_ptr<const ReviewedUnit>> units, Date today);

/// The units with something overdue, the one whose first check presses most first.
[[nodiscard]] std::vector<OverdueUnit> overdueUnits(std::span<const std::shared_ptr<const ReviewedUnit>> units,
                                                    Date today);

} // namespace padside

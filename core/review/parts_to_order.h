// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/review/reviewed_fleet.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace padside {

/// A part a spare is needed for in time.
struct PartToOrder
{
    std::shared_ptr<const ReviewedUnit> unit;
    PartId partId;
    ZoneId zoneId; ///< the one that presses most
    Date orderBy{}; ///< not before today: the lead time before `needed`
    double chanceToday = 0; ///< that it is spent already, 0..1
    Date needed{}; ///< the first day on which the chance that it is spent is over its tolerance
    double leadDays = 0; ///< an assumption of the catalogue
    bool made = true; ///< false: no longer made
    Sentence why;

    friend bool operator==(const PartToOrder&, const PartToOrder&) = default;
};

/// Whether and by when a spare is to be ordered for this fitted part; empty where its chance of being spent stays
/// within its tolerance for the months that risks are looked into, where no spare is made of its kind at all, and where
/// only looks suffer.
[[nodiscard]] std::optional<PartToOrder> partToOrder(const std::shared_ptr<const ReviewedUnit>& unit, const Part& part,
                                                     const Catalogue& catalogue);

/// All such parts of these units, by the day to order by; of one day the likeliest to be spent first, then by unit and
/// part as they come. Retired units have none.
[[nodiscard]] std::vector<PartToOrder> partsToOrder(std::span<const std::shared_ptr<const ReviewedUnit>> units,
                                                    const Catalogue& catalogue);

} // namespace padside

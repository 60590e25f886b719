// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/unit_record.h"
#include "core/review/likely_loss.h"
#include "core/review/unit_outlook.h"
#include "core/review/unit_review.h"

#include <memory>
#include <string>
#include <vector>

namespace padside {

/// One unit and what its record means today, without the record itself: thousands of them fit into memory.
struct ReviewedUnit
{
    Site site;
    Unit unit;
    std::vector<Part> fitted; ///< parts fitted today, in the catalogue's order
    UnitReview review;
    LikelyLosses losses{}; ///< what a failure would cost and how likely it is
    std::array<double, horizonCount> stops{}; ///< chance that it stops by then

    friend bool operator==(const ReviewedUnit&, const ReviewedUnit&) = default;
};

/// A unit whose record could not be read, and why.
struct UnreadUnit
{
    UnitId unitId;
    std::string tag;
    Sentence because;

    friend bool operator==(const UnreadUnit&, const UnreadUnit&) = default;
};

/// All units of a file reviewed on one day, or as many as have been so far.
struct ReviewedFleet
{
    Date today{};
    std::vector<std::shared_ptr<const ReviewedUnit>> units; ///< by site name, then tag; retired ones too
    std::vector<UnreadUnit> unread;
    std::size_t count = 0; ///< units there are in the file

    [[nodiscard]] bool isWhole() const { return units.size() + unread.size() >= count; }
};

/// The record's unit reviewed, ready for a fleet.
[[nodiscard]] ReviewedUnit reviewedUnit(UnitRecord record, const Catalogue& catalogue, const OutlookModel& model,
                                        Date today);

/// Puts units in their places and notes those that could not be read; earlier reviews of the same units go.
void put(ReviewedFleet& fleet, std::vector<std::shared_ptr<const ReviewedUnit>> units,
         const std::vector<UnreadUnit>& unread = {});

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit.h" // before id.h, for moc
#include "core/review/reviewed_fleet.h"

#include <QString>

#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <stop_token>

namespace padside {

/// Some units reviewed, on their way from the background to the window.
struct ReviewBatch
{
    int round = 0;
    bool ofAll = false; ///< part of a review of all units
    bool last = false;
    Date today{};
    std::size_t count = 0; ///< units there are in the file
    std::vector<std::shared_ptr<const ReviewedUnit>> units;
    std::vector<UnreadUnit> unread;
    std::optional<Sentence> failure; ///< the file can't be read
};

/// What to review, and whom to give it to. Nothing of the window's thread is touched.
struct BackgroundReview
{
    QString path;
    const Catalogue& catalogue;
    std::shared_ptr<const OutlookModel> outlook; ///< never null
    Date today{};
    std::set<UnitId> only; ///< empty: all
    int round = 0;
    std::stop_token stop;
    std::function<void(ReviewBatch)> handOver; ///< called from the thread that runs the review
};

/// Reads and reviews with a store of its own, handing over a batch from time to time and one at the end, the last. It
/// does not throw: a unit that can't be read is in the batch, a file that can't is the last one's failure.
void runInBackground(const BackgroundReview& work);

} // namespace padside

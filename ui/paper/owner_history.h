// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "core/review/unit_forecast.h"
#include "core/review/unit_review.h"
#include "core/review/unit_worth.h"
#include "ui/paper/paper_painter.h"

#include <QString>

#include <memory>

namespace padside {

/// What an owner's history is made from, all as of `today`. Catalogue and speaker outlive it and the document, whose
/// drawings say their words while they are painted.
struct OwnerHistoryInput
{
    UnitRecord record;
    UnitReview review;
    UnitForecast forecast;
    UnitWorth worth;
    const Catalogue& catalogue;
    const Speaker& speaker; ///< the reader's language and units
    QString contractor; ///< at the head of the page; may be empty
    PaperSize size = PaperSize::a4;
    Date today{};
    std::shared_ptr<const OutlookModel> outlook{}; ///< the timeline's lanes run on by it; null: they end today
};

/// One unit's history for the person who owns it: what it is, what comes next, whether it is worth carrying on, its
/// worst places through the years, its timeline, what was done and spent each year, cautions. What is entered later
/// than `today` is left out.
[[nodiscard]] PaperDocument layOwnerHistory(const OwnerHistoryInput& input);

/// "HB-03 owner's history.pdf".
[[nodiscard]] QString ownerHistoryFileName(const UnitRecord& record);

} // namespace padside

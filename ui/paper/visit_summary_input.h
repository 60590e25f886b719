// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"
#include "core/review/unit_forecast.h"
#include "core/review/unit_review.h"
#include "ui/paper/paper_painter.h"

#include <QString>

namespace padside {

/// What a visit summary is made from. Catalogue and speaker outlive it.
struct SummaryInput
{
    UnitRecord record;
    UnitReview review; ///< as of the day of the visit, or of today
    VisitId visit; ///< in the record
    const Catalogue& catalogue;
    const Speaker& speaker; ///< the reader's language and units
    PhotoSource photos; ///< may be empty: the frames then say that the picture can't be read
    QString contractor; ///< may be empty
    PaperSize size = PaperSize::a4;
    Date printedOn{};
    UnitForecast forecast{}; ///< as of the day of the review; empty: nothing is said of what comes
};

} // namespace padside

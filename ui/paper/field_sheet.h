// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/record/unit_record.h"
#include "core/review/unit_review.h"
#include "ui/paper/paper_block.h"

namespace padside {

class Speaker;

/// What a field sheet is made from. Catalogue and speaker outlive it.
struct FieldSheetInput
{
    UnitRecord record;
    UnitReview review; ///< as of the day of printing
    VisitReason reason = VisitReason::spring; ///< decides which readings are asked for
    const Catalogue& catalogue;
    const Speaker& speaker;
    Date printedOn{};
};

/// A blank sheet for logging one visit with a pencil: each zone of the fitted parts with its last grade and day, boxes
/// for today's grade or not seen, for wet, damp and dry, and a line for a note; the season's readings with the last
/// value and a line; cautions.
[[nodiscard]] PaperContent fieldSheetContent(const FieldSheetInput& input, const QString& contractor);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/review/trip_needs.h"
#include "ui/paper/paper_block.h"

namespace padside {

class Speaker;

/// What a day's sheet is made from. Catalogue and speaker outlive it.
struct DaySheetInput
{
    Site site;
    SeasonTrip trip;
    std::vector<UnitRecord> records; ///< of the trip's units
    const Catalogue& catalogue;
    const Speaker& speaker;
    QString day; ///< with its weekday
    Date printedOn{};
};

/// One trip for the road: where, how to get in and whom to ask; what to bring and to order; the units in order, each
/// with its checks, why, until when and under which conditions; what was left open; cautions.
[[nodiscard]] PaperContent daySheetContent(const DaySheetInput& input, const QString& contractor);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/outlook_model.h"
#include "core/record/unit_record.h"
#include "ui/paper/paper_sheet.h"

#include <memory>

namespace padside {

class Speaker;

/// What a printed history is made from. Record, catalogue and speaker outlive it.
struct HistoryInput
{
    const UnitRecord& record;
    const Catalogue& catalogue;
    const Speaker& speaker; ///< must also outlive the document, which says its words while it is painted
    PaperSize size = PaperSize::a4;
    Date today{};
    std::shared_ptr<const OutlookModel> outlook = {}; ///< of what may come; without, nothing is said of it
};

/// A unit's timeline on landscape pages, painted as on the screen: parts go to the next page as a whole, the lanes of
/// the whole unit head every page, the legend stands at its foot.
[[nodiscard]] PaperDocument layHistory(const HistoryInput& input);

/// "HB-03 history.pdf"; signs that a file's name can't hold are left out.
[[nodiscard]] QString historyFileName(const UnitRecord& record);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "tests/support/record_builder.h"
#include "ui/paper/visit_summary.h"
#include "ui/paper/visit_summary_content.h"

namespace padside::test {

/// The catalogue as shipped.
[[nodiscard]] const Catalogue& shipped();

/// A unit with two earlier visits and an ordinary one on 2026-05-04: 25 findings, 8 readings, 3 treatments, 9
/// photographs.
[[nodiscard]] UnitRecord ordinaryRecord();

/// A unit whose visit on 2026-05-04 found `changes` zones one grade worse.
[[nodiscard]] UnitRecord recordWithChanges(int changes);

/// The summary of the record's last visit, with `flags` flags and `checks` checks, in plain English.
[[nodiscard]] SummaryInput summaryOf(UnitRecord record, int flags = 0, int checks = 0);

/// A picture that differs from photo to photo.
[[nodiscard]] QImage drawnPhoto(PhotoId id);

/// The block of this sort with this heading, or nullptr.
template <typename Block> [[nodiscard]] const Block* blockCalled(const PaperContent& content, const QString& heading)
{
    for (const PaperBlock& block : content.blocks) {
        const Block* found = std::get_if<Block>(&block);
        if (found && found->heading == heading)
            return found;
    }
    return nullptr;
}

} // namespace padside::test

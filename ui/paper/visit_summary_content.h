// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/review/visit_changes.h"
#include "ui/paper/paper_block.h"
#include "ui/paper/part_words.h"
#include "ui/paper/visit_summary_input.h"

#include <QCoreApplication>

namespace padside {

/// The visit summary as blocks, in the order in which they are printed: title, what changed, note, flags, readings,
/// work done, refrigerant, what is expected, photographs, next checks, cautions, signatures. A block with nothing to
/// say is left out; what changed and the cautions are always there. The visit must be in the record (assert).
[[nodiscard]] PaperContent visitSummaryContent(const SummaryInput& input);

/// The same with the changes given.
[[nodiscard]] PaperContent visitSummaryContent(const SummaryInput& input, const VisitChanges& changes);

/// The summary's own texts, for the translators: SummaryText::tr("…").
struct SummaryText
{
    Q_DECLARE_TR_FUNCTIONS(VisitSummary)
};

/// What the sections are written from.
struct SummaryView
{
    const SummaryInput& input;
    const VisitChanges& changes;
    const Visit& visit;
    PartWords words;
};

// The sections, each in a file with its kin.
[[nodiscard]] TitleBlock titleSection(const SummaryView& view);
[[nodiscard]] TableBlock changedSection(const SummaryView& view);
[[nodiscard]] TableBlock flagsSection(const SummaryView& view);
[[nodiscard]] TableBlock readingsSection(const SummaryView& view);
[[nodiscard]] TableBlock meaningSection(const SummaryView& view);
[[nodiscard]] TableBlock workSection(const SummaryView& view);
[[nodiscard]] TableBlock refrigerantSection(const SummaryView& view);
[[nodiscard]] PhotoBlock photoSection(const SummaryView& view);
[[nodiscard]] OutlookBlock outlookSection(const SummaryView& view);
[[nodiscard]] TableBlock nextChecksSection(const SummaryView& view);
[[nodiscard]] TableBlock cautionsSection(const SummaryView& view);

} // namespace padside

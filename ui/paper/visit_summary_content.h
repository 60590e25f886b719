// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/review/visit_changes.h"
#include "ui/paper/paper_block.h"
#include "ui/paper/part_words.h"
#include "ui/paper/visit_summary_input.h"

#include <QCoreApplication>

namespace padside {

/// The visit summary as blocks, in the order in which they are printed: title, note, flags, work done, refrigerant,
/// what is expected, photographs, next checks, what changed, readings and what they mean, cautions, signatures. A block
/// with nothing to say is left out; what changed and the cautions are always there. The visit must be in the record
/// (assert).
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

/// What a customer can take in of the flags: the gravest of each zone, the gravest zones first, and together all that
/// was long unseen. The record keeps every flag.
struct ToldFlags
{
    std::vector<const Flag*> each;
    std::vector<const Flag*> longUnseen; ///< told in one row
    std::size_t leftOut = 0;

    [[nodiscard]] bool hasZone(const ZoneId& zone) const; ///< whether one of `each` is about it
};
[[nodiscard]] ToldFlags toldFlags(const SummaryView& view);

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

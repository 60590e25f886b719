// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/owner_history.h"
#include "ui/paper/paper_block.h"
#include "ui/paper/part_words.h"

#include <QCoreApplication>

namespace padside {

/// The owner's history as blocks, in the order in which they are printed.
[[nodiscard]] PaperContent ownerHistoryContent(const OwnerHistoryInput& input);

/// Its own texts, for the translators.
struct OwnerText
{
    Q_DECLARE_TR_FUNCTIONS(OwnerHistory)
};

/// What the sections are written from; the record is cut at `today`.
struct OwnerView
{
    const OwnerHistoryInput& input;
    const UnitRecord& record;
    PartWords words;
};

/// An amount of the person's own money, as the reader's side writes it.
[[nodiscard]] QString moneyText(const OwnerView& view, double amount);

// The sections, each in a file with its kin.
[[nodiscard]] DrawingBlock unitPicture(const OwnerView& view);
[[nodiscard]] DrawingBlock timelinePicture(const OwnerView& view);
[[nodiscard]] TableBlock comesNextSection(const OwnerView& view);
[[nodiscard]] std::vector<PaperBlock> worthSections(const OwnerView& view);
[[nodiscard]] PhotoRowsBlock photoYearsSection(const OwnerView& view);
[[nodiscard]] TableBlock yearsSection(const OwnerView& view);

} // namespace padside

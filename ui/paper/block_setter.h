// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/page_flow.h"
#include "ui/paper/paper_sheet.h"

namespace padside {

/// A piece of a page: its runs from (0, 0) and how it flows.
struct SetItem
{
    std::vector<Run> runs;
    FlowItem flow;
};

/// All blocks of a document set in one column of width `width`, not yet on pages.
struct SetBlocks
{
    std::vector<SetItem> items;
    std::vector<SetItem> heads; ///< repeated where a table goes on: heading with "continued", column titles
};

/// Sets the blocks in type. No item is taller than half of `pageHeight`, unless a single picture is.
[[nodiscard]] SetBlocks setBlocks(const std::vector<PaperBlock>& blocks, double width, double pageHeight);

} // namespace padside

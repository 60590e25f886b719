// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <span>
#include <vector>

namespace padside {

/// A piece of a document that is not cut. Any unit of length, the same for all.
struct FlowItem
{
    double height = 0;
    double spaceBefore = 0; ///< left out at the top of a page
    bool keepWithNext = false; ///< a heading, a table head: never the last on its page
    std::optional<std::size_t> head; ///< index into `heads`: repeated above this item if it begins a page
};

/// Where an item, or a repeated head, stands.
struct PlacedItem
{
    std::size_t index = 0; ///< into the items, or into the heads
    bool repeatedHead = false;
    double top = 0; ///< from the top of the page's text area

    friend bool operator==(const PlacedItem&, const PlacedItem&) = default;
};

using FlowPage = std::vector<PlacedItem>;

/// Places items in order on pages of `pageHeight`. Items linked by keepWithNext stay on one page while they fit on one
/// at all. `heads` gives the heights of heads to repeat. An item taller than a page less its head can't be placed
/// within the page: the caller cuts it before; it gets a page to itself. No items: no pages.
[[nodiscard]] std::vector<FlowPage> flowPages(std::span<const FlowItem> items, std::span<const double> heads,
                                              double pageHeight);

} // namespace padside

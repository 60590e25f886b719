// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/paper/block_setter.h"

namespace padside {

/// Room above a block.
constexpr double spaceBeforeBlock = 28;
/// Headings hang in a column of their own, left of what they head.
constexpr double headingColumn = 300;
constexpr double markWidth = 46;
constexpr double markHeight = 38;

/// Sets a table: its heading hanging at the left with the first row, one item per row, its head to be repeated.
void setTable(const TableBlock& table, double width, double pageHeight, SetBlocks& into);

/// Cuts an item taller than `limit` between its lines; what can't be cut stays whole.
[[nodiscard]] std::vector<SetItem> cutToHeight(SetItem item, double limit);

/// Moves `runs` and puts them behind those of `into`.
void append(std::vector<Run>& into, const std::vector<Run>& runs, double dx, double dy);

} // namespace padside

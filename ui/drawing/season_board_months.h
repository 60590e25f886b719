// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/season_board.h"

#include <QFontMetricsF>
#include <QStringList>

#include <vector>

namespace padside {

/// What stands above the weeks of one month.
struct MonthHead
{
    int week = 0; ///< the first of its weeks
    double room = 0; ///< width of its weeks, in pixels
    QString text; ///< empty: there is no room for it
};

/// A head for each month on the board, the first for what is left of its month. Where a year begins its number stands
/// too, in two figures rather than not at all.
[[nodiscard]] std::vector<MonthHead> monthHeads(const BoardGeometry& geometry, const QStringList& months,
                                                const QFontMetricsF& metrics);

[[nodiscard]] Date dayOfWeek(const BoardGeometry& geometry, int week); ///< its Monday
[[nodiscard]] bool beginsMonth(const BoardGeometry& geometry, int week); ///< never the board's first week

} // namespace padside

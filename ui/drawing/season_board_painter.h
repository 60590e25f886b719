// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "ui/drawing/season_board.h"

#include <QStringList>

class QPainter;

namespace padside {

struct Theme;

/// A trip on its way to another day.
struct BoardMove
{
    BoardPlace trip;
    Date to{};
    bool costs = false; ///< something would be late, too early, or need a trip more
};

/// What is painted.
struct BoardPicture
{
    const SeasonBoard& board;
    const BoardGeometry& geometry;
    const Theme& theme;
    QStringList months; ///< short names of the twelve months
    std::optional<BoardPlace> selected;
    std::optional<BoardMove> move;
};

/// The weeks and marks of the rows from `first` to `last`, without names. The painter's origin is the board's corner.
void paintBoardRows(QPainter& painter, const BoardPicture& picture, std::size_t first, std::size_t last);

/// The names of these rows, on an opaque ground: weeks may scroll below them.
void paintBoardNames(QPainter& painter, const BoardPicture& picture, std::size_t first, std::size_t last);

/// Months, the first day of each week, and how many trips each week has.
void paintBoardHeader(QPainter& painter, const BoardPicture& picture);

} // namespace padside

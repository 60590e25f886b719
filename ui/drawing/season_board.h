// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/schedule/trips.h"

#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

namespace padside {

/// One trip on the board.
struct BoardTrip
{
    Date on{};
    int checks = 0;
    bool overdue = false; ///< serves something that was due before today
    bool late = false; ///< moved beyond the latest day of a check
    bool moved = false; ///< a person chose the day: moved it there, or keeps it
};

/// One site: its line of weeks.
struct BoardRow
{
    QString site;
    std::vector<Window> seasons; ///< its spring and fall weeks
    std::vector<BoardTrip> trips; ///< by date
};

/// A year of weeks, a line for each site.
struct SeasonBoard
{
    Date today{};
    std::vector<BoardRow> rows;
};

/// Which trip: its row, and its place in the row.
struct BoardPlace
{
    std::size_t row = 0;
    std::size_t trip = 0;

    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the comparison with zero inside for a pointer's
    friend auto operator<=>(const BoardPlace&, const BoardPlace&) = default;
};

/// Where everything stands, in pixels from the board's upper left corner, before scrolling.
struct BoardGeometry
{
    Date firstMonday{}; ///< of the week before this one, so that today is not at the edge
    int weeks = 54; ///< a year and the weeks around it
    double names = 150; ///< width of the column of names
    double header = 60; ///< height of months, weeks and trips a week
    double week = 16; ///< width of a week
    double leastRow = 30; ///< the least height of a row, by which marks are sized
    double row = 30; ///< height of a row

    [[nodiscard]] double width() const { return names + weeks * week; }
    [[nodiscard]] double height(const SeasonBoard& board) const
    {
        return header + static_cast<double>(board.rows.size()) * row;
    }
    /// The left edge of a day.
    [[nodiscard]] double xOf(Date day) const;
    /// The day under x; days before the first or after the last week are those at the edge.
    [[nodiscard]] Date dayAt(double x) const;
    [[nodiscard]] Date lastDay() const { return firstMonday + std::chrono::days(7 * weeks - 1); }
    [[nodiscard]] double top(std::size_t site) const { return header + static_cast<double>(site) * row; }
    /// The mark of a trip, centred on its day.
    [[nodiscard]] QRectF mark(std::size_t site, Date on) const;
    /// The trip whose mark is under the point; the nearest one where marks overlap.
    [[nodiscard]] std::optional<BoardPlace> tripAt(const SeasonBoard& board, const QPointF& point) const;
};

/// The board's geometry for a text size and a width to fill: all weeks if they are then wide enough for a count.
[[nodiscard]] BoardGeometry boardGeometry(const SeasonBoard& board, double textSize, double names, double width);

/// Rows grow into a height that would stay empty, up to what the eye still follows from name to mark.
void fillHeight(BoardGeometry& geometry, const SeasonBoard& board, double height);

/// The trips of all sites in each week.
[[nodiscard]] std::vector<int> tripsByWeek(const SeasonBoard& board, const BoardGeometry& geometry);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/season_board.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace padside {

namespace {

constexpr int daysInWeek = 7;

Date mondayOf(Date day)
{
    const std::chrono::weekday weekday(day);
    return day - (weekday - std::chrono::Monday);
}

} // namespace

double BoardGeometry::xOf(Date day) const
{
    return names + static_cast<double>((day - firstMonday).count()) * week / daysInWeek;
}

Date BoardGeometry::dayAt(double x) const
{
    const auto days = static_cast<int>(std::floor((x - names) * daysInWeek / week));
    return std::clamp(firstMonday + std::chrono::days(days), firstMonday, lastDay());
}

QRectF BoardGeometry::mark(std::size_t site, Date on) const
{
    const double height = std::floor(leastRow * 0.66);
    const double width = std::floor(leastRow * 0.8);
    const double centre = xOf(on) + week / daysInWeek / 2;
    return {std::floor(centre - width / 2), std::floor(top(site) + (row - height) / 2), width, height};
}

std::optional<BoardPlace> BoardGeometry::tripAt(const SeasonBoard& board, const QPointF& point) const
{
    if (point.y() < header || point.x() < names)
        return std::nullopt;
    const auto line = static_cast<std::size_t>((point.y() - header) / row);
    if (line >= board.rows.size())
        return std::nullopt;
    std::optional<BoardPlace> nearest;
    double best = 0;
    const auto& trips = board.rows[line].trips;
    for (std::size_t i = 0; i < trips.size(); ++i) {
        // As high as the row, and as wide as a narrow one is high: the mark itself is small for a finger.
        const double distance = std::abs(mark(line, trips[i].on).center().x() - point.x());
        if (distance <= leastRow / 2 && (!nearest || distance < best)) {
            nearest = BoardPlace{line, i};
            best = distance;
        }
    }
    return nearest;
}

BoardGeometry boardGeometry(const SeasonBoard& board, double textSize, double names, double width)
{
    BoardGeometry geometry;
    geometry.firstMonday = mondayOf(board.today) - std::chrono::days(daysInWeek);
    geometry.names = std::floor(names);
    geometry.leastRow = std::floor(textSize * 2.2);
    geometry.row = geometry.leastRow;
    geometry.header = std::floor(textSize * 4.6);
    geometry.week = std::max(std::floor(textSize * 1.15), (width - geometry.names) / geometry.weeks);
    return geometry;
}

void fillHeight(BoardGeometry& geometry, const SeasonBoard& board, double height)
{
    constexpr double mostOfLeast = 1.8;
    if (board.rows.empty())
        return;
    const double share = std::floor((height - geometry.header) / static_cast<double>(board.rows.size()));
    geometry.row = std::clamp(share, geometry.leastRow, std::floor(geometry.leastRow * mostOfLeast));
}

std::vector<int> tripsByWeek(const SeasonBoard& board, const BoardGeometry& geometry)
{
    std::vector<int> counts(static_cast<std::size_t>(geometry.weeks));
    for (const BoardRow& row : board.rows) {
        for (const BoardTrip& trip : row.trips) {
            const auto days = (trip.on - geometry.firstMonday).count();
            if (days >= 0 && days < std::int64_t{daysInWeek} * geometry.weeks)
                ++counts[static_cast<std::size_t>(days / daysInWeek)];
        }
    }
    return counts;
}

} // namespace padside

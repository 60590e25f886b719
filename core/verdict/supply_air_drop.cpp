// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/supply_air_drop.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace padside {

namespace {

// °F, as printed. Title 24 RA3.2, extract, from memory.
constexpr std::array dryBulbs{70.0, 72.0, 75.0, 78.0, 80.0};
constexpr std::array wetBulbs{57.0, 59.0, 61.0, 63.0, 65.0, 67.0, 69.0};
constexpr std::array<std::array<double, wetBulbs.size()>, dryBulbs.size()> drops{{
    {19.1, 18.2, 17.2, 15.9, 14.4, 12.8, 11.0},
    {20.2, 19.3, 18.2, 17.0, 15.5, 13.9, 12.1},
    {21.9, 21.0, 19.9, 18.6, 17.2, 15.5, 13.7},
    {23.5, 22.6, 21.5, 20.2, 18.8, 17.2, 15.4},
    {24.6, 23.7, 22.6, 21.3, 19.9, 18.3, 16.4},
}};

constexpr double printedEdge = 1e-6; // °F; 75 °F in kelvin and back is not quite 75

/// Where a value lies in a rising row of numbers: the index below it and the share of the way to the next.
template <std::size_t size>
std::optional<std::pair<std::size_t, double>> placeIn(const std::array<double, size>& row, double value)
{
    if (!(value >= row.front() - printedEdge && value <= row.back() + printedEdge))
        return std::nullopt;
    const double inside = std::clamp(value, row.front(), row.back());
    std::size_t below = 0;
    while (below + 2 < size && row[below + 1] <= inside)
        ++below;
    return std::pair{below, (inside - row[below]) / (row[below + 1] - row[below])};
}

double fahrenheit(double kelvin)
{
    return kelvin * 1.8 - 459.67;
}

} // namespace

std::optional<double> targetSupplyAirDropK(double returnDryBulbK, double returnWetBulbK)
{
    const auto dry = placeIn(dryBulbs, fahrenheit(returnDryBulbK));
    const auto wet = placeIn(wetBulbs, fahrenheit(returnWetBulbK));
    if (!dry || !wet)
        return std::nullopt;
    const auto [row, down] = *dry;
    const auto [column, across] = *wet;
    const auto along = [column = column, across = across](const auto& cells) {
        return cells[column] * (1 - across) + cells[column + 1] * across;
    };
    return (along(drops[row]) * (1 - down) + along(drops[row + 1]) * down) / 1.8;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/refrigerant/superheat_chart.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace padside {

namespace {

constexpr int dash = -1; ///< "do not charge"
constexpr double firstRowF = 55; // outdoor dry bulb
constexpr double rowStepF = 5;
constexpr double firstColumnF = 50; // return wet bulb
constexpr double columnStepF = 2;

using ChartRow = std::array<int, 14>;

// One print has 26 at 80/70; its own Celsius copy (13.9 °C) and a second print say 25. Two printings differ by 1 °F in
// several cells of rows 55, 100 and 115.
constexpr std::array chart{
    ChartRow{9, 12, 14, 17, 20, 23, 26, 29, 32, 35, 37, 40, 42, 45}, // 55
    ChartRow{7, 10, 12, 15, 18, 21, 24, 27, 30, 33, 35, 38, 40, 43}, // 60
    ChartRow{dash, 6, 10, 13, 16, 19, 21, 24, 27, 30, 33, 36, 38, 41}, // 65
    ChartRow{dash, dash, 7, 10, 13, 16, 19, 21, 24, 27, 30, 33, 36, 39}, // 70
    ChartRow{dash, dash, dash, 6, 9, 12, 15, 18, 21, 24, 28, 31, 34, 37}, // 75
    ChartRow{dash, dash, dash, dash, 5, 8, 12, 15, 18, 21, 25, 28, 31, 35}, // 80
    ChartRow{dash, dash, dash, dash, dash, dash, 8, 11, 15, 19, 22, 26, 30, 33}, // 85
    ChartRow{dash, dash, dash, dash, dash, dash, 5, 9, 13, 16, 20, 24, 27, 31}, // 90
    ChartRow{dash, dash, dash, dash, dash, dash, dash, 6, 10, 14, 18, 22, 25, 29}, // 95
    ChartRow{dash, dash, dash, dash, dash, dash, dash, dash, 8, 12, 15, 20, 23, 27}, // 100
    ChartRow{dash, dash, dash, dash, dash, dash, dash, dash, 5, 9, 13, 17, 22, 26}, // 105
    ChartRow{dash, dash, dash, dash, dash, dash, dash, dash, dash, 6, 11, 15, 20, 25}, // 110
    ChartRow{dash, dash, dash, dash, dash, dash, dash, dash, dash, dash, 8, 14, 18, 23}, // 115
};

/// A place along one side of the chart: the line before it and the share of the way to the next.
struct Place
{
    std::size_t line = 0;
    double share = 0;
};

std::optional<Place> placeOf(double valueF, double firstF, double stepF, std::size_t lines)
{
    // 62 °F that went through kelvin is still 62 °F.
    constexpr double sameLine = 1e-6;
    double place = (valueF - firstF) / stepF;
    if (std::abs(place - std::round(place)) < sameLine)
        place = std::round(place);
    if (!(place >= 0) || place > static_cast<double>(lines - 1))
        return std::nullopt;
    const double line = std::floor(place);
    return Place{static_cast<std::size_t>(line), place - line};
}

} // namespace

std::optional<double> chartSuperheatF(double returnWetBulbF, double outdoorDryBulbF)
{
    const auto row = placeOf(outdoorDryBulbF, firstRowF, rowStepF, chart.size());
    const auto column = placeOf(returnWetBulbF, firstColumnF, columnStepF, chart.front().size());
    if (!row || !column)
        return std::nullopt;
    double superheat = 0;
    for (const std::size_t down : {0U, 1U}) {
        for (const std::size_t right : {0U, 1U}) {
            const double weight
                = (down == 1 ? row->share : 1 - row->share) * (right == 1 ? column->share : 1 - column->share);
            if (weight == 0)
                continue; // not beside the point, perhaps not in the chart
            const int cell = chart.at(row->line + down).at(column->line + right);
            if (cell == dash)
                return std::nullopt;
            superheat += weight * cell;
        }
    }
    return superheat;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <optional>
#include <string_view>

namespace padside {

/// The superheat a fixed orifice should show at the suction service port, by both ways in use, in K. They differ by up
/// to 3.6 K (6.5 °F) in hot, damp conditions; the maker's own chart goes before either.
struct TargetSuperheat
{
    double byFormulaK = 0; ///< (3 WB - 80 - DB) / 2 in °F; below leastTargetK (also below 0) there is no valid test
    std::optional<double> byChartK; ///< empty where the printed chart has a dash, beside a dash, or no row or column
};

/// A target below this (5 °F) is no valid test: change the load indoors or come back on another day (California 2008
/// Residential Appendices, RA3).
constexpr double leastTargetK = 5.0 * 5 / 9;

constexpr std::string_view targetFormulaSource = "rule of thumb as taught in the trade; common practice";
constexpr std::string_view targetChartSource
    = "superheat charging table for split systems as printed in two public installation manuals";

/// Both targets from the wet bulb of the return air and the dry bulb outdoors, K. The chart is read between its rows (5
/// °F) and columns (2 °F) by straight lines, and only where all the cells beside the point hold a number. A Problem for
/// what is no number or outside -50 to 80 °C.
[[nodiscard]] Result<TargetSuperheat> targetSuperheat(double returnWetBulbK, double outdoorDryBulbK);

} // namespace padside

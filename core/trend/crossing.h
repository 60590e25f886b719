// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/trend/theil_sen.h"

#include <optional>

namespace padside {

/// Which way a value runs into its limit.
enum class LimitSide {
    highest, ///< the value may not rise above it (a rust share)
    lowest, ///< the value may not fall below it (a wall, a capacitor)
};

/// When a series meets a limit, in the series' own time. Never a single date: the best guess lies between early and
/// late. An empty `late` (or `best`, or `early`) means that this slope does not lead to the limit at all.
struct Crossing
{
    std::optional<double> early; ///< by the 95 % slope limit that is worst
    std::optional<double> best; ///< by the Theil-Sen slope
    std::optional<double> late; ///< by the 95 % slope limit that is mildest

    friend bool operator==(const Crossing&, const Crossing&) = default;
};

/// Where the lines of the three slopes through the series' medians meet the limit. Times may lie before the last point:
/// the line has met the limit already, whatever the last value says.
[[nodiscard]] Crossing crossingOf(const TheilSen& trend, double limit, LimitSide side);

} // namespace padside

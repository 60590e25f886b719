// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <span>

namespace padside {

/// After how many years keeping a thing costs least per year, and what.
struct EconomicLife
{
    int years = 0;
    double annualCost = 0; ///< equivalent, at the rate asked for
};

/// `first` is paid today; `running[k]` in year k + 1; `salvage[k]` comes in when it is given up after year k + 1. Both
/// of the same length, at least one year. A textbook reckoning (equivalent uniform annual cost).
[[nodiscard]] Result<EconomicLife> economicLife(double first, std::span<const double> running,
                                                std::span<const double> salvage, double rate);

} // namespace padside

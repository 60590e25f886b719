// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <span>

namespace padside {

constexpr double mostYears = 200; ///< of any reckoning of money here
constexpr double highestYearlyRate = 1; ///< 100 % a year

/// What one unit of money a year, or once, is worth; the usual factors of compound-interest tables. `rate` is the
/// interest of one year, more than -1 is not asked for: 0 to 1; `years` above 0, not more than 200, and need not be
/// whole. Anything else is a Problem. Formulas: NIST Handbook 135; at a rate of 0 their limits.
struct InterestFactors
{
    double capitalRecovery = 0; ///< yearly payment that pays 1 back: i(1+i)^n / ((1+i)^n - 1)
    double seriesPresentWorth = 0; ///< today's worth of 1 a year, paid at each year's end
    double seriesCompoundAmount = 0; ///< what 1 a year has grown to at the end
    double singlePresentWorth = 0; ///< today's worth of 1 at the end
    double singleCompoundAmount = 0; ///< what 1 today has grown to at the end
};
[[nodiscard]] Result<InterestFactors> interestFactors(double rate, double years);

/// Today's worth of a yearly cost of 1 that grows by `growth` a year (the first payment has grown once): the modified
/// uniform present value of NIST Handbook 135. Both rates 0 to 1 (growth from -0.5).
[[nodiscard]] Result<double> growingPresentWorth(double rate, double growth, double years);

/// Today's worth of payments at the ends of years 1, 2, 3, …
[[nodiscard]] Result<double> presentWorth(std::span<const double> payments, double rate);

/// The same every year for as long: present worth times capital recovery.
[[nodiscard]] Result<double> equivalentAnnualCost(std::span<const double> payments, double rate);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/belief.h"

#include <optional>

namespace padside {

/// The chance of being spent after `exposureYears` more (finite, >= 0), 0..1.
[[nodiscard]] double chanceSpentAfter(const Belief& belief, const PacedChain& chain, double exposureYears);
[[nodiscard]] double chanceSpentAfter(const Belief& belief, const Rates& rates, double exposureYears);

/// The years of exposure from now after which the chance of being spent reaches `chance` (0 < chance < 1), to about
/// 1e-12 of it; 0 where it is that likely already; empty where it never gets so likely or takes over 1e15 years.
[[nodiscard]] std::optional<double> exposureToSpent(const Belief& belief, const PacedChain& chain, double chance);
[[nodiscard]] std::optional<double> exposureToSpent(const Belief& belief, const Rates& rates, double chance);

/// The years to a chance of 10, 50 and 90 %.
struct PassageRange
{
    std::optional<double> early;
    std::optional<double> middle;
    std::optional<double> late;
};

[[nodiscard]] PassageRange exposureRangeToSpent(const Belief& belief, const PacedChain& chain);
[[nodiscard]] PassageRange exposureRangeToSpent(const Belief& belief, const Rates& rates);

} // namespace padside

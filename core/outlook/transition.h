// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/rates.h"

#include <array>

namespace padside {

/// The chance of each grade after `years` of exposure, from each grade, in the chain that only goes up, one grade at a
/// time: the exponential of its generator. Made of sums and products of positive numbers only, so that small chances
/// keep their relative accuracy (about 1e-13) and rates may coincide, be zero or differ by many orders. `years` must be
/// finite and >= 0, and rate times years below 1e15.
[[nodiscard]] Transition transitionAfter(const Rates& rates, double years);

/// A transition and its derivatives by the four rates.
struct TransitionSlopes
{
    Transition chance{};
    std::array<Transition, 4> slope{}; ///< [k] is by the rate out of grade k + 1; years
};

/// The same chances with their derivatives; the derivatives are accurate to about 1e-12 of the largest of them.
[[nodiscard]] TransitionSlopes transitionSlopesAfter(const Rates& rates, double years);

/// Over twice the time of `half`.
[[nodiscard]] Transition squared(const Transition& half);

/// Staying where one is has a closed form: set after each squaring it stops rounding errors from doubling.
void setStaying(Transition& chance, const Rates& rates, double years);

} // namespace padside

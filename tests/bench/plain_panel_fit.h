// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/panel_fit.h"

#include <span>

namespace padside::bench {

/// The same maximum by the means at hand to anyone: every step by itself, the transition by a general 5x5 matrix
/// exponential (scaling, Taylor, squaring), slopes by central differences, Newton's method on the logarithms with the
/// outer products of the slopes for a curvature.
struct PlainFit
{
    Rates rates{};
    double minusTwoLogLikelihood = 0;
    int rounds = 0;
};

[[nodiscard]] PlainFit fitPlainly(std::span<const PanelStep> steps);

} // namespace padside::bench

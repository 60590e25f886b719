// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/panel_fit.h"

#include <array>
#include <span>
#include <vector>

namespace padside {

/// All steps of one length: how many there were from each grade to each.
struct PanelCounts
{
    double years = 0;
    std::array<std::array<double, gradeCount>, gradeCount> steps{};
};

/// The steps sorted by their length, so that each length needs one transition. Problem: see fitPanel().
[[nodiscard]] Result<std::vector<PanelCounts>> countPanel(std::span<const PanelStep> steps);

/// What the counts can say of each rate, before any fitting.
[[nodiscard]] std::array<RateKnowledge, 4> knowableRates(std::span<const PanelCounts> counts);

/// A first guess: how often each grade was left, over the years spent in it if a step's time is shared evenly among the
/// grades it touched.
[[nodiscard]] Rates roughRates(std::span<const PanelCounts> counts);

} // namespace padside

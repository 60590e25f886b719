// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <vector>

namespace padside {

/// How many nodes the pace is carried on unless told otherwise.
constexpr int usualPaceNodes = 15;
constexpr int mostPaceNodes = 64;

/// The pace of zones of one kind before anything is seen of them: this zone's own multiplier on the rates of its kind.
struct Pace
{
    std::vector<double> pace; ///< rising
    std::vector<double> weight; ///< adding up to 1
};

/// A log-normal pace with mean 1 on Gauss-Hermite nodes: m = exp(-sigma²/2 + sqrt(2) sigma x), weights w/sqrt(pi). A
/// sigma of 0 makes all zones of one pace. Problem: sigma outside 0..3, fewer than 1 or more than mostPaceNodes nodes.
[[nodiscard]] Result<Pace> logNormalPace(double sigma, int nodes = usualPaceNodes);

} // namespace padside

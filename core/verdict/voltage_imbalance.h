// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <array>

namespace padside {

/// Largest departure of a line-to-line voltage from their mean, as a share of the mean (NEMA MG-1: 14.36). 0 or more.
/// Voltages in V, above 0; anything else is a Problem.
[[nodiscard]] Result<double> voltageImbalance(const std::array<double, 3>& volts);

} // namespace padside

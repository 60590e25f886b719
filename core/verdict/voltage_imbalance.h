// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <array>

namespace padside {

/// Largest departure of one phase from the mean of the three, as a share of the mean (NEMA MG-1: 14.36, for
/// line-to-line voltages; the trade reckons currents alike). 0 or more. Values above 0; anything else is a Problem.
[[nodiscard]] Result<double> imbalanceOf(const std::array<double, 3>& phases);

} // namespace padside

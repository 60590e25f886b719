// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/voltage_imbalance.h"

#include <algorithm>
#include <cmath>

namespace padside {

Result<double> imbalanceOf(const std::array<double, 3>& phases)
{
    double sum = 0;
    for (const double one : phases) {
        if (!(one > 0) || !std::isfinite(one))
            return problem(ProblemKind::badInput, PADSIDE_SAY("An imbalance needs three values above zero."));
        sum += one;
    }
    const double mean = sum / static_cast<double>(phases.size());
    double worst = 0;
    for (const double one : phases)
        worst = std::max(worst, std::abs(one - mean));
    return worst / mean;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#include "core/verdict/voltage_imbalance.h"

#include <algorithm>
#include <cmath>

namespace padside {

Result<double> voltageImbalance(const std::array<double, 3>& volts)
{
    double sum = 0;
    for (const double one : volts) {
        if (!(one > 0) || !std::isfinite(one))
            return problem(ProblemKind::badInput,
                           PADSIDE_SAY("Three voltages above zero are needed for an imbalance."));
        sum += one;
    }
    const double mean = sum / static_cast<double>(volts.size());
    double worst = 0;
    for (const double one : volts)
        worst = std::max(worst, std::abs(one - mean));
    return worst / mean;
}

} // namespace padside

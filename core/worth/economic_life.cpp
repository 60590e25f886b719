// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/economic_life.h"

#include "core/worth/compound_interest.h"

namespace padside {

Result<EconomicLife> economicLife(double first, std::span<const double> running, std::span<const double> salvage,
                                  double rate)
{
    if (running.empty() || running.size() != salvage.size()) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("Each year needs a running cost and a value at its end, for one year at least."));
    }
    EconomicLife best;
    double runningWorth = 0;
    for (std::size_t index = 0; index < running.size(); ++index) {
        const auto factors = interestFactors(rate, static_cast<double>(index + 1));
        if (!factors)
            return tl::unexpected(factors.error());
        runningWorth += running[index] * factors->singlePresentWorth;
        const double worth = first + runningWorth - salvage[index] * factors->singlePresentWorth;
        const double annual = worth * factors->capitalRecovery;
        if (best.years == 0 || annual < best.annualCost)
            best = {static_cast<int>(index + 1), annual};
    }
    return best;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/trail.h"
#include "core/quantity/problem.h"

#include <functional>
#include <memory>
#include <span>

namespace padside {

/// The rates of one part kind as a person's own records have moved them.
struct LearntRates
{
    Rates rates{};
    Rates prior{};
    std::array<double, 4> factor{}; ///< rates over prior
    std::array<double, 4> logSigma{}; ///< what spread is left, of the logarithms; the prior's where nothing was learned
    std::size_t zones = 0; ///< zones with at least one step
    std::size_t sightings = 0; ///< gradings in them
    int rounds = 0; ///< of the ascent
};

/// The likeliest rates given all these zones' whole records (the likelihood of everything seen, over grade and pace)
/// and a log-normal prior around `prior` with a spread of `logSigma`: maximum a posteriori, by BFGS on the logarithms.
/// Without records it is the prior. Zones are taken as independent. Problem: a prior rate or spread that is not above 0
/// and finite, or an ascent that does not settle. `goOn`, if given, is asked again and again; once it answers false the
/// work is dropped: a Problem too.
[[nodiscard]] Result<LearntRates> learnRates(std::span<const ZoneSteps> zones, const Rates& prior, double logSigma,
                                             const std::shared_ptr<const Pace>& pace,
                                             const std::function<bool()>& goOn = {});

} // namespace padside

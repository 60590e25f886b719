// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/learn_rates.h"
#include "core/outlook/outlook_model.h"
#include "core/outlook/zone_trail.h"

#include <functional>
#include <map>
#include <span>
#include <string>
#include <utility>
#include <vector>

namespace padside {

/// What was learned of the zones of one part kind that decay, or of those that get dirty.
struct LearntKind
{
    std::string partKind;
    bool soils = false;
    std::size_t zonesMet
        = 0; ///< with at least one step; of more than the learner keeps, every second, fourth, … is used
    Result<LearntRates> learnt; ///< a Problem where the ascent did not settle: the prior stays
};

/// Gathers the trails of all units, one unit after the other, and learns rates from them, part kind by part kind. The
/// work grows with the zones kept: some 10 ms for each zone with twenty visits.
class RateLearner
{
public:
    explicit RateLearner(std::size_t mostZonesOfAKind = 500);

    void add(std::span<const ZoneTrail> unit);

    /// Around the prior rates of `priors`; kinds in order of code. `tell`, if given, gets the share of zones done and
    /// answers false to stop: then what is not yet learned is left out.
    [[nodiscard]] std::vector<LearntKind> learn(const OutlookModel& priors, double logSigma,
                                                const std::function<bool(double)>& tell = {}) const;

private:
    struct Kept
    {
        std::vector<ZoneSteps> zones;
        std::size_t met = 0;
        std::size_t stride = 1; ///< every so many zones one is kept
    };

    std::size_t m_most;
    std::map<std::pair<std::string, bool>, Kept> m_kept;
};

/// Puts what was learned into a model in the place of its priors.
void useLearntRates(OutlookModel& model, std::span<const LearntKind> learnt);

} // namespace padside

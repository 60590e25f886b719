// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/outlook/rate_learner.h"

#include <algorithm>

namespace padside {

RateLearner::RateLearner(std::size_t mostZonesOfAKind)
    : m_most(std::max<std::size_t>(2, mostZonesOfAKind))
{
}

void RateLearner::add(std::span<const ZoneTrail> unit)
{
    for (const ZoneTrail& zone : unit) {
        if (zone.steps.empty())
            continue;
        Kept& kept = m_kept[{zone.partKind, zone.soils}];
        if (kept.met++ % kept.stride != 0)
            continue;
        kept.zones.push_back({zone.steps, zone.fittedOn.has_value()});
        if (kept.zones.size() <= m_most)
            continue;
        // Every second one goes, so that those kept stay spread over all units.
        for (std::size_t place = 0; 2 * place < kept.zones.size(); ++place) {
            if (place > 0)
                kept.zones[place] = std::move(kept.zones[2 * place]);
        }
        kept.zones.resize((kept.zones.size() + 1) / 2);
        kept.stride *= 2;
    }
}

std::vector<LearntKind> RateLearner::learn(const OutlookModel& priors, double logSigma,
                                           const std::function<bool(double)>& tell) const
{
    double all = 0;
    for (const auto& [kind, kept] : m_kept)
        all += static_cast<double>(kept.zones.size());
    double done = 0;
    std::function<bool()> goOn;
    if (tell)
        goOn = [&] { return tell(done / all); };
    std::vector<LearntKind> learnt;
    for (const auto& [kind, kept] : m_kept) {
        const auto& [partKind, soils] = kind;
        auto rates = learnRates(kept.zones, priors.ratesOf(partKind, soils), logSigma, priors.pace(), goOn);
        if (goOn && !goOn())
            break;
        learnt.push_back({partKind, soils, kept.met, std::move(rates)});
        done += static_cast<double>(kept.zones.size());
    }
    return learnt;
}

void useLearntRates(OutlookModel& model, std::span<const LearntKind> learnt)
{
    for (const LearntKind& kind : learnt) {
        if (kind.learnt)
            model.setRates(kind.partKind, kind.soils, kind.learnt->rates);
    }
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/leak_rate.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace padside {

namespace {

bool isMass(double kilograms)
{
    return std::isfinite(kilograms) && kilograms >= 0;
}

/// A share, unless the figures are so far out that it is none.
std::optional<double> finite(double share)
{
    return std::isfinite(share) ? std::optional(share) : std::nullopt;
}

} // namespace

std::optional<double> annualizedLeakRate(double addedKg, double fullChargeKg, std::optional<int> daysSinceLast)
{
    const int days = std::min(daysSinceLast.value_or(leakYearDays), leakYearDays);
    if (!isMass(addedKg) || !isMass(fullChargeKg) || fullChargeKg == 0 || days < 1)
        return std::nullopt;
    return finite(addedKg / fullChargeKg * leakYearDays / days);
}

std::optional<double> rollingLeakRate(std::span<const TopUp> topUps, double fullChargeKg, Date on)
{
    if (!isMass(fullChargeKg) || fullChargeKg == 0)
        return std::nullopt;
    double added = 0;
    for (const TopUp& one : topUps) {
        if (one.on <= on && (on - one.on).count() <= leakYearDays && isMass(one.massKg))
            added += one.massKg;
    }
    return finite(added / fullChargeKg);
}

const LeakLimit* leakLimitFor(const Catalogue& catalogue, LeakUse use, std::string_view refrigerant,
                              double fullChargeKg, Date on)
{
    const auto rank = [](const LeakLimit& limit) {
        return std::pair(limit.force == LeakForce::regulatory, limit.smallestChargeKg);
    };
    const LeakLimit* best = nullptr;
    for (const LeakLimit& limit : catalogue.leakLimits()) {
        const bool names = limit.refrigerants.empty() || std::ranges::any_of(limit.refrigerants, [&](const auto& one) {
                               return meansRefrigerant(refrigerant, one);
                           });
        if (limit.use == use && names && fullChargeKg >= limit.smallestChargeKg && (!limit.since || *limit.since <= on)
            && (best == nullptr || rank(limit) > rank(*best)))
            best = &limit;
    }
    return best;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/reliability.h"

#include <algorithm>
#include <cmath>

namespace padside {

ShareInterval shareInterval(std::size_t hits, std::size_t trials, double errors)
{
    if (trials == 0)
        return {};
    const auto n = static_cast<double>(trials);
    const double share = static_cast<double>(hits) / n;
    const double square = errors * errors;
    const double middle = (share + square / (2 * n)) / (1 + square / n);
    const double half = errors / (1 + square / n) * std::sqrt(share * (1 - share) / n + square / (4 * n * n));
    return {hits == 0 ? 0 : std::max(0.0, middle - half), hits == trials ? 1 : std::min(1.0, middle + half)};
}

void ReliabilityTable::add(double chance, bool spent)
{
    const auto tenth = static_cast<std::size_t>(std::clamp(std::floor(chance * 10), 0.0, 9.0));
    Tenth& line = m_tenths[tenth];
    ++line.count;
    line.chances += chance;
    line.squares += chance * chance;
    if (spent) {
        ++line.spent;
        line.ofSpent += chance;
    }
}

std::array<ReliabilityLine, reliabilityTenths> ReliabilityTable::lines() const
{
    std::array<ReliabilityLine, reliabilityTenths> lines;
    for (std::size_t tenth = 0; tenth < reliabilityTenths; ++tenth) {
        const Tenth& from = m_tenths[tenth];
        lines[tenth].count = from.count;
        lines[tenth].spent = from.spent;
        lines[tenth].within = shareInterval(from.spent, from.count);
        if (from.count == 0)
            continue;
        lines[tenth].meanForecast = from.chances / static_cast<double>(from.count);
        lines[tenth].observed = static_cast<double>(from.spent) / static_cast<double>(from.count);
    }
    return lines;
}

BrierParts ReliabilityTable::parts() const
{
    double count = 0;
    double spent = 0;
    for (const Tenth& tenth : m_tenths) {
        count += static_cast<double>(tenth.count);
        spent += static_cast<double>(tenth.spent);
    }
    BrierParts parts;
    if (count == 0)
        return parts;
    const double base = spent / count;
    parts.uncertainty = base * (1 - base);
    for (const Tenth& tenth : m_tenths) {
        if (tenth.count == 0)
            continue;
        const auto n = static_cast<double>(tenth.count);
        const double said = tenth.chances / n;
        const double came = static_cast<double>(tenth.spent) / n;
        parts.reliability += n * (said - came) * (said - came) / count;
        parts.resolution += n * (came - base) * (came - base) / count;
        parts.spread += (tenth.squares - n * said * said) / count;
        parts.covariance += 2 * (tenth.ofSpent - n * said * came) / count;
    }
    return parts;
}

} // namespace padside

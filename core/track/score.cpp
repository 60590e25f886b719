// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/track/score.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

double surprise(double chance)
{
    return -std::log(std::max(chance, leastScoredChance));
}

} // namespace

void BrierDifference::settle(double square, bool spent)
{
    m_zone[0] += square;
    m_zone[1] += 1;
    m_zone[2] += spent ? 1 : 0;
}

void BrierDifference::nextZone()
{
    for (std::size_t i = 0; i < m_zone.size(); ++i) {
        for (std::size_t j = 0; j < m_zone.size(); ++j)
            m_products[i][j] += m_zone[i] * m_zone[j];
    }
    m_zone = {};
}

double BrierDifference::inErrors(double base, double mean, double settled) const
{
    BrierDifference whole = *this;
    whole.nextZone();
    // Of a zone with n forecasts, k of them spent: sum (p - o)² - sum (b - o)² - n d = S - n (b² + d) - k (1 - 2 b).
    const Three factors{1, -(base * base + mean), -(1 - 2 * base)};
    double variance = 0;
    for (std::size_t i = 0; i < factors.size(); ++i) {
        for (std::size_t j = 0; j < factors.size(); ++j)
            variance += factors[i] * factors[j] * whole.m_products[i][j];
    }
    return variance > 0 ? mean * settled / std::sqrt(variance) : 0;
}

void ScoreSheet::settle(double chance, bool spent)
{
    const double came = spent ? 1 : 0;
    ++m_settled;
    m_spent += spent ? 1 : 0;
    m_expected += chance;
    m_squares += (chance - came) * (chance - came);
    m_logs += surprise(spent ? chance : 1 - chance);
    m_variance += chance * (1 - chance);
    m_ofZone += came - chance;
    m_difference.settle((chance - came) * (chance - came), spent);
    m_reliability.add(chance, spent);
}

void ScoreSheet::nextZone()
{
    m_zoneSquares += m_ofZone * m_ofZone;
    m_zones += m_difference.zoneCounts() ? 1U : 0U;
    m_ofZone = 0;
    m_difference.nextZone();
}

Scores ScoreSheet::scores() const
{
    Scores scores;
    scores.settled = m_settled;
    scores.spent = m_spent;
    scores.zones = m_zones + (m_difference.zoneCounts() ? 1U : 0U);
    scores.waiting = m_waiting;
    scores.untold = m_untold;
    scores.reliability = m_reliability.lines();
    scores.parts = m_reliability.parts();
    if (m_settled == 0)
        return scores;
    const auto settled = static_cast<double>(m_settled);
    scores.expected = m_expected;
    scores.brier = m_squares / settled;
    scores.logScore = m_logs / settled;
    scores.base = static_cast<double>(m_spent) / settled;
    scores.baseBrier = scores.base * (1 - scores.base);
    if (m_spent > 0 && m_spent < m_settled) {
        scores.baseLog = scores.base * surprise(scores.base) + (1 - scores.base) * surprise(1 - scores.base);
        scores.brierSkill = 1 - scores.brier / scores.baseBrier;
        scores.logSkill = 1 - scores.logScore / scores.baseLog;
        scores.brierExcess = m_difference.inErrors(scores.base, scores.brier - scores.baseBrier, settled);
    }
    scores.standardError = std::sqrt(std::max(m_variance, m_zoneSquares + m_ofZone * m_ofZone));
    const double off = static_cast<double>(m_spent) - m_expected;
    if (scores.standardError > 0)
        scores.deviation = off / scores.standardError;
    else
        scores.deviation = 0; // every chance was 0 or 1, and every one came true
    return scores;
}

} // namespace padside

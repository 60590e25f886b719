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
    m_zoneCounts = true;
    m_reliability.add(chance, spent);
}

void ScoreSheet::nextZone()
{
    m_zoneSquares += m_ofZone * m_ofZone;
    m_zones += m_zoneCounts ? 1 : 0;
    m_ofZone = 0;
    m_zoneCounts = false;
}

Scores ScoreSheet::scores() const
{
    Scores scores;
    scores.settled = m_settled;
    scores.spent = m_spent;
    scores.zones = m_zones + (m_zoneCounts ? 1 : 0);
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

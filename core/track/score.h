// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/track/reliability.h"

#include <optional>

namespace padside {

/// A chance of 0 or 1 that proves wrong would make the log score infinite: it counts as one in a million.
constexpr double leastScoredChance = 1e-6;

/// How good the settled forecasts of one horizon were. The base rate they are held against is the share of all settled
/// forecasts of that horizon that came to pass: the best that can be said of all zones alike, known only afterwards.
struct Scores
{
    std::size_t settled = 0;
    std::size_t spent = 0; ///< of those
    std::size_t zones = 0; ///< they are about so many
    std::size_t waiting = 0;
    std::size_t untold = 0;
    double expected = 0; ///< sum of the chances
    double brier = 0; ///< mean of (chance - what came)², 0 is best (Brier 1950)
    double logScore = 0; ///< mean of -ln(chance of what came), 0 is best (Good 1952)
    double base = 0; ///< the base rate
    double baseBrier = 0; ///< of always saying the base rate
    double baseLog = 0;
    std::optional<double> brierSkill; ///< 1 - brier / baseBrier; empty where all or none came to pass
    std::optional<double> logSkill;
    /// (brier - baseBrier) / the standard error of that difference, zones as clusters; empty as brierSkill.
    std::optional<double> brierExcess;
    double standardError = 0; ///< of `spent` around `expected`, see ScoreSheet
    std::optional<double> deviation; ///< (spent - expected) / standardError; empty without settled forecasts
    BrierParts parts;
    std::array<ReliabilityLine, reliabilityTenths> reliability{};
};

/// By how much the Brier score lies above that of the base rate, and how far that may be chance. The base rate is known
/// only at the end, so what is kept are sums over zones of products of three things.
class BrierDifference
{
public:
    void settle(double square, bool spent);
    void nextZone();
    [[nodiscard]] bool zoneCounts() const { return m_zone[1] > 0; } ///< the one at hand has a settled forecast

    /// `mean` (of the difference, over `settled` forecasts) in its standard errors; 0 where it is the same in every
    /// zone.
    [[nodiscard]] double inErrors(double base, double mean, double settled) const;

private:
    using Three = std::array<double, 3>; ///< squares of chance less what came, forecasts, found spent

    Three m_zone{};
    std::array<Three, 3> m_products{};
};

/// Adds up the forecasts of one horizon, zone by zone.
class ScoreSheet
{
public:
    /// Takes one settled forecast of the zone at hand, `chance` 0..1.
    void settle(double chance, bool spent);
    void wait() { ++m_waiting; }
    void leaveUntold() { ++m_untold; }
    /// The next forecast is about another zone. Forecasts of one zone made one after the other are not independent:
    /// the standard error is the larger of that of independent forecasts, sqrt(sum p (1 - p)), and of that from what
    /// was left over zone by zone (clustered; Liang and Zeger 1986).
    void nextZone();

    [[nodiscard]] Scores scores() const;

private:
    std::size_t m_settled = 0;
    std::size_t m_spent = 0;
    std::size_t m_zones = 0;
    std::size_t m_waiting = 0;
    std::size_t m_untold = 0;
    double m_expected = 0;
    double m_squares = 0;
    double m_logs = 0;
    double m_variance = 0;
    double m_zoneSquares = 0;
    double m_ofZone = 0; ///< came less said, of the zone at hand
    BrierDifference m_difference;
    ReliabilityTable m_reliability;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstddef>

namespace padside {

/// An interval of shares, both ends 0..1.
struct ShareInterval
{
    double low = 0;
    double high = 1;
};

/// The score interval of Wilson (1927) for a share of `hits` (at most `trials`) in `trials`, `errors` standard errors
/// (> 0) to either side: unlike the plain error it does not shrink to nothing where all or none came to pass. 0..1
/// without trials.
[[nodiscard]] ShareInterval shareInterval(std::size_t hits, std::size_t trials, double errors = 2);

constexpr std::size_t reliabilityTenths = 10;

/// The forecasts between two tenths.
struct ReliabilityLine
{
    std::size_t count = 0;
    std::size_t spent = 0;
    double meanForecast = 0; ///< 0 without forecasts
    double observed = 0; ///< share that came to pass; 0 without forecasts
    ShareInterval within; ///< two standard errors around it
};

/// The Brier score taken apart (Murphy 1973), with what forecasts that differ within a tenth add (Stephenson, Coelho
/// and Jolliffe 2008): score = reliability - resolution + uncertainty + spread - covariance.
struct BrierParts
{
    double reliability = 0; ///< how far what was said lies from what came, tenth by tenth; 0 is best
    double resolution = 0; ///< how far the tenths differ in what came; larger is better
    double uncertainty = 0; ///< of always saying the plain share
    double spread = 0; ///< of what was said within the tenths
    double covariance = 0; ///< of what was said and what came within the tenths, twice
};

/// Forecasts sorted into tenths: [0, 0.1), … [0.9, 1].
class ReliabilityTable
{
public:
    /// Takes one settled forecast, `chance` 0..1.
    void add(double chance, bool spent);

    [[nodiscard]] std::array<ReliabilityLine, reliabilityTenths> lines() const;
    [[nodiscard]] BrierParts parts() const;

private:
    struct Tenth
    {
        std::size_t count = 0;
        std::size_t spent = 0;
        double chances = 0;
        double squares = 0;
        double ofSpent = 0; ///< chances of what came to pass
    };

    std::array<Tenth, reliabilityTenths> m_tenths{};
};

} // namespace padside

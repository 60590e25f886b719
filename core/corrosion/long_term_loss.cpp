// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/long_term_loss.h"

#include <cassert>
#include <cmath>

namespace padside {

namespace {

constexpr double powerLawYears = 20; // beyond it, the tangent
constexpr double mostLossYears = 1000;

tl::unexpected<Problem> tooLong()
{
    return problem(ProblemKind::badInput, PADSIDE_SAY("Losses are worked out for 0 to {0} years. Check the years."),
                   {static_cast<std::int64_t>(mostLossYears)});
}

tl::unexpected<Problem> noLoss()
{
    return problem(ProblemKind::badInput,
                   PADSIDE_SAY("A loss of metal is a number of 0 or more. Check the rate and the loss."));
}

} // namespace

// ISO 9224:2012, table 2, read in a transcription.
double exponentOf(Metal metal, LossExponent which)
{
    const bool mean = which == LossExponent::mean;
    switch (metal) {
    case Metal::zinc:
        return mean ? 0.813 : 0.873;
    case Metal::copper:
        return mean ? 0.667 : 0.726;
    case Metal::aluminium:
        return mean ? 0.728 : 0.807;
    case Metal::steel:
        break;
    }
    return mean ? 0.523 : 0.575;
}

double exponentOf(const SteelAlloy& alloy)
{
    return 0.569 - 0.084 * alloy.carbon - 0.490 * alloy.phosphorus + 1.440 * alloy.sulphur - 0.163 * alloy.silicon
        - 0.066 * alloy.nickel - 0.124 * alloy.chromium - 0.069 * alloy.copper;
}

double lossFactor(double exponent, double years)
{
    assert(exponent > 0 && exponent <= 1 && years >= 0 && years <= mostLossYears);
    if (years <= 1)
        return years;
    if (years <= powerLawYears)
        return std::pow(years, exponent);
    return std::pow(powerLawYears, exponent)
        + exponent * std::pow(powerLawYears, exponent - 1) * (years - powerLawYears);
}

Result<double> longTermLoss(double firstYearLoss, double exponent, double years)
{
    if (!(years >= 0 && years <= mostLossYears))
        return tooLong();
    const double loss = firstYearLoss * lossFactor(exponent, years);
    if (!(firstYearLoss >= 0 && std::isfinite(loss)))
        return noLoss();
    return loss;
}

Result<double> yearsToLoss(double firstYearLoss, double exponent, double loss)
{
    if (!(firstYearLoss > 0 && std::isfinite(firstYearLoss) && loss >= 0 && std::isfinite(loss)))
        return noLoss();
    const double factor = loss / firstYearLoss;
    const double atTurn = std::pow(powerLawYears, exponent);
    double years = factor;
    if (factor > atTurn)
        years = powerLawYears + (factor - atTurn) / (exponent * std::pow(powerLawYears, exponent - 1));
    else if (factor > 1)
        years = std::pow(factor, 1 / exponent);
    if (!(years <= mostLossYears))
        return tooLong();
    return years;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/worth/compound_interest.h"

#include <cmath>

namespace padside {

namespace {

Result<double> checkedRate(double rate)
{
    if (!(rate >= 0 && rate <= highestYearlyRate))
        return problem(ProblemKind::badInput, PADSIDE_SAY("Interest lies between 0 and 100 % a year. Check the rate."));
    return rate;
}

Result<double> checkedYears(double years)
{
    if (!(years > 0 && years <= mostYears)) {
        return problem(ProblemKind::badInput, PADSIDE_SAY("Years must be above 0 and at most {0}. Check the years."),
                       {static_cast<std::int64_t>(mostYears)});
    }
    return years;
}

} // namespace

Result<InterestFactors> interestFactors(double rate, double years)
{
    if (const auto checked = checkedRate(rate); !checked)
        return tl::unexpected(checked.error());
    if (const auto checked = checkedYears(years); !checked)
        return tl::unexpected(checked.error());
    InterestFactors factors;
    const double growth = years * std::log1p(rate);
    factors.singleCompoundAmount = std::exp(growth);
    factors.singlePresentWorth = std::exp(-growth);
    // expm1 keeps a tiny rate from cancelling; at 0 the limit is the count of years.
    factors.seriesCompoundAmount = rate > 0 ? std::expm1(growth) / rate : years;
    factors.seriesPresentWorth = rate > 0 ? -std::expm1(-growth) / rate : years;
    factors.capitalRecovery = 1 / factors.seriesPresentWorth;
    return factors;
}

Result<double> growingPresentWorth(double rate, double growth, double years)
{
    constexpr double fastestShrinking = -0.5;
    if (const auto checked = checkedRate(rate); !checked)
        return tl::unexpected(checked.error());
    if (const auto checked = checkedYears(years); !checked)
        return tl::unexpected(checked.error());
    if (!(growth >= fastestShrinking && growth <= highestYearlyRate)) {
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("A yearly growth of cost lies between -50 and 100 %. Check the growth."));
    }
    const double ratio = std::log1p(growth) - std::log1p(rate);
    if (std::abs(ratio) * years < 1e-9)
        return years;
    return (1 + growth) / (rate - growth) * -std::expm1(ratio * years);
}

Result<double> presentWorth(std::span<const double> payments, double rate)
{
    if (const auto checked = checkedRate(rate); !checked)
        return tl::unexpected(checked.error());
    double worth = 0;
    double year = 0;
    for (const double payment : payments) {
        if (!std::isfinite(payment))
            return problem(ProblemKind::badInput, PADSIDE_SAY("A payment is no number. Check the payments."));
        worth += payment * std::pow(1 + rate, -++year);
    }
    return worth;
}

Result<double> equivalentAnnualCost(std::span<const double> payments, double rate)
{
    const auto factors = interestFactors(rate, static_cast<double>(payments.size()));
    if (!factors)
        return tl::unexpected(factors.error());
    auto worth = presentWorth(payments, rate);
    if (!worth)
        return worth;
    return *worth * factors->capitalRecovery;
}

} // namespace padside

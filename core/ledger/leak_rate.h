// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/quantity/date.h"

#include <optional>
#include <span>
#include <string_view>

namespace padside {

/// Refrigerant that went in on one day to make up for a leak.
struct TopUp
{
    Date on{};
    double massKg = 0; ///< above 0
};

/// The days of a year in both methods of 40 CFR 82.152.
inline constexpr int leakYearDays = 365;

/// Share of the full charge that would be lost in a year, by the annualizing method of 40 CFR 82.152:
/// (added / full charge) * 365 / min(days since the last addition, 365). Never negative; above 1 it loses more than a
/// whole charge a year. `daysSinceLast` empty: no addition is known, then a whole year is reckoned, which gives the
/// least the rate can be. Empty where there is no full charge above 0, no mass of 0 or above, or the days are not
/// above 0 (additions of one day are to be merged first).
[[nodiscard]] std::optional<double> annualizedLeakRate(double addedKg, double fullChargeKg,
                                                       std::optional<int> daysSinceLast);

/// The same share by the rolling average method of 40 CFR 82.152: all that was added in the 365 days up to `on`
/// (`on` itself counts, and so does the day 365 days before) over the full charge. The shorter period after a
/// verified repair, which the rule allows, is not used: the record holds no verification tests. Empty as above.
[[nodiscard]] std::optional<double> rollingLeakRate(std::span<const TopUp> topUps, double fullChargeKg, Date on);

/// The limit of the catalogue for a unit of this use: of those that fit refrigerant, full charge and day a regulatory
/// one before an advisory one, then the one for the largest charge. nullptr: there is none. Refrigerants may be written
/// in any way that meansRefrigerant() understands.
[[nodiscard]] const LeakLimit* leakLimitFor(const Catalogue& catalogue, LeakUse use, std::string_view refrigerant,
                                            double fullChargeKg, Date on);

} // namespace padside

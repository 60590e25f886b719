// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace padside {

/// Whether an hour counts as wet: relative humidity above 80 % and above 0 °C, neither included (ISO 9223:2012).
/// Counts too little where salt lies on the metal or the sky cools it.
[[nodiscard]] constexpr bool isWetHour(double temperatureK, double humidity)
{
    constexpr double wetHumidity = 0.8;
    constexpr double freezingK = 273.15;
    return humidity > wetHumidity && temperatureK > freezingK;
}

/// The class of the time of wetness, tau 1 to tau 5, from wet hours a year >= 0 (ISO 9223:1992): to 10, 250, 2500, 5500
/// hours, the limit included, and above.
[[nodiscard]] int wetnessClass(double wetHoursPerYear);

} // namespace padside

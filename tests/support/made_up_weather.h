// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>

namespace padside::test {

/// An EPW file of made-up weather: eight lines of headings, then `hours` rows with all their 35 values, as wide as
/// those of published files (uncertainty flags and numbers to fifteen digits).
[[nodiscard]] std::string madeUpEpw(int hours, int rowsPerHour = 1);

/// The same weather as CSV: time, temperature_C, rh_percent.
[[nodiscard]] std::string madeUpWeatherCsv(int hours, int rowsPerHour = 1);

} // namespace padside::test

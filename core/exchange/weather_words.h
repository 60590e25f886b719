// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/exchange/weather_file.h"

namespace padside {

/// What a weather file comes to, for who reads it: hours covered, wet hours, how often a surface at `surfaceK` sweats.
[[nodiscard]] std::vector<Sentence> weatherSaid(const WeatherYear& year, double surfaceK);

/// What is to be borne in mind: rows skipped, the first of them by name (at most `mostNamed`), what was taken for
/// granted, and that the rows don't cover whole years.
[[nodiscard]] std::vector<Sentence> weatherReservations(const WeatherFile& file, const WeatherYear& year,
                                                        std::size_t mostNamed);

} // namespace padside

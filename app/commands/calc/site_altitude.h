// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>

namespace CLI { // NOLINT(readability-identifier-naming): the library's own name
class App;
}

namespace padside {

/// Adds "--altitude", kept in `typed`; without it the site is at sea level.
void addAltitudeOption(CLI::App& topic, std::string& typed);

/// The site's altitude, m, and its station pressure, Pa; throw StoreError as typedSi().
[[nodiscard]] double typedAltitudeM(const std::string& typed);
[[nodiscard]] double typedStationPressurePa(const std::string& typed);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <nlohmann/json.hpp>
#include <string>

namespace padside {

/// n, S, varS, Z, p, slope_per_day, low95, high95 of the series in `file`; below four points the trend keys are null
/// and `note` says why. Limits by interpolated ranks (Gilbert 1987, p. 218). Throws StoreError for a file that can't be
/// read or used.
[[nodiscard]] nlohmann::ordered_json trendAnswer(const std::string& file);

/// visits (how many) and days (when, unit after unit) that meet the windows in `file`; windows of one unit are met
/// together, and those without a unit are one line of their own. Throws StoreError for a file that can't be read or
/// used.
[[nodiscard]] nlohmann::ordered_json tripsAnswer(const std::string& file);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"
#include "core/trend/trend_point.h"

#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// Reads a series from CSV: the columns t_days and y, found by name; other columns are passed over. A bad row refuses
/// the whole file and is named with its line; so does a file without rows, or with more than mostTrendPoints.
[[nodiscard]] Result<std::vector<TrendPoint>> readTrendFile(std::string_view text, std::string name);

} // namespace padside

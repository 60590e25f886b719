// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>

namespace padside {

/// The printed chart of target superheats for a fixed orifice, °F throughout: empty outside its rows and columns, at a
/// dash, and between cells of which one is a dash. Source: targetChartSource.
[[nodiscard]] std::optional<double> chartSuperheatF(double returnWetBulbF, double outdoorDryBulbF);

} // namespace padside

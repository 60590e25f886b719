// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

#include <optional>
#include <string_view>

namespace padside {

constexpr std::string_view supplyAirDropSource
    = PADSIDE_SAY("target temperature split, California Title 24 Residential Appendix RA3.2, extract, from memory");

/// The drop from return to supply air to expect of a cooling coil with the right airflow, in K, from the return air's
/// dry and wet bulb in K; bilinear inside the table (dry bulb 70..80 °F, wet bulb 57..69 °F), empty outside it.
[[nodiscard]] std::optional<double> targetSupplyAirDropK(double returnDryBulbK, double returnWetBulbK);

} // namespace padside

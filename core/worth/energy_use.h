// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

namespace padside {

/// Electricity for a season's cooling in kWh: capacity in W, hours of full load a year, SEER in Btu/Wh as on the label.
/// kWh = Btu/h × hours / (SEER × 1000), as in the ENERGY STAR reckoning. All above 0; anything else is a Problem.
/// SEER and SEER2 are different scales of one machine: never compare across them.
[[nodiscard]] Result<double> coolingEnergyKwh(double capacityW, double fullLoadHours, double seer);

/// What is left of a seasonal efficiency after `years`: (1 - yearlyLoss)^years, in the form of NREL/TP-550-38238 (from
/// memory: 0.01 a year where serviced yearly, 0.03 where seldom). Loss 0 to 0.5, years 0 to 200.
[[nodiscard]] Result<double> efficiencyLeft(double yearlyLoss, double years);

} // namespace padside

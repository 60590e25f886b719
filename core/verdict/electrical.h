// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

namespace padside {

/// Capacitance in F of a run capacitor from the current through it (A) and the voltage across it (V) while the motor
/// runs on `hertz`: I / (2 pi f V). All above 0; anything else is a Problem.
[[nodiscard]] Result<double> capacitanceUnderLoad(double currentA, double voltageV, double hertz);

/// By how much more a winding warms at this voltage imbalance, as a share: about twice its square in percent (NEMA MG-1
/// rule of thumb: 3.5 % gives about 25 %). `imbalance` as a share, 0 or more.
[[nodiscard]] double extraWindingHeat(double imbalance);

/// An insulation resistance at `temperatureK` brought to 40 °C: it halves for each 10 K (form of IEEE 43-2000, from
/// memory).
[[nodiscard]] double insulationAt40C(double ohms, double temperatureK);

} // namespace padside

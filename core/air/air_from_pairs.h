// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/air/moist_air.h"

namespace padside {

/// What all else of the air follows from.
struct AirAndVapour
{
    double dryBulbK = 0;
    double vapourPressurePa = 0;
};

/// Dry bulb and vapour pressure from two readings that each make sense by themselves (moistAir() has looked).
[[nodiscard]] Result<AirAndVapour> airFromPair(const AirReadings& readings, double stationPressurePa);

} // namespace padside

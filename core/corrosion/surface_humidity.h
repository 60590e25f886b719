// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/problem.h"

namespace padside {

/// Relative humidity of the air right at a surface, 0..1: the vapour of the air over the saturation pressure at the
/// surface, at most 1 (then the surface is wet). `humidity` 0..1. A help for judging cold metal; ISO 9223 counts the
/// air, not the surface, so never feed its functions with this.
/// Problem: a temperature outside -100..200 °C, or a humidity outside 0..1.
[[nodiscard]] Result<double> surfaceHumidity(double airTemperatureK, double humidity, double surfaceTemperatureK);

/// Whether a surface is below the dew point of the air: its vapour pressure is above saturation at the surface.
/// Problem: as above.
[[nodiscard]] Result<bool> sweats(double airTemperatureK, double humidity, double surfaceTemperatureK);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/surface_humidity.h"

#include "core/air/water_vapour.h"

#include <algorithm>

namespace padside {

namespace {

/// Vapour pressure of the air over saturation pressure at the surface.
Result<double> saturationRatio(double airTemperatureK, double humidity, double surfaceTemperatureK)
{
    const auto atAir = saturationPressureOfWaterPa(airTemperatureK);
    const auto atSurface = saturationPressureOfWaterPa(surfaceTemperatureK);
    if (!atAir || !atSurface)
        return tl::unexpected(atAir ? atSurface.error() : atAir.error());
    if (!(humidity >= 0 && humidity <= 1))
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("Relative humidity lies between 0 and 100 %. Check the humidity."));
    return humidity * *atAir / *atSurface;
}

} // namespace

Result<double> surfaceHumidity(double airTemperatureK, double humidity, double surfaceTemperatureK)
{
    return saturationRatio(airTemperatureK, humidity, surfaceTemperatureK).map([](double ratio) {
        return std::min(1.0, ratio);
    });
}

Result<bool> sweats(double airTemperatureK, double humidity, double surfaceTemperatureK)
{
    return saturationRatio(airTemperatureK, humidity, surfaceTemperatureK).map([](double ratio) { return ratio > 1; });
}

} // namespace padside

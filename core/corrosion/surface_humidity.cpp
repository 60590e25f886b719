// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/surface_humidity.h"

#include "core/corrosion/saturation.h"

#include <algorithm>

namespace padside {

double surfaceHumidity(double airTemperatureK, double humidity, double surfaceTemperatureK)
{
    return std::min(1.0, humidity * saturationPressurePa(airTemperatureK) / saturationPressurePa(surfaceTemperatureK));
}

bool sweats(double airTemperatureK, double humidity, double surfaceTemperatureK)
{
    if (airTemperatureK <= surfaceTemperatureK)
        return false; // the air would have to be above saturation
    return humidity * saturationPressurePa(airTemperatureK) > saturationPressurePa(surfaceTemperatureK);
}

} // namespace padside

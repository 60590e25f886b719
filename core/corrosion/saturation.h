// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <cmath>

namespace padside {

/// Saturation pressure of water vapour over liquid water or, below 0 °C, ice (Hyland and Wexler 1983, as in the ASHRAE
/// Handbook, Fundamentals, chapter 1). 173..473 K.
[[nodiscard]] inline double saturationPressurePa(double temperatureK)
{
    const double t = temperatureK;
    if (t < 273.15)
        return std::exp(-5.6745359e3 / t + 6.3925247 - 9.6778430e-3 * t + 6.2215701e-7 * t * t
                        + 2.0747825e-9 * t * t * t - 9.4840240e-13 * t * t * t * t + 4.1635019 * std::log(t));
    return std::exp(-5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t
                    + 6.5459673 * std::log(t));
}

} // namespace padside

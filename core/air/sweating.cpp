// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/air/sweating.h"

#include <cmath>

namespace padside {

Result<double> sweatMarginK(double surfaceTemperatureK, double dewPointK)
{
    for (const double temperature : {surfaceTemperatureK, dewPointK}) {
        if (!std::isfinite(temperature) || temperature <= 0) {
            return problem(
                ProblemKind::badInput,
                PADSIDE_SAY("A surface and a dew point above absolute zero are needed to tell whether it sweats."));
        }
    }
    return surfaceTemperatureK - dewPointK;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

namespace padside {

/// How far a surface is above the dew point of the air around it, K; below 0 the surface is wet (and frosts where it is
/// also below 0 °C). A temperature that is no number or not above absolute zero: a Problem.
[[nodiscard]] Result<double> sweatMarginK(double surfaceTemperatureK, double dewPointK);

} // namespace padside

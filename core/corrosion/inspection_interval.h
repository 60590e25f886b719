// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/date.h"

namespace padside {

/// Years until a wall must be measured again: half of the remaining life, at most `mostYears`. `remainingYears` >= 0.
/// The rule of API 510, API 570 (mostYears 5 for class 1, else 10), API 653 (15) and the NBIC part 2 (10) alike.
[[nodiscard]] double halfLifeInterval(double remainingYears, double mostYears);

/// The same for a pressure vessel (API 510): at most 10 years; with less than 4 years to live the whole of it, but at
/// most 2 (the short-life rule, from memory).
[[nodiscard]] double vesselInterval(double remainingYears);

/// Years until a vessel must be looked at from outside: vesselInterval(), at most 5 (API 510, from memory).
[[nodiscard]] double outsideLookInterval(double remainingYears);

/// The day `intervalYears` (0..1000) after `last`, a year being 365.25 days, rounded down.
[[nodiscard]] Date dayAfter(Date last, double intervalYears);

} // namespace padside

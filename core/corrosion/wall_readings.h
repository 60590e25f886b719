// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/problem.h"

#include <optional>
#include <span>

namespace padside {

/// One thickness measured at one spot.
struct WallReading
{
    double years = 0; ///< on any calendar that is the same for all; only differences count
    double thicknessM = 0; ///< > 0
};

/// What is taken for granted about wall readings.
struct WallRule
{
    double requiredM = 0; ///< wall that must be left
    /// Standard error of one reading: 0.05 mm, so that two readings closer than 0.1 mm show no measurable loss (common
    /// practice, no source).
    double gaugeErrorM = 0.05e-3;
};

/// How fast the wall went between two readings.
struct TwoPointRate
{
    double mPerYear = 0; ///< 0 where nothing could be measured, never negative
    double errorMPerYear = 0; ///< standard error: sqrt(2) times that of one reading, over the years between
    bool measurable = false; ///< the two readings are at least twice the gauge's error apart
    bool grew = false; ///< the later reading is thicker by that much: a measurement error
};

/// What the readings of one spot say.
struct WallOutlook
{
    double thicknessM = 0; ///< the last reading
    std::optional<TwoPointRate> longTerm; ///< first to last
    std::optional<TwoPointRate> shortTerm; ///< last but one to last
    double ratePerYearM = 0; ///< controlling: the larger of the two, unless an engineer chooses otherwise
    /// Years until the wall is down to what is required. Empty where no loss could be measured: that is not forever,
    /// see atLeastYears. 0 if the wall is there already.
    std::optional<double> remainingYears;
    /// Years left at the fastest loss that could hide behind the gauge's error; where a loss was measured, the same as
    /// remainingYears. Empty with one reading of a wall that is thick enough.
    std::optional<double> atLeastYears;
    double nextIntervalYears = 0; ///< after the last reading, by the rule of API 510
    Sentence said; ///< what this means
};

/// Long- and short-term rate, remaining life and next interval, as in API 510, API 570 and the NBIC part 2. `readings`
/// are in order of time. Problem: no reading, two of the same time, a thickness that is not above 0, a required wall or
/// gauge error below 0, more than 1000 years between readings.
[[nodiscard]] Result<WallOutlook> wallOutlook(std::span<const WallReading> readings, const WallRule& rule);

/// Years until `thicknessM` is down to `requiredM` at `ratePerYearM` > 0; 0 if it is there already.
[[nodiscard]] double remainingLifeYears(double thicknessM, double requiredM, double ratePerYearM);

/// Wall left at the deepest pit: thickness minus the mean loss times a pitting factor (deepest pit over mean loss; 2 to
/// 4 on boldly exposed steel, 4 to 8 under deposits, from memory). Never below 0.
[[nodiscard]] double wallAtDeepestPitM(double thicknessM, double meanLossM, double pittingFactor);

} // namespace padside

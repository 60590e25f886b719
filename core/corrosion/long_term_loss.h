// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/corrosion/metal.h"
#include "core/quantity/problem.h"

namespace padside {

/// Which exponent of ISO 9224:2012 table 2: the mean B1, or B2, two standard deviations above it. Take `upper` where
/// the worse case counts; near salt, or where a part stays wet, growth can be linear (exponent 1).
enum class LossExponent { mean, upper };

[[nodiscard]] double exponentOf(Metal metal, LossExponent which);

/// Mass per cent of what slows or speeds rusting of steel.
struct SteelAlloy
{
    double carbon = 0;
    double phosphorus = 0;
    double sulphur = 0;
    double silicon = 0;
    double nickel = 0;
    double chromium = 0;
    double copper = 0;
};

/// The exponent of a steel from its composition (ISO 9224:2012, from memory).
[[nodiscard]] double exponentOf(const SteelAlloy& alloy);

/// Loss after `years` in units of the first year's: t^b from 1 to 20 years, then on along the tangent at 20 years (ISO
/// 9224:2012). For less than a year the standard has no rule: proportional to time (ours). `years` 0..1000, `exponent`
/// 0..1 (exclusive of 0).
[[nodiscard]] double lossFactor(double exponent, double years);

/// Total loss after `years`, in the unit of `firstYearLoss` (µm, or g/m²). Problem: not finite, a negative loss,
/// years outside 0..1000.
[[nodiscard]] Result<double> longTermLoss(double firstYearLoss, double exponent, double years);

/// Years until the total loss reaches `loss` (same unit as firstYearLoss). Problem: a negative loss, a first-year loss
/// that is not above 0, or more than 1000 years.
[[nodiscard]] Result<double> yearsToLoss(double firstYearLoss, double exponent, double loss);

} // namespace padside

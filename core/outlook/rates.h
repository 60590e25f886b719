// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstddef>

namespace padside {

/// How often a zone leaves grades 1, 2, 3 and 4 for the next worse one, per year of exposure; each finite and >= 0.
using Rates = std::array<double, 4>;

constexpr std::size_t gradeCount = 5;

/// One probability for each grade, sound to spent.
using GradeChances = std::array<double, gradeCount>;

/// [from][to], by grades; rows add up to 1.
using Transition = std::array<GradeChances, gradeCount>;

} // namespace padside

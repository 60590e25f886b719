// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/rates.h"
#include "core/record/grade.h"

#include <cstddef>

namespace padside {

/// The chance that a person grades [true grade][as this]. Ours, no source: one grade off happens, two do not; spent is
/// told from the rest without fail.
constexpr Transition misgrading{{{0.95, 0.05, 0, 0, 0},
                                 {0.05, 0.90, 0.05, 0, 0},
                                 {0, 0.05, 0.90, 0.05, 0},
                                 {0, 0, 0.05, 0.95, 0},
                                 {0, 0, 0, 0, 1}}};

[[nodiscard]] constexpr std::size_t indexOf(Grade grade)
{
    return static_cast<std::size_t>(numeral(grade) - 1);
}

/// The chance of being graded so, by true grade.
[[nodiscard]] constexpr GradeChances chanceToSee(Grade seen)
{
    GradeChances chances{};
    for (std::size_t grade = 0; grade < gradeCount; ++grade)
        chances[grade] = misgrading[grade][indexOf(seen)];
    return chances;
}

/// The same on fresh paint, which may show any grade better than what lies under it; spent still shows.
[[nodiscard]] constexpr GradeChances chanceToSeeOnPaint(Grade seen)
{
    GradeChances chances = chanceToSee(seen);
    if (seen == Grade::spent)
        return chances;
    for (std::size_t grade = 1; grade + 1 < gradeCount; ++grade)
        chances[grade] = chances[grade] > chances[grade - 1] ? chances[grade] : chances[grade - 1];
    return chances;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/rust_grade.h"

#include <algorithm>
#include <array>

namespace padside {

namespace {

constexpr std::array nominalOfRi{0.0, 0.05, 0.5, 1.0, 8.0}; // Ri0 to Ri4; ISO 4628-3 table 1, from memory
constexpr std::array upperOfD610{0.01, 0.03, 0.1, 0.3, 1.0, 3.0, 10.0, 16.0, 33.0, 50.0}; // 10 to 1; ASTM D610 table 1
constexpr int bestD610 = 10;

} // namespace

Result<RustGrades> rustGradesOf(double percent)
{
    if (!(percent >= 0 && percent <= 100))
        return problem(ProblemKind::badInput,
                       PADSIDE_SAY("A rusted area is a number from 0 to 100, in per cent. Check the number."));
    const auto ri = std::ranges::lower_bound(nominalOfRi, percent) - nominalOfRi.begin();
    const auto below = std::ranges::lower_bound(upperOfD610, percent) - upperOfD610.begin();
    return RustGrades{static_cast<int>(ri), bestD610 - static_cast<int>(below)};
}

} // namespace padside

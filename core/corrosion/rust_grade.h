// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/problem.h"

namespace padside {

/// Two grades of one rusted area. Each comes from the area itself: the correlation printed in ISO 4628-3 matches
/// pictures, not areas, so one grade must never be turned into the other.
struct RustGrades
{
    int ri = 0; ///< ISO 4628-3, Ri0 (none) to Ri5 (40 to 50 %)
    int d610 = 10; ///< ASTM D610, 10 (at most 0.01 %) to 0 (more than 50 %)
};

/// The grades of `percent` of a painted steel surface rusted. ASTM D610 gives bins. ISO 4628-3 gives only nominal areas
/// (0.05, 0.5, 1, 8, 40 to 50 %): the conservative choice (ours) is the smallest grade whose nominal area is not below
/// the one seen. Not for bare steel. Problem: not a number from 0 to 100.
[[nodiscard]] Result<RustGrades> rustGradesOf(double percent);

} // namespace padside

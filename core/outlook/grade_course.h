// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/zone_belief.h"

#include <span>
#include <vector>

namespace padside {

/// What is believed of a zone's grade on a day to come.
struct GradesBy
{
    Date by{};
    GradeChances chances{}; ///< of grades 1 to 5, adding up to 1

    friend bool operator==(const GradesBy&, const GradesBy&) = default;
};

/// The chances of all grades on days to come, which are in order: today's belief with the zone's clock run forward.
/// Days not after today get today's.
[[nodiscard]] std::vector<GradesBy> gradeCourse(const ZoneBelief& zone, std::span<const Date> days);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/corrosion/time_of_wetness.h"

#include <algorithm>
#include <array>

namespace padside {

int wetnessClass(double wetHoursPerYear)
{
    constexpr std::array upperHours{10.0, 250.0, 2500.0, 5500.0};
    return 1 + static_cast<int>(std::ranges::lower_bound(upperHours, wetHoursPerYear) - upperHours.begin());
}

} // namespace padside

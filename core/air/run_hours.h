// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <string_view>

namespace padside {

/// When the unit usually runs, by the local clock: minutes since midnight, 0..1439. `to` before `from` crosses
/// midnight; both the same: all day.
struct RunHours
{
    int fromMinute = 0;
    int toMinute = 0;

    friend bool operator==(const RunHours&, const RunHours&) = default;
};

/// Reads "22:00-6:00", "22-6", "22.30 – 6"; the hours of a day from 0 to 24, 24 being the midnight that ends it.
/// Anything else is a Problem that says how to write it.
[[nodiscard]] Result<RunHours> parseRunHours(std::string_view text);

} // namespace padside

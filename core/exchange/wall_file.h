// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/corrosion/wall_readings.h"
#include "core/quantity/date.h"

#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// Wall readings of one spot, in order of time.
struct WallFile
{
    std::vector<WallReading> readings; ///< years counted from the first
    Date last; ///< the day of the last reading
};

/// Reads wall readings from CSV: the columns date (2026-05-04) and thickness_mm, found by name, in any order of time. A
/// bad row refuses the whole file and is named with its line, for a wall is judged from few readings; so does a file
/// without rows or a day that is there twice.
[[nodiscard]] Result<WallFile> readWallFile(std::string_view text, std::string name);

} // namespace padside

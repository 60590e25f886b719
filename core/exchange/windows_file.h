// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"
#include "core/schedule/trips.h"

#include <string>
#include <string_view>
#include <vector>

namespace padside {

/// Windows with their names, in the order of the file.
struct WindowsFile
{
    std::vector<std::string> ids;
    std::vector<std::string> units; ///< "" where windows of no unit share one line
    std::vector<Window> windows; ///< the file's whole days, counted from 1970-01-01

    friend bool operator==(const WindowsFile&, const WindowsFile&) = default;
};

/// Days beyond these are taken for an error (some 27 000 years either way).
constexpr std::int64_t farthestDay = 10'000'000;

/// Reads windows from CSV: the columns id, unit, lo and hi, found by name; other columns are passed over. A bad row (no
/// whole numbers, hi before lo) refuses the whole file and is named with its line. No rows: no windows.
[[nodiscard]] Result<WindowsFile> readWindowsFile(std::string_view text, std::string name);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <cstdint>
#include <string>

namespace padside {

/// The largest text file that is read whole.
constexpr std::int64_t mostTextFileBytes = 64'000'000;

/// The bytes of a file. Missing, unreadable, a folder, or larger than mostTextFileBytes: a Problem of the kind
/// cannotRead.
[[nodiscard]] Result<std::string> readTextFile(const std::string& path);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string>
#include <string_view>

namespace padside {

/// What a foreign file says, so that it can stand in a sentence: at most `mostBytes`, then "…"; control characters and
/// what is not UTF-8 become "?".
[[nodiscard]] std::string quotable(std::string_view text, std::size_t mostBytes = 32);

} // namespace padside

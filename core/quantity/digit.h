// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace padside {

/// Whether a byte of UTF-8 text is one of 0 to 9, whatever the locale (std::isdigit is undefined for negative chars).
[[nodiscard]] constexpr bool isDigit(char character)
{
    return character >= '0' && character <= '9';
}

} // namespace padside

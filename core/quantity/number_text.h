// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>
#include <string_view>

namespace padside {

/// Without blanks at either end; no-break and thin spaces (U+00A0, U+202F, U+2009) count as blanks.
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// What was typed, with the minus sign U+2212 as "-" and the no-break and thin spaces as " ", trimmed.
[[nodiscard]] std::string withPlainSigns(std::string_view text);

/// How many bytes at the start of plain text belong to the number; the unit begins after them.
[[nodiscard]] std::size_t lengthOfNumber(std::string_view text);

} // namespace padside

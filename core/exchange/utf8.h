// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <string_view>

namespace padside {

/// Bytes of the longest start of `text` that is well-formed UTF-8 (RFC 3629: no surrogates, nothing overlong, nothing
/// above U+10FFFF); text.size() if all of it is.
[[nodiscard]] std::size_t utf8Length(std::string_view text);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <nlohmann/json.hpp>
#include <span>
#include <string>

namespace padside {

/// Rows as a JSON array (RFC 8259), one object below the other, with a line break at the end. What is not finite
/// becomes null, as JSON has no word for it; bytes that are not UTF-8 become U+FFFD instead of spoiling the whole
/// answer.
[[nodiscard]] std::string jsonRows(std::span<const nlohmann::ordered_json> rows);

} // namespace padside

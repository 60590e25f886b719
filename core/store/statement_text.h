// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QString>

#include <string>
#include <string_view>

namespace padside {

/// "SELECT columns FROM rest".
[[nodiscard]] std::string selectText(std::string_view columns, std::string_view rest);

/// "INSERT INTO table (columns) VALUES (?, …)": columns separated by ", ".
[[nodiscard]] QString insertText(std::string_view table, std::string_view columns);

/// The same, and what is there already under `key` takes the new values.
[[nodiscard]] QString upsertText(std::string_view table, std::string_view columns, std::string_view key);

} // namespace padside

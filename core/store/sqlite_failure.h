// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/store/store_error.h"

#include <string>

namespace padside {

/// Turns a failure of SQLite into the error a person can read: disk full, read-only, locked, damaged, or a rule of ours
/// that a trigger or constraint of the schema guards. `code` is the extended result code, `message` is
/// sqlite3_errmsg().
[[nodiscard]] StoreError sqliteFailure(int code, const std::string& message, const std::string& path,
                                       std::string statement);

/// Shorthand for an error that SQLite had no part in.
[[nodiscard]] StoreError storeError(ProblemKind kind, std::string pattern, std::vector<Argument> arguments = {});

} // namespace padside

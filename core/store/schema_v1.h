// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace padside {

/// The statements that make an empty file of schema version 1. Frozen: a change of the schema is a new migration.
[[nodiscard]] std::string schemaVersion1();

} // namespace padside

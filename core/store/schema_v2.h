// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace padside {

/// What version 2 of the schema adds: forecasts as they were made, acknowledged flags, what is assumed of a unit.
[[nodiscard]] std::string schemaVersion2();

} // namespace padside

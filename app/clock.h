// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/date.h"

#include <cstdint>

namespace padside {

/// The only place that reads the computer's clock.
[[nodiscard]] Instant now();
[[nodiscard]] std::int64_t millisecondsNow();

} // namespace padside

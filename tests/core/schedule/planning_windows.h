// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/schedule/trips.h"
#include "tests/support/record_builder.h"

#include <string>

namespace padside::test {

/// The day on which the trips of these tests are planned.
inline const Date planningDay = day("2026-03-01");

/// A window between two days written as in ISO 8601.
[[nodiscard]] inline Window window(const std::string& earliest, const std::string& latest)
{
    return {day(earliest), day(latest)};
}

} // namespace padside::test

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/unit_review.h"
#include "tests/support/record_builder.h"

#include <string>

namespace padside::test {

/// A check with nothing but its name and its window, days written as in ISO 8601.
[[nodiscard]] inline Check check(const std::string& what, const std::string& earliest, const std::string& latest)
{
    Check made;
    made.what = Sentence{what, {}};
    made.earliest = day(earliest);
    made.latest = day(latest);
    return made;
}

} // namespace padside::test

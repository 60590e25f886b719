// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/verdict/verdict.h"

#include <span>
#include <string_view>

namespace padside {

/// What a pattern expects of one verdict.
struct Expectation
{
    std::string_view verdict; ///< its code
    Side side; ///< where it lies if the suspicion is right
    double weight = 1; ///< how much it counts
    bool orInside = false; ///< inside speaks neither for nor against
};

/// A fault and how it shows.
struct SuspicionPattern
{
    std::string_view code;
    const char* name; ///< PADSIDE_SAY
    const char* decides; ///< PADSIDE_SAY
    std::span<const Expectation> expectations;
};

/// All patterns we know. Common practice, no source.
[[nodiscard]] std::span<const SuspicionPattern> suspicionPatterns();

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/verdict/measured.h"
#include "core/verdict/verdict.h"

#include <span>
#include <string>
#include <vector>

namespace padside {

/// What several readings together may point to; never a verdict. Common practice, no source.
struct Suspicion
{
    std::string code; ///< "low-charge"
    std::string name; ///< "low charge or a leak"; translated where it is shown
    std::vector<Sentence> speaksFor; ///< strongest first
    std::vector<Sentence> speaksAgainst;
    Sentence decides; ///< what reading or look would decide
    double weight = 0; ///< rank: more for than against; above 0

    friend bool operator==(const Suspicion&, const Suspicion&) = default;
};

/// Ranked, the likeliest first; empty while fewer than two readings speak for anything. Verdicts that question readings
/// or give no answer count for nothing.
[[nodiscard]] std::vector<Suspicion> suspicionsFrom(std::span<const Verdict> verdicts, const Unit& unit);

} // namespace padside

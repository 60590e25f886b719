// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/verdict/verdict.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// What is asked for of a value: from `lowest` to `highest` it is within; past the far bounds it is outside; between
/// them it is watched. Without a far bound, past the near one is outside at once.
struct Range
{
    std::optional<double> lowest;
    std::optional<double> highest;
    std::optional<double> farLowest; ///< not above lowest
    std::optional<double> farHighest; ///< not below highest
};

/// From `near` below a target to as much above it, and the far bounds likewise.
[[nodiscard]] constexpr Range around(double target, double near, double far)
{
    return {target - near, target + near, target - far, target + far};
}

/// What to say of a value.
struct Told
{
    std::string code; ///< of the verdict
    std::vector<std::string> from; ///< reading kinds
    std::string name; ///< "Superheat"; PADSIDE_SAY
    std::string below; ///< what a value below the range means; PADSIDE_SAY
    std::string above; ///< what a value above it means; PADSIDE_SAY
    std::string source;
    std::optional<PartId> partId = {};
};

/// The verdict on a value held against a range.
[[nodiscard]] Verdict heldAgainst(double value, QuantityKind kind, const Range& range, const Told& told);

/// A verdict that gives no answer, and why.
[[nodiscard]] Verdict noAnswer(const Told& told, Sentence why);

/// A verdict that questions readings.
[[nodiscard]] Verdict question(std::string code, std::vector<std::string> from, Sentence sentence);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"
#include "core/record/coded.h"
#include "core/record/id.h"

#include <optional>
#include <string>
#include <vector>

namespace padside {

/// What a reading says, held against what is asked for.
enum class Judgement {
    within, ///< as asked for
    watch, ///< past the usual, not past the limit
    outside, ///< past the limit
    doubtful, ///< can hardly be: the reading is questioned, never refused
    unjudged, ///< no answer, and the sentence says why
};

[[nodiscard]] constexpr auto codesOf(Judgement)
{
    return std::array{Coded<Judgement>{Judgement::within, "within", "As asked"},
                      Coded<Judgement>{Judgement::watch, "watch", "Watch"},
                      Coded<Judgement>{Judgement::outside, "outside", "Outside"},
                      Coded<Judgement>{Judgement::doubtful, "doubtful", "Look again"},
                      Coded<Judgement>{Judgement::unjudged, "unjudged", "No answer"}};
}

/// On which side of what is asked for a value lies.
enum class Side { unknown, below, inside, above };

/// What one reading, or several together, mean: value, what is asked for, source, one sentence.
struct Verdict
{
    std::string code; ///< "superheat"; never changes
    std::vector<std::string> from; ///< codes of the reading kinds it was drawn from; it is told beside the last one
    std::optional<PartId> partId; ///< of the part they were taken at, where they belong to one
    std::optional<Amount> value;
    std::optional<Amount> lowest; ///< asked for; empty: no bound on that side
    std::optional<Amount> highest;
    Judgement judgement = Judgement::unjudged;
    Side side = Side::unknown;
    Sentence sentence;
    std::string source; ///< of what is asked for; empty where nothing is

    friend bool operator==(const Verdict&, const Verdict&) = default;
};

} // namespace padside

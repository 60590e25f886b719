// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/sentence.h"

#include <tl/expected.hpp>

namespace padside {

/// What sort of thing went wrong; the command line turns it into its exit code.
enum class ProblemKind {
    badInput, ///< what was typed or passed can't be meant
    cannotRead, ///< a file is missing, foreign, damaged or newer than the program
    cannotWrite, ///< read-only, full, locked
    refused, ///< the record does not allow it (a closed visit)
};

/// An expected failure: its sort, and one sentence that says what was wrong, where, and what to do.
struct Problem
{
    ProblemKind kind = ProblemKind::badInput;
    Sentence what;

    friend bool operator==(const Problem&, const Problem&) = default;
};

template <typename T> using Result = tl::expected<T, Problem>;

/// Shorthand for returning a Problem from a function that answers Result.
[[nodiscard]] inline tl::unexpected<Problem> problem(ProblemKind kind, std::string pattern,
                                                     std::vector<Argument> arguments = {})
{
    return tl::unexpected<Problem>(Problem{kind, Sentence{std::move(pattern), std::move(arguments)}});
}

} // namespace padside

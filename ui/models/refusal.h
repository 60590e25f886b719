// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/store/store_error.h"

namespace padside {

/// An entry that can't be made, and why: a sentence of PADSIDE_SAY. RecordBook says it as it says the store's own.
[[nodiscard]] inline StoreError refusal(const char* pattern)
{
    return StoreError(Problem{ProblemKind::refused, Sentence{pattern, {}}});
}

} // namespace padside

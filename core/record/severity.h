// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/coded.h"

namespace padside {

/// How soon a flag wants something done.
enum class Severity { look, plan, act };

[[nodiscard]] constexpr auto codesOf(Severity)
{
    return std::array{Coded<Severity>{Severity::look, "look", "look"}, Coded<Severity>{Severity::plan, "plan", "plan"},
                      Coded<Severity>{Severity::act, "act", "act"}};
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/quantity/problem.h"

#include <string>
#include <string_view>

namespace padside {

/// The name or sign of a currency as a person writes it ("EUR", "$", "kr"), trimmed; empty if nothing is written. A
/// Problem where it could be taken for a part of the number beside it, or is too long to stand there.
[[nodiscard]] Result<std::string> parseCurrency(std::string_view typed);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/quantity/problem.h"

#include <string>
#include <vector>

namespace padside {

/// Tags that count up from the last number in the first one: RT-08, RT-09, RT-10. Noughts in front are kept. One tag
/// needs no number. Refused with a sentence: no tag, several from a tag without a number.
[[nodiscard]] Result<std::vector<std::string>> countedTags(const std::string& first, int count);

} // namespace padside

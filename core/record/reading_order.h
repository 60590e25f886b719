// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string_view>

namespace padside {

/// The order in which a person looks for tags and names in a list: HP-2 before HP-10, without regard to the case of
/// letters from A to Z. Other letters stand in the order of their code points. -1, 0 or 1; 0 for equal texts only.
[[nodiscard]] int inReadingOrder(std::string_view one, std::string_view other);

} // namespace padside

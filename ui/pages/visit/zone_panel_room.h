// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace padside {

constexpr int outlineRoom = 3; ///< px around what scrolls, for the outline of the focus
constexpr int sideMargin = 16 - outlineRoom; ///< px left and right of everything

} // namespace padside

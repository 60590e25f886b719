// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace padside {

/// How a spare of a part kind is to be had; ours to start with (common practice, no source), theirs to change.
struct Supply
{
    double leadDays = 14; ///< from ordering it to having it at hand, 0..1000
    bool made = true; ///< false: no longer made
    std::string source; ///< empty: nothing is said of this kind, and the usual stands in
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace padside {

/// A figure a person assumes of one unit when weighing what it is worth ("price-new"), in the person's own money or in
/// SI.
struct UnitAssumption
{
    std::string code;
    double value = 0;

    friend bool operator==(const UnitAssumption&, const UnitAssumption&) = default;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/unit.h"

#include <vector>

namespace padside {

/// A unit that is about to be added, with the parts fitted to it.
struct FittedUnit
{
    Unit unit;
    std::vector<Part> parts;

    friend bool operator==(const FittedUnit&, const FittedUnit&) = default;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit.h"

namespace padside {

/// The wall that must be left in a unit's vessel, and how that is known.
struct WallAsked
{
    double metres = 0;
    Sentence from;
};

/// By the best that is known: the nameplate or the maker's data; else ASME VIII-1 from the vessel's outside diameter
/// and the refrigerant's pressure at the catalogue's temperature of a shut-off unit; else a share of the first reading,
/// `firstReadingM`.
[[nodiscard]] WallAsked requiredWallOf(const Unit& unit, const Catalogue& catalogue, double firstReadingM);

} // namespace padside

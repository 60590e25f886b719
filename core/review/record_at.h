// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit_record.h"

namespace padside {

/// The record as it stood at the end of `day`: standing entries of visits up to then, parts fitted by then (one removed
/// later is still fitted), promises made by then (one settled later is still open), flags acknowledged by then (one
/// taken back later still is).
[[nodiscard]] UnitRecord recordAt(UnitRecord record, Date day);

/// The record as it stood when `visit` began: what its own visit and later ones brought is left out. Parts removed on
/// that day are still fitted, parts fitted on that day are there too.
[[nodiscard]] UnitRecord recordBefore(const UnitRecord& record, const Visit& visit);

/// Puts parts into the order in which the catalogue lists them for this kind of unit, and zones into that of their part
/// kind. What the catalogue doesn't know comes last, in the order it had.
void putInCatalogueOrder(std::vector<Part>& parts, const Unit& unit, const Catalogue& catalogue);

} // namespace padside

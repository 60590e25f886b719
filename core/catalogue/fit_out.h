// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/record/unit.h"

#include <set>
#include <vector>

namespace padside {

/// The parts a unit of its kind has, with their zones, as the catalogue lists them. `leftOut` are places in
/// UnitKind::parts that this unit does not have. `fittedOn` is empty where it is not known how old the parts are. A
/// kind that is not in the catalogue has no parts.
[[nodiscard]] std::vector<Part> partsFor(const Unit& unit, const Catalogue& catalogue, IdMaker& ids,
                                         const std::set<std::size_t>& leftOut = {},
                                         std::optional<Date> fittedOn = std::nullopt);

} // namespace padside

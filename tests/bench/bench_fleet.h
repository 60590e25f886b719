// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/store/store.h"

#include <memory>

namespace padside::bench {

/// How large the fleet is that the store is measured on.
struct FleetSize
{
    int units = 2000;
    int zonesPerUnit = 12;
    int visitsPerUnit = 20;
    int visitsOfTheLongUnit = 40;
    /// As in a lived-in record: visits some weeks before or after their half-year, an eighth of the zones not seen, a
    /// third of them damp or wet, three sites out of four with air of their own.
    bool livedIn = false;
};

/// A made-up fleet in one file: parts and zones of the shipped catalogue, spring and fall visits, grades that only get
/// worse.
struct Fleet
{
    std::unique_ptr<Store> store;
    UnitId longUnit; ///< the one with more visits
};

[[nodiscard]] Fleet buildFleet(const QString& path, const Catalogue& catalogue, const FleetSize& size);

/// The last day on which a unit of that fleet was visited.
[[nodiscard]] Date lastVisitDay();

} // namespace padside::bench

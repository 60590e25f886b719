// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "sample-db/life_forecasts.h"
#include "sample-db/unit_life.h"

namespace padside {

class Store;

/// Writes a life into the store as the person would have: unit and parts, then visit by visit, each closed before the
/// next with what was foretold then, corrections afterwards. Throws StoreError.
void writeLife(Store& store, const UnitLife& life, const Catalogue& catalogue, const ForecastModels& models);

} // namespace padside

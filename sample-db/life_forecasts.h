// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/outlook/outlook_model.h"
#include "core/record/kept_forecast.h"
#include "sample-db/unit_life.h"

#include <vector>

namespace padside {

/// What was foretold at the closing of each visit, in the order of `life.record.visits`; nothing for an open one. Only
/// what was entered by then counts: neither later visits nor later corrections.
[[nodiscard]] std::vector<std::vector<KeptForecast>> lifeForecasts(const UnitLife& life, const Catalogue& catalogue,
                                                                   const OutlookModel& model);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/catalogue/catalogue.h"
#include "core/outlook/outlook_model.h"
#include "core/record/kept_forecast.h"
#include "core/record/unit_record.h"

#include <vector>

namespace padside {

/// What is to be kept of a unit's outlook when a visit is closed: one forecast for each zone of a part fitted at the
/// end of that day, as the outlook told it (what leads of grades, wall and rust), from what was entered up to that day,
/// in the record's order. Empty for a visit that is not in the record, and for a unit retired by then.
[[nodiscard]] std::vector<KeptForecast> keptForecasts(const UnitRecord& record, const Catalogue& catalogue,
                                                      const OutlookModel& model, VisitId visit);

} // namespace padside

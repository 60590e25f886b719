// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/outlook/outlook_model.h"
#include "core/review/unit_forecast.h"
#include "core/review/zone_course.h"
#include "ui/drawing/timeline.h"

#include <span>

namespace padside {

/// Lets the lanes of a timeline run on into what is expected. A part's worst lane gets the chances of the worst of its
/// zones, taken to go independently, and the dates of the zone that is spent first. Lanes of the whole unit and of
/// parts that are gone have no outlook.
void addOutlook(Timeline& timeline, const UnitForecast& forecast, std::span<const ZoneCourse> courses);

/// The timeline of a record with lanes that run on, all as of `today`.
[[nodiscard]] Timeline timelineWithOutlook(const UnitRecord& record, const Catalogue& catalogue,
                                           const OutlookModel& model, Date today);

} // namespace padside

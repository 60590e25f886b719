// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/record/grade.h"
#include "core/record/id.h"
#include "core/record/spent_dates.h"

#include <array>
#include <optional>

namespace padside {

/// What was foretold of one zone when a visit was closed: kept as it was said, to be held against what then happens.
struct KeptForecast
{
    UnitId unitId;
    VisitId visitId;
    Date on{}; ///< the day of the visit
    ZoneId zoneId;
    std::optional<Grade> grade; ///< last seen by then
    std::array<double, 4> chances{}; ///< that it is spent within half a year, one, two and five years of `on`
    SpentDates dates; ///< empty: later than is reckoned

    friend bool operator==(const KeptForecast&, const KeptForecast&) = default;
};

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/review/measured_outlook.h"

#include <span>
#include <vector>

namespace padside {

/// The outlook of a zone that counts: the grades' or a measurement's, whichever is more pessimistic.
struct LeadingOutlook
{
    PartId partId;
    ZoneId zoneId;
    OutlookBy by = OutlookBy::grades; ///< what leads
    double chanceToday = 0; ///< that it is spent already: the greatest of all that speak, as in `spent`
    std::vector<ChanceBy> spent; ///< for the forecast's days: the greatest chance of all that speak
    SpentDates dates; ///< the leader's
    Sentence when; ///< the leader's range of dates in words
    std::vector<Sentence> because; ///< the leader's reason, what the others say, then the forecast's notes
};

/// Picks the leader: whose chance reaches 50 % first; where that is the same or beyond telling, 10 %; else the grades.
/// Of `measured` those of other zones are passed over.
[[nodiscard]] LeadingOutlook leadingOutlook(const ZoneForecast& forecast, std::span<const MeasuredOutlook> measured,
                                            Date today);

} // namespace padside

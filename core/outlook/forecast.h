// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/zone_belief.h"
#include "core/quantity/sentence.h"
#include "core/record/spent_dates.h"

#include <span>
#include <vector>

namespace padside {

/// The chance that something has come to pass by a day.
struct ChanceBy
{
    Date by{};
    double chance = 0; ///< 0..1

    friend bool operator==(const ChanceBy&, const ChanceBy&) = default;
};

/// Within these a zone's pace is called usual.
constexpr double slowPace = 0.8;
constexpr double fastPace = 1.25;

/// Whether the first of the two comes to 50 % sooner; where that is the same or beyond telling, to 10 %.
[[nodiscard]] bool isSooner(const SpentDates& one, const SpentDates& other);

/// The day beyond which no dates are told.
[[nodiscard]] Date furthestTold(const OutlookFigures& figures, Date today);

/// The range in words: "Spent between … and …"; what is empty is later than `furthest`.
[[nodiscard]] Sentence whenSpent(const SpentDates& dates, Date today, Date furthest);

/// The outlook of one zone.
struct ZoneForecast
{
    PartId partId;
    ZoneId zoneId;
    double chanceToday = 0; ///< that it is spent already
    double pace = 1; ///< how fast it gets worse, as a multiple of its kind
    std::vector<ChanceBy> spent; ///< for the days asked for, in their order
    SpentDates dates; ///< empty: later than `furthest`
    Date furthest{}; ///< no dates are told beyond this
    Sentence when; ///< the range of dates in words
    Sentence because; ///< what it rests on: what was seen, and the zone's own pace
    std::vector<Sentence> notes; ///< what else bears on it: not seen since, a coat, the air, a record that does not fit
};

/// The chance that a zone is spent by a day; today's for days not after today.
[[nodiscard]] double chanceSpentBy(const ZoneBelief& zone, Date by);

/// The outlook from today's belief with the clock run forward: a coat ends when its life is over, wetness stays as last
/// found, the air as it is.
[[nodiscard]] ZoneForecast forecastZone(const ZoneBelief& zone, const OutlookFigures& figures,
                                        std::span<const Date> by);

} // namespace padside

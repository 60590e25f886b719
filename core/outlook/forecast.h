// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/outlook/zone_belief.h"
#include "core/quantity/sentence.h"

#include <optional>
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

/// The outlook of one zone.
struct ZoneForecast
{
    PartId partId;
    ZoneId zoneId;
    double chanceToday = 0; ///< that it is spent already
    std::vector<ChanceBy> spent; ///< for the days asked for, in their order
    std::optional<Date> early; ///< chance of spent reaches 10 %; empty: later than `furthest`
    std::optional<Date> middle; ///< 50 %
    std::optional<Date> late; ///< 90 %
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

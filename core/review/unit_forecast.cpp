// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_forecast.h"

#include <algorithm>

namespace padside {

std::array<Date, horizonCount> horizonsAfter(Date today)
{
    return {addMonths(today, 6), addMonths(today, 12), addMonths(today, 24), addMonths(today, 60)};
}

const ZoneForecast* UnitForecast::of(ZoneId zone) const
{
    const auto found = std::ranges::find(zones, zone, &ZoneForecast::zoneId);
    return found == zones.end() ? nullptr : &*found;
}

UnitForecast unitForecast(const KnownUnit& known, const Catalogue& catalogue)
{
    UnitForecast forecast;
    forecast.today = known.today;
    forecast.by = horizonsAfter(known.today);
    if (known.isRetired())
        return forecast;
    forecast.zones.reserve(known.beliefs.size());
    for (const ZoneBelief& belief : known.beliefs)
        forecast.zones.push_back(forecastZone(belief, catalogue.outlook(), forecast.by));
    constexpr auto ranking = static_cast<std::size_t>(Horizon::oneYear);
    std::ranges::stable_sort(forecast.zones, std::greater{},
                             [](const ZoneForecast& zone) { return zone.spent[ranking].chance; });
    forecast.unit = unitOutlook(known.record, catalogue, known.beliefs, forecast.by);
    return forecast;
}

UnitForecast unitForecast(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model, Date today)
{
    return unitForecast(knownUnit(record, catalogue, model, today), catalogue);
}

} // namespace padside

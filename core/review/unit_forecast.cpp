// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/unit_forecast.h"

#include <algorithm>
#include <functional>
#include <span>

namespace padside {

namespace {

constexpr auto ranking = static_cast<std::size_t>(Horizon::oneYear);

/// What was measured of each zone stands beside its outlook.
std::vector<LeadingOutlook> leadingOutlooks(const UnitForecast& forecast, std::span<const MeasuredOutlook> measured)
{
    std::vector<LeadingOutlook> leading;
    leading.reserve(forecast.zones.size());
    for (const ZoneForecast& zone : forecast.zones)
        leading.push_back(leadingOutlook(zone, measured, forecast.today));
    std::ranges::stable_sort(leading, std::greater{},
                             [](const LeadingOutlook& zone) { return zone.spent[ranking].chance; });
    return leading;
}

} // namespace

const ZoneForecast* UnitForecast::of(ZoneId zone) const
{
    const auto found = std::ranges::find(zones, zone, &ZoneForecast::zoneId);
    return found == zones.end() ? nullptr : &*found;
}

const LeadingOutlook* UnitForecast::leadingOf(ZoneId zone) const
{
    const auto found = std::ranges::find(leading, zone, &LeadingOutlook::zoneId);
    return found == leading.end() ? nullptr : &*found;
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
    std::ranges::stable_sort(forecast.zones, std::greater{},
                             [](const ZoneForecast& zone) { return zone.spent[ranking].chance; });
    const std::vector<MeasuredOutlook> measured = measuredOutlooks(known.record, catalogue, known.today);
    forecast.leading = leadingOutlooks(forecast, measured);
    forecast.unit = unitOutlook(known.record, catalogue, zoneChances(known, measured), known.today);
    return forecast;
}

UnitForecast unitForecast(const UnitRecord& record, const Catalogue& catalogue, const OutlookModel& model, Date today)
{
    return unitForecast(knownUnit(record, catalogue, model, today), catalogue);
}

} // namespace padside

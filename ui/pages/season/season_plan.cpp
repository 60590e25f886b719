// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/season/season_plan.h"

#include "core/schedule/season.h"
#include "ui/models/speaker.h"
#include "ui/pages/season/moved_trips.h"

#include <algorithm>
#include <map>

namespace padside {

void SeasonPlan::take(const ReviewedFleet& fleet)
{
    std::map<SiteId, SiteSeason> before;
    for (SiteSeason& site : m_sites)
        before.emplace(site.site.id, std::move(site));
    m_sites.clear();

    for (std::size_t first = 0; first < fleet.units.size();) {
        std::vector<std::shared_ptr<const ReviewedUnit>> units;
        const SiteId id = fleet.units[first]->site.id;
        for (; first < fleet.units.size() && fleet.units[first]->site.id == id; ++first) {
            const auto& retiredOn = fleet.units[first]->unit.retiredOn;
            if (!retiredOn || *retiredOn > fleet.today)
                units.push_back(fleet.units[first]);
        }
        if (units.empty())
            continue;
        const auto same = before.find(id);
        if (same != before.end() && same->second.units == units && same->second.today == fleet.today)
            m_sites.push_back(std::move(same->second));
        else
            m_sites.push_back(siteSeason(std::move(units), m_moved.of(id), fleet.today));
    }
}

void SeasonPlan::replan(SiteId site)
{
    const auto place = std::ranges::find(m_sites, site, [](const SiteSeason& one) { return one.site.id; });
    if (place != m_sites.end())
        *place = siteSeason(place->units, m_moved.of(site), place->today);
}

const SiteSeason* SeasonPlan::site(SiteId id) const
{
    const auto place = std::ranges::find(m_sites, id, [](const SiteSeason& one) { return one.site.id; });
    return place == m_sites.end() ? nullptr : &*place;
}

std::optional<std::size_t> SeasonPlan::tripOn(const SiteSeason& site, Date on)
{
    const auto trip = std::ranges::find(site.trips, on, &SeasonTrip::on);
    return trip == site.trips.end() ? std::nullopt : std::optional(static_cast<std::size_t>(trip - site.trips.begin()));
}

std::size_t SeasonPlan::tripCount() const
{
    std::size_t count = 0;
    for (const SiteSeason& site : m_sites)
        count += site.trips.size();
    return count;
}

BoardRow boardRow(const SiteSeason& site)
{
    BoardRow row;
    row.site = shown(site.site.name);
    for (const VisitReason reason : {VisitReason::spring, VisitReason::fall}) {
        for (int year = yearOf(site.today) - 1; year <= yearOf(site.today) + 2; ++year)
            row.seasons.push_back(seasonOf(site.site, reason, year).window);
    }
    for (const SeasonTrip& trip : site.trips) {
        const bool overdue = std::ranges::any_of(
            trip.checks, [&](const SeasonCheck& check) { return check.check().latest < site.today; });
        const bool late = std::ranges::any_of(trip.checks, [&](const SeasonCheck& check) {
            return check.daysLate > 0 && check.check().latest >= site.today;
        });
        row.trips.push_back(
            BoardTrip{trip.on, static_cast<int>(trip.checks.size()), overdue, late, trip.moved.has_value()});
    }
    return row;
}

} // namespace padside

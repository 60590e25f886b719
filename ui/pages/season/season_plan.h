// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/review/site_season.h"
#include "ui/drawing/season_board.h"

#include <QString>

namespace padside {

class MovedTrips;

/// The trips to all sites, worked out anew only where units changed: thousands of units come in by and by.
class SeasonPlan
{
public:
    explicit SeasonPlan(MovedTrips& moved)
        : m_moved(moved)
    {
    }

    /// Takes a fleet; sites without a unit in use are left out.
    void take(const ReviewedFleet& fleet);
    /// Works out the trips of one site again, since its chosen days changed.
    void replan(SiteId site);

    [[nodiscard]] const std::vector<SiteSeason>& sites() const { return m_sites; } ///< by name
    [[nodiscard]] const SiteSeason* site(SiteId id) const;
    /// The trip of a site on a day.
    [[nodiscard]] static std::optional<std::size_t> tripOn(const SiteSeason& site, Date on);
    /// How many trips there are.
    [[nodiscard]] std::size_t tripCount() const;

private:
    MovedTrips& m_moved;
    std::vector<SiteSeason> m_sites;
};

/// A line of the board for a site.
[[nodiscard]] BoardRow boardRow(const SiteSeason& site);

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/site_season.h"

#include "core/schedule/season.h"

#include <algorithm>
#include <cassert>

namespace padside {

namespace {

SeasonTrip tripOf(const SiteSeason& season, const PlannedTrip& planned)
{
    SeasonTrip trip;
    trip.on = planned.on;
    trip.moved = planned.moved;
    for (const std::size_t window : planned.windows) {
        SeasonCheck check = season.checkOf(window);
        check.daysLate = std::max(0, static_cast<int>((planned.on - check.check().latest).count()));
        if (window == planned.forcedBy)
            trip.forcedBy = trip.checks.size();
        trip.checks.push_back(std::move(check));
    }
    return trip;
}

} // namespace

int SeasonTrip::daysLate() const
{
    int most = 0;
    for (const SeasonCheck& check : checks)
        most = std::max(most, check.daysLate);
    return most;
}

std::vector<std::shared_ptr<const ReviewedUnit>> SeasonTrip::units() const
{
    std::vector<std::shared_ptr<const ReviewedUnit>> all;
    for (const SeasonCheck& check : checks) {
        if (all.empty() || all.back() != check.unit)
            all.push_back(check.unit);
    }
    return all;
}

MoveCost SiteSeason::costOfMove(std::size_t trip, Date to) const
{
    assert(to >= today);
    return padside::costOfMove(
        windows, moves, today, planned.at(trip), to, [this](Date day) { return isWorkingDayInSeason(site, day); },
        dueBy);
}

MoveCost SiteSeason::costOfChoice(std::size_t trip) const
{
    return padside::costOfChoice(
        windows, moves, today, planned.at(trip), [this](Date day) { return isWorkingDayInSeason(site, day); }, dueBy);
}

std::vector<MovedTrip> SiteSeason::movesWithKept(std::size_t trip, const Catalogue& catalogue) const
{
    return withKept(windows, moves, planned, trip, static_cast<int>(catalogue.assumption("kept-day-grace-days")));
}

std::optional<std::size_t> SiteSeason::chosenTripThatNeeds(Date on) const
{
    for (std::size_t i = 0; i < trips.size(); ++i) {
        if (!trips[i].moved || trips[i].checks.empty())
            continue;
        const MoveCost cost = costOfChoice(i);
        if (cost.furtherTrips > 0 && std::ranges::find(cost.onlyThen, on) != cost.onlyThen.end())
            return i;
    }
    return std::nullopt;
}

SeasonCheck SiteSeason::checkOf(std::size_t window) const
{
    for (const auto& unit : units) {
        if (window < unit->review.checks.size())
            return SeasonCheck{unit, window, 0};
        window -= unit->review.checks.size();
    }
    assert(false);
    return {};
}

SiteSeason siteSeason(std::vector<std::shared_ptr<const ReviewedUnit>> units, std::vector<MovedTrip> moves, Date today)
{
    assert(!units.empty());
    SiteSeason season;
    season.site = units.front()->site;
    season.today = today;
    std::erase_if(units, [today](const auto& unit) { return unit->unit.retiredOn && *unit->unit.retiredOn <= today; });
    season.units = std::move(units);
    season.moves = std::move(moves);
    for (const auto& unit : season.units) {
        for (const Check& check : unit->review.checks) {
            season.windows.push_back({std::max(check.earliest, today), std::max(check.latest, today)});
            season.dueBy.push_back(check.latest);
        }
    }
    season.planned = plannedTrips(
        season.windows, season.moves, today, [&](Date day) { return isWorkingDayInSeason(season.site, day); },
        season.dueBy);
    for (const PlannedTrip& planned : season.planned)
        season.trips.push_back(tripOf(season, planned));
    return season;
}

VisitReason reasonOnTrip(const SeasonTrip& trip, const ReviewedUnit& unit)
{
    for (const SeasonCheck& check : trip.checks) {
        if (check.unit->unit.id == unit.unit.id && check.check().checklist)
            return *check.check().checklist;
    }
    for (const VisitReason reason : {VisitReason::spring, VisitReason::fall}) {
        if (seasonNotOver(unit.site, reason, trip.on).window.earliest <= trip.on)
            return reason;
    }
    return VisitReason::callOut;
}

} // namespace padside

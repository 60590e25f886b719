// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/move_cost.h"

#include <algorithm>

namespace padside {

namespace {

bool isAmong(const std::vector<PlannedTrip>& trips, Date day)
{
    return std::ranges::find(trips, day, &PlannedTrip::on) != trips.end();
}

std::int64_t counted(std::size_t count)
{
    return static_cast<std::int64_t>(count);
}

Sentence lateSentence(const MoveCost& cost)
{
    const std::int64_t worst = cost.late.front().days;
    if (cost.late.size() == 1 && worst == 1)
        return {PADSIDE_SAY("One check would come a day later than it should."), {}};
    if (cost.late.size() == 1)
        return {PADSIDE_SAY("One check would come {0} days later than it should."), {worst}};
    return {PADSIDE_SAY("{0} checks would come later than they should, the worst by {1} days."),
            {counted(cost.late.size()), worst}};
}

Sentence earlySentence(const MoveCost& cost)
{
    if (cost.tooEarly.size() == 1)
        return {PADSIDE_SAY("For one check it would be too early; it waits for another trip."), {}};
    return {PADSIDE_SAY("For {0} checks it would be too early; they wait for another trip."),
            {counted(cost.tooEarly.size())}};
}

Sentence tripsSentence(const MoveCost& cost)
{
    if (cost.furtherTrips < 0)
        return {PADSIDE_SAY("It saves a trip."), {}};
    if (cost.onlyThen.size() == 1)
        return {PADSIDE_SAY("It needs one more trip, on {0}."), {cost.onlyThen.front()}};
    return {PADSIDE_SAY("Trips more than now: {0}."), {std::int64_t{cost.furtherTrips}}};
}

/// The last day that a trip could wait for.
Date longestWait(const PlannedTrip& trip, std::span<const Window> windows)
{
    return trip.windows.empty() ? trip.on : std::max(trip.on, windows[trip.forcedBy].latest);
}

/// For each of these windows (ascending) the day of the trip that serves it.
std::vector<Date> servedOn(const std::vector<PlannedTrip>& trips, const std::vector<std::size_t>& windows)
{
    std::vector<Date> days(windows.size());
    for (const PlannedTrip& trip : trips) {
        for (const std::size_t index : trip.windows) {
            const auto place = std::ranges::lower_bound(windows, index);
            if (place != windows.end() && *place == index)
                days[static_cast<std::size_t>(place - windows.begin())] = trip.on;
        }
    }
    return days;
}

/// Of the windows `served`, which the trip in question serves: what it costs to go by `then`, where its day is `to`,
/// rather than by `now`.
MoveCost costBetween(std::span<const Window> windows, const std::vector<PlannedTrip>& now,
                     const std::vector<PlannedTrip>& then, const std::vector<std::size_t>& served, Date to)
{
    MoveCost cost;
    cost.to = to;
    for (const PlannedTrip& other : then) {
        for (const std::size_t index : other.late) {
            if (std::ranges::binary_search(served, index))
                cost.late.push_back({index, static_cast<int>((other.on - windows[index].latest).count())});
        }
        if (other.on != to && !isAmong(now, other.on))
            cost.onlyThen.push_back(other.on);
    }
    std::ranges::stable_sort(cost.late, std::ranges::greater{}, &MoveCost::Late::days);
    cost.servedBefore = servedOn(now, served);
    cost.servedOn = servedOn(then, served);
    for (const std::size_t index : served) {
        if (windows[index].earliest > to)
            cost.tooEarly.push_back(index);
    }
    cost.furtherTrips = static_cast<int>(then.size()) - static_cast<int>(now.size());
    return cost;
}

} // namespace

std::vector<MovedTrip> withMove(std::span<const MovedTrip> moves, Date from, Date to)
{
    std::vector<MovedTrip> all;
    bool wasMoved = false;
    for (const MovedTrip& move : moves) {
        const bool isIt = move.to == from;
        wasMoved = wasMoved || isIt;
        const MovedTrip next{move.insteadOf, isIt ? to : move.to, move.takesAlongFrom};
        if (next.insteadOf != next.to || next.isKept())
            all.push_back(next);
    }
    if (!wasMoved && from != to)
        all.push_back({from, to});
    return all;
}

std::vector<MovedTrip> withKept(std::span<const Window> windows, std::span<const MovedTrip> moves,
                                std::span<const PlannedTrip> trips, std::size_t trip, int graceDays)
{
    std::vector<MovedTrip> all(moves.begin(), moves.end());
    const Date day = trips[trip].on;
    if (std::ranges::find(all, day, &MovedTrip::to) != all.end())
        return all;
    Date from = day - std::chrono::days(graceDays);
    if (trip > 0)
        from = std::max(from, longestWait(trips[trip - 1], windows) + std::chrono::days(1));
    all.push_back({day, day, std::min(from, day)});
    return all;
}

std::vector<MovedTrip> withoutChoice(std::span<const MovedTrip> moves, Date day)
{
    std::vector<MovedTrip> all(moves.begin(), moves.end());
    std::erase_if(all, [day](const MovedTrip& move) { return move.to == day; });
    return all;
}

MoveCost costOfMove(std::span<const Window> windows, std::span<const MovedTrip> moves, Date today,
                    const PlannedTrip& trip, Date to, const std::function<bool(Date)>& preferred,
                    std::span<const Date> dueBy)
{
    return costBetween(windows, plannedTrips(windows, moves, today, preferred, dueBy),
                       plannedTrips(windows, withMove(moves, trip.on, to), today, preferred, dueBy), trip.windows, to);
}

MoveCost costOfChoice(std::span<const Window> windows, std::span<const MovedTrip> moves, Date today,
                      const PlannedTrip& trip, const std::function<bool(Date)>& preferred, std::span<const Date> dueBy)
{
    return costBetween(windows, plannedTrips(windows, withoutChoice(moves, trip.on), today, preferred, dueBy),
                       plannedTrips(windows, moves, today, preferred, dueBy), trip.windows, trip.on);
}

std::vector<Sentence> costSentences(const MoveCost& cost)
{
    if (cost.isNothing())
        return {Sentence{PADSIDE_SAY("Costs nothing: every check stays within its window."), {}}};
    std::vector<Sentence> sentences;
    if (!cost.late.empty())
        sentences.push_back(lateSentence(cost));
    if (!cost.tooEarly.empty())
        sentences.push_back(earlySentence(cost));
    if (cost.furtherTrips != 0)
        sentences.push_back(tripsSentence(cost));
    return sentences;
}

} // namespace padside

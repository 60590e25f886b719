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

} // namespace

std::vector<MovedTrip> withMove(std::span<const MovedTrip> moves, Date from, Date to)
{
    std::vector<MovedTrip> all;
    bool wasMoved = false;
    for (const MovedTrip& move : moves) {
        const bool isIt = move.to == from;
        wasMoved = wasMoved || isIt;
        const MovedTrip next{move.insteadOf, isIt ? to : move.to};
        if (next.insteadOf != next.to)
            all.push_back(next);
    }
    if (!wasMoved && from != to)
        all.push_back({from, to});
    return all;
}

MoveCost costOfMove(std::span<const Window> windows, std::span<const MovedTrip> moves, Date today,
                    const PlannedTrip& trip, Date to, const std::function<bool(Date)>& preferred)
{
    const std::vector<PlannedTrip> now = plannedTrips(windows, moves, today, preferred);
    const std::vector<PlannedTrip> then = plannedTrips(windows, withMove(moves, trip.on, to), today, preferred);

    MoveCost cost;
    for (const PlannedTrip& other : then) {
        for (const std::size_t index : other.late) {
            if (std::ranges::binary_search(trip.windows, index))
                cost.late.push_back({index, static_cast<int>((other.on - windows[index].latest).count())});
        }
        if (other.on != to && !isAmong(now, other.on))
            cost.onlyThen.push_back(other.on);
    }
    cost.servedOn.assign(trip.windows.size(), to);
    for (const PlannedTrip& other : then) {
        for (const std::size_t index : other.windows) {
            const auto place = std::ranges::lower_bound(trip.windows, index);
            if (place != trip.windows.end() && *place == index)
                cost.servedOn[static_cast<std::size_t>(place - trip.windows.begin())] = other.on;
        }
    }
    std::ranges::stable_sort(cost.late, std::ranges::greater{}, &MoveCost::Late::days);
    for (const std::size_t index : trip.windows) {
        if (windows[index].earliest > to)
            cost.tooEarly.push_back(index);
    }
    cost.furtherTrips = static_cast<int>(then.size()) - static_cast<int>(now.size());
    return cost;
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

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/move_risk.h"

#include "core/catalogue/subject.h"

#include <algorithm>
#include <cassert>
#include <map>
#include <utility>

namespace padside {

namespace {

/// Smaller changes are not worth a word.
constexpr double worthSaying = 0.001;

/// When a zone is seen without the move and with it: by the first check that looks at it.
struct Sights
{
    std::shared_ptr<const ReviewedUnit> unit;
    Date before{};
    Date after{};
};

MoveRisk riskOver(const std::map<ZoneId, Sights>& zones)
{
    MoveRisk risk;
    double noneBefore = 1;
    double noneAfter = 1;
    double most = 0;
    for (const auto& [id, seen] : zones) {
        const ZoneRisk* zone = riskOf(seen.unit->review.risks, id);
        if (zone == nullptr)
            continue;
        const double before = zone->chanceOn(seen.before);
        const double after = zone->chanceOn(seen.after);
        noneBefore *= 1 - before;
        noneAfter *= 1 - after;
        const double share = (after - before) / zone->tolerance;
        if (after - before >= worthSaying && share > most) {
            most = share;
            risk.worst
                = MoveRisk::Zone{seen.unit, zone->partId, id, before, after, zone->tolerance, zone->tolerancePercent()};
        }
    }
    risk.anyBefore = 1 - noneBefore;
    risk.anyAfter = 1 - noneAfter;
    return risk;
}

/// `dayThen` tells when the check with an index into the trip's is served with the move; `dayNow` without.
template <typename DayNow, typename DayThen>
MoveRisk riskOfTrip(const SeasonTrip& trip, const DayNow& dayNow, const DayThen& dayThen)
{
    std::map<ZoneId, Sights> zones;
    for (std::size_t i = 0; i < trip.checks.size(); ++i) {
        const SeasonCheck& check = trip.checks[i];
        for (const ZoneId zone : check.check().zones) {
            const auto [place, isNew] = zones.try_emplace(zone, Sights{check.unit, dayNow(i), dayThen(i)});
            if (!isNew) {
                place->second.before = std::min(place->second.before, dayNow(i));
                place->second.after = std::min(place->second.after, dayThen(i));
            }
        }
    }
    return riskOver(zones);
}

} // namespace

MoveRisk riskOfMove(const SiteSeason& season, std::size_t trip, const MoveCost& cost)
{
    const SeasonTrip& moved = season.trips.at(trip);
    assert(cost.servedOn.size() == moved.checks.size());
    return riskOfTrip(
        moved, [&](std::size_t) { return moved.on; }, [&](std::size_t i) { return cost.servedOn[i]; });
}

std::optional<MoveRisk> riskOfChosenDay(const SiteSeason& season, std::size_t trip)
{
    const SeasonTrip& chosen = season.trips.at(trip);
    if (!chosen.moved)
        return std::nullopt;
    const Date workedOut = std::max(chosen.moved->insteadOf, season.today);
    return riskOfTrip(
        chosen, [&](std::size_t) { return workedOut; }, [&](std::size_t) { return chosen.on; });
}

std::vector<Sentence> riskSentences(const MoveRisk& risk, const Catalogue& catalogue)
{
    std::vector<Sentence> sentences;
    if (!risk.worst)
        return sentences;
    const MoveRisk::Zone& worst = *risk.worst;
    UnitRecord named; // as much of a record as it takes to name a zone
    named.unit = worst.unit->unit;
    named.parts = worst.unit->fitted;
    const Part* part = findPart(named, worst.partId);
    const Zone* zone = findZone(named, worst.zoneId);
    if (part == nullptr || zone == nullptr)
        return sentences;
    const auto subject = subjectOf(named, catalogue, *part, zone);
    const std::vector<Argument> rest{Chance{worst.before}, Chance{worst.after}, worst.unit->unit.tag,
                                     worst.tolerancePercent};
    sentences.push_back(
        worst.before <= worst.tolerance && worst.after > worst.tolerance
            ? about(subject,
                    PADSIDE_SAY("{0}{1}, {2} ({5}): the chance that it is spent unseen rises from {3} to {4}, past the "
                                "{6} % tolerated."),
                    rest)
            : about(subject,
                    PADSIDE_SAY("{0}{1}, {2} ({5}): the chance that it is spent unseen rises from {3} to {4}."), rest));
    if (risk.anyAfter - risk.anyBefore >= worthSaying) {
        sentences.push_back({PADSIDE_SAY("That something of this trip is found spent: {1} instead of {0}."),
                             {Chance{risk.anyBefore}, Chance{risk.anyAfter}}});
    }
    return sentences;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/move_risk.h"

#include "core/catalogue/subject.h"
#include "core/quantity/chance_words.h"

#include <algorithm>
#include <cassert>
#include <map>

namespace padside {

namespace {

/// Smaller changes are not worth a word.
constexpr double worthSaying = 0.001;

/// When a zone is looked at without the choice and with it: by the first check that does.
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

/// Of "something": said where it rises and is not as good as certain without the choice already.
bool isWorthSayingOfAny(const MoveRisk& risk)
{
    constexpr double asGoodAsCertain = 0.985; // shown as 99 %, the most that is ever said
    return risk.anyAfter - risk.anyBefore >= worthSaying && risk.anyBefore < asGoodAsCertain;
}

} // namespace

MoveRisk riskOfMove(const SiteSeason& season, std::size_t trip, const MoveCost& cost)
{
    const std::vector<SeasonCheck>& checks = season.trips.at(trip).checks;
    assert(cost.servedBefore.size() == checks.size() && cost.servedOn.size() == checks.size());
    std::map<ZoneId, Sights> zones;
    for (std::size_t i = 0; i < checks.size(); ++i) {
        for (const ZoneId zone : checks[i].check().zones) {
            Sights& seen = zones.try_emplace(zone, Sights{checks[i].unit, Date::max(), Date::max()}).first->second;
            seen.before = std::min(seen.before, cost.servedBefore[i]);
            seen.after = std::min(seen.after, cost.servedOn[i]);
        }
    }
    MoveRisk risk = riskOver(zones);
    risk.on = cost.to;
    risk.instead = cost.servedBefore.empty() ? cost.to : std::ranges::min(cost.servedBefore);
    return risk;
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
    if (isWorthSayingOfAny(risk)) {
        const auto [before, after] = chancesBeside(risk.anyBefore, risk.anyAfter);
        sentences.push_back({PADSIDE_SAY("The chance that something is already spent when you look at it rises from "
                                         "{0} to {1} if you go on {2} instead of {3}."),
                             {before, after, risk.on, risk.instead}});
    }
    const auto [before, after] = chancesBeside(worst.before, worst.after);
    const bool passes = worst.before <= worst.tolerance && worst.after > worst.tolerance;
    sentences.push_back(
        about(subjectOf(named, catalogue, *part, zone),
              passes ? PADSIDE_SAY("{0}{1}, {2} ({5}): the chance that it is spent before you see it rises most, from "
                                   "{3} to {4}, past the {6} % tolerated.")
                     : PADSIDE_SAY("{0}{1}, {2} ({5}): the chance that it is spent before you see it rises most, from "
                                   "{3} to {4}."),
              {before, after, worst.unit->unit.tag, worst.tolerancePercent}));
    return sentences;
}

} // namespace padside

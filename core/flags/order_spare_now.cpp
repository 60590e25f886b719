// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/subject.h"
#include "core/flags/rules.h"
#include "core/flags/wording.h"

#include <algorithm>
#include <cmath>

namespace padside {

namespace {

/// The zone of a part whose chance passes its tolerance first.
struct Pressing
{
    const ZoneRisk* risk = nullptr;
    const ZoneHistory* history = nullptr;
};

std::optional<Pressing> mostPressing(const UnitView& unit, const Part& part)
{
    std::optional<Pressing> first;
    for (const ZoneHistory& history : unit.zones) {
        const ZoneRisk* risk = history.partId == part.id ? riskOf(unit.risks, history.zoneId) : nullptr;
        if (risk == nullptr || risk->soils || !risk->overOn || risk->toleratedAs == Consequence::looks)
            continue;
        if (!first || *risk->overOn < *first->risk->overOn)
            first = Pressing{risk, &history};
    }
    return first;
}

bool isSpent(const Pressing& pressing)
{
    return pressing.history->known && pressing.history->known->grade == Grade::spent;
}

Sentence sentenceOf(const UnitView& unit, const Part& part, const Pressing& pressing, const Supply& supply, Date there)
{
    const auto subject = subjectOf(unit.record, unit.catalogue, part, findZone(unit.record, pressing.risk->zoneId));
    const std::vector<Argument> rest{there, Chance{pressing.risk->chanceOn(there)}, pressing.risk->tolerancePercent(),
                                     Word{std::string(wordOf(pressing.risk->toleratedAs))}};
    if (!supply.made) {
        return about(
            subject,
            PADSIDE_SAY("{0}{1}, {2}: by {3} the chance that it is spent is {4}, more than the {5} % tolerated "
                        "({6}), and this part is no longer made. Look for one in time, or for another way."),
            rest);
    }
    return about(subject,
                 PADSIDE_SAY("{0}{1}, {2}: a spare ordered today is there by about {3}; the chance that it is spent by "
                             "then is {4}, more than the {5} % tolerated ({6}). Order one now."),
                 rest);
}

Severity severityOf(const UnitView& unit, const Pressing& pressing, double chance)
{
    if (isSpent(pressing))
        return Severity::act;
    return chance < unit.catalogue.assumption("spent-plan-chance") ? Severity::look : Severity::plan;
}

} // namespace

std::vector<Worry> orderSpareNow(const UnitView& unit)
{
    std::vector<Worry> worries;
    for (const Part& part : unit.record.parts) {
        const PartKind* kind = part.removedOn ? nullptr : unit.catalogue.partKind(part.kind);
        if (kind == nullptr || kind->spare == Spare::none)
            continue; // has a rule of its own
        const auto pressing = mostPressing(unit, part);
        const Supply supply = unit.catalogue.supplyOf(part.kind);
        if (supply.made && supply.leadDays <= unit.catalogue.assumption("spare-at-once-days"))
            continue; // bought when it is needed
        const Date there = unit.today + std::chrono::days(static_cast<int>(std::ceil(supply.leadDays)));
        if (!pressing || *pressing->risk->overOn > there)
            continue;
        Worry worry;
        const double chance = pressing->risk->chanceOn(there);
        worry.severity = severityOf(unit, *pressing, chance);
        worry.sentence = sentenceOf(unit, part, *pressing, supply, there);
        worry.clears = Sentence{PADSIDE_SAY("The part replaced, or seen again and found better than feared; "
                                            "acknowledge it once the spare is ordered."),
                                {}};
        if (const auto& known = pressing->history->known) {
            worry.evidence = {known->findingId};
            worry.grade = known->grade;
        }
        worry.partId = part.id;
        worry.extent = chance;
        worries.push_back(std::move(worry));
    }
    return worries;
}

} // namespace padside

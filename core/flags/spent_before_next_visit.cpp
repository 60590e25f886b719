// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"

namespace padside {

namespace {

Severity severityOf(const ZoneView& zone, const ZoneRisk& risk, double chance)
{
    const bool littleAtStake = risk.toleratedAs == Consequence::looks || risk.toleratedAs == Consequence::nuisance;
    if (littleAtStake || chance < zone.catalogue.assumption("spent-plan-chance"))
        return Severity::look;
    return chance < zone.catalogue.assumption("spent-act-chance") ? Severity::plan : Severity::act;
}

Sentence sentenceOf(const ZoneView& zone, const ZoneRisk& risk)
{
    std::vector<Argument> rest{Chance{risk.chanceOn(zone.nextVisit)}, zone.nextVisit, risk.tolerancePercent(),
                               Word{std::string(wordOf(risk.toleratedAs))}};
    const auto& known = zone.history.known;
    if (!known) {
        return about(subjectOf(zone),
                     PADSIDE_SAY("{0}{1}, {2}: never seen; by the usual life of its kind the chance that it is spent "
                                 "before the next visit ({4}) is {3}, more than the {5} % tolerated ({6})."),
                     std::move(rest));
    }
    rest.insert(rest.end(), {numeralOf(known->grade), nameOf(known->grade), known->on});
    return about(subjectOf(zone),
                 PADSIDE_SAY("{0}{1}, {2}: {7} {8} on {9}; the chance that it is spent before the next visit ({4}) is "
                             "{3}, more than the {5} % tolerated ({6})."),
                 std::move(rest));
}

} // namespace

std::optional<Worry> spentBeforeNextVisit(const ZoneView& zone)
{
    const ZoneRisk* risk = zone.risk;
    const auto& known = zone.history.known;
    if (risk == nullptr || !risk->overOn || *risk->overOn > zone.nextVisit || (known && known->grade == Grade::spent))
        return std::nullopt;
    Worry worry;
    const double chance = risk->chanceOn(zone.nextVisit);
    worry.severity = severityOf(zone, *risk, chance);
    if (worry.severity == Severity::look && notSeenTooLong(zone))
        return std::nullopt; // that flag asks for the same, and says why it is not known better
    worry.sentence = sentenceOf(zone, *risk);
    worry.clears
        = Sentence{PADSIDE_SAY("Seen again and found better than feared, worked on, or the part replaced."), {}};
    if (known)
        worry.evidence = {known->findingId};
    worry.extent = chance;
    return worry;
}

} // namespace padside

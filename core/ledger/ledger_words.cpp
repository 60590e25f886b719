// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/unit_ledger.h"

#include <cmath>

namespace padside {

namespace {

/// Less than this share of the full charge is within what scales and hoses lose: told as balanced. Common practice, no
/// source.
constexpr double withinScales = 0.01;

Argument massOf(double kilograms)
{
    return Amount{kilograms, QuantityKind::mass};
}

Argument shareOf(double share)
{
    return Amount{share, QuantityKind::ratio};
}

} // namespace

Sentence balanceSentence(const UnitLedger& ledger)
{
    if (ledger.days.empty())
        return {PADSIDE_SAY("No refrigerant put in or taken out is on record."), {}};
    if (!ledger.fullChargeKg) {
        return {
            PADSIDE_SAY("The nameplate's factory charge is not written down: what should be in the unit and its leak "
                        "rate can't be told. Enter the charge with the nameplate."),
            {}};
    }
    const double full = *ledger.fullChargeKg;
    const double beyond = ledger.beyondFullKg;
    if (full + beyond < -withinScales * full) {
        return {PADSIDE_SAY("{0} more came out than the factory charge of {1} and all that went in: a mass or the "
                            "nameplate is wrong, or the unit was overcharged."),
                {massOf(-(full + beyond)), massOf(full)}};
    }
    if (beyond > withinScales * full) {
        return {PADSIDE_SAY("{0} more went in than came out ({2} of the factory charge of {1}): so much has leaked "
                            "away, unless the unit was low before or is overcharged."),
                {massOf(beyond), massOf(full), shareOf(beyond / full)}};
    }
    if (beyond < -withinScales * full) {
        return {PADSIDE_SAY("{0} more came out or was lost than went in: of the factory charge of {1} no more than {2} "
                            "should be left."),
                {massOf(-beyond), massOf(full), massOf(std::max(0.0, full + beyond))}};
    }
    return {PADSIDE_SAY("What went in and what came out balance: the factory charge of {0} should be in the unit."),
            {massOf(full)}};
}

std::optional<Sentence> rateSentence(const UnitLedger& ledger)
{
    const LedgerDay* last = ledger.lastTopUp();
    if (last == nullptr || !last->annualized || !last->rolling || !ledger.rollingToday)
        return std::nullopt;
    std::vector<Argument> arguments{massOf(last->topUpKg), last->on, shareOf(*last->annualized),
                                    shareOf(*last->rolling), shareOf(*ledger.rollingToday)};
    if (last->daysSinceAdded) {
        return Sentence{
            PADSIDE_SAY("Leak rate when {0} was added on {1}: {2} of the full charge a year by annualizing, "
                        "{3} by the rolling average; {4} in the 365 days up to today."),
            std::move(arguments)};
    }
    return Sentence{PADSIDE_SAY("Leak rate when {0} was added on {1}: at least {2} of the full charge a year by "
                                "annualizing (when it was last full is not known), {3} by the rolling average; {4} in "
                                "the 365 days up to today."),
                    std::move(arguments)};
}

std::optional<Sentence> limitSentence(const UnitLedger& ledger)
{
    if (!ledger.limit)
        return std::nullopt;
    std::vector<Argument> arguments{shareOf(ledger.limit->rate), Word{ledger.limit->name}};
    if (ledger.limit->force == LeakForce::regulatory)
        return Sentence{PADSIDE_SAY("Limit: {0} a year, regulatory ({1})."), std::move(arguments)};
    return Sentence{PADSIDE_SAY("Limit: {0} a year, advisory ({1})."), std::move(arguments)};
}

std::optional<Sentence> dutySentence(const UnitLedger& ledger)
{
    if (!ledger.isOverLimit() || ledger.limit->force != LeakForce::regulatory || !ledger.limit->duties)
        return std::nullopt;
    const LeakDuties& duties = *ledger.limit->duties;
    return Sentence{
        PADSIDE_SAY("Over the limit: the rule asks for a repair within {0} days ({1} where a plant must be shut "
                    "down), records kept {2} years, and a report by 1 March where {3} of the full charge or "
                    "more was lost in a calendar year. Read the rule itself."),
        {static_cast<std::int64_t>(duties.repairDays), static_cast<std::int64_t>(duties.repairDaysWithShutdown),
         static_cast<std::int64_t>(duties.recordYears), shareOf(duties.reportedLoss)}};
}

Sentence leakReckoning()
{
    return {
        PADSIDE_SAY("Reckoned as in 40 CFR 82.152. Recovered refrigerant is not a leak, nor is putting it back or a "
                    "first charge; what goes in beyond that is."),
        {}};
}

std::vector<Sentence> ledgerSentences(const UnitLedger& ledger)
{
    std::vector<Sentence> all{balanceSentence(ledger)};
    for (auto& more :
         {rateSentence(ledger), ledger.days.empty() ? std::nullopt : limitSentence(ledger), dutySentence(ledger)}) {
        if (more)
            all.push_back(*more);
    }
    if (ledger.otherRefrigerantOn) {
        all.push_back(
            {PADSIDE_SAY("{0} was put in on {1}, but the nameplate says {2}: refrigerants are never mixed. Find "
                         "out what is in the unit before any more goes in."),
             {ledger.otherRefrigerant, *ledger.otherRefrigerantOn, ledger.refrigerant}});
    }
    return all;
}

} // namespace padside

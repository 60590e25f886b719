// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/flags/rules.h"
#include "core/flags/wording.h"
#include "core/ledger/unit_ledger.h"

#include <algorithm>
#include <iterator>

namespace padside {

namespace {

/// Whether a part that holds the charge was repaired or replaced on that day or later: the leak has been seen to.
bool circuitRepairedSince(const UnitView& unit, Date day)
{
    return std::ranges::any_of(unit.record.treatments, [&](const Treatment& work) {
        const bool repairs = work.kind == TreatmentKind::repair || work.kind == TreatmentKind::replace;
        const Part* part = repairs && work.on >= day ? findPart(unit.record, work.partId) : nullptr;
        const PartKind* kind = part != nullptr ? unit.catalogue.partKind(part->kind) : nullptr;
        return kind != nullptr && kind->consequences.contains(Consequence::lossOfCharge);
    });
}

/// The top-up before the last one, if it was not too long before.
const LedgerDay* topUpBefore(const UnitLedger& ledger, const LedgerDay& last, int months)
{
    const auto before = std::find_if(ledger.days.rbegin(), ledger.days.rend(),
                                     [&](const LedgerDay& day) { return day.on < last.on && day.topUpKg > 0; });
    return before != ledger.days.rend() && addMonths(before->on, months) >= last.on ? &*before : nullptr;
}

/// All that made up for a leak in the season that ends with the last top-up.
double addedInSeason(const UnitLedger& ledger, const LedgerDay& last, double seasonDays)
{
    double added = 0;
    for (const LedgerDay& day : ledger.days) {
        if (day.on <= last.on && static_cast<double>((last.on - day.on).count()) <= seasonDays)
            added += day.topUpKg;
    }
    return added;
}

std::vector<ChargeId> entriesOf(const LedgerDay* before, const LedgerDay& last)
{
    std::vector<ChargeId> entries = before != nullptr ? before->entries : std::vector<ChargeId>{};
    std::ranges::copy(last.entries, std::back_inserter(entries));
    return entries;
}

Sentence againSentence(const LedgerDay& before, const LedgerDay& last)
{
    std::vector<Argument> arguments{Amount{last.topUpKg, QuantityKind::mass}, last.on,
                                    Amount{before.topUpKg, QuantityKind::mass}, before.on};
    if (!last.annualized) {
        return {
            PADSIDE_SAY("Charge added again: {0} on {1}, after {2} on {3}; it leaks. How fast can't be told without "
                        "the nameplate's factory charge."),
            std::move(arguments)};
    }
    arguments.emplace_back(Amount{*last.annualized, QuantityKind::ratio});
    return {PADSIDE_SAY("Charge added again: {0} on {1}, after {2} on {3}; it leaks, {4} of the full charge a year."),
            std::move(arguments)};
}

Sentence muchSentence(const UnitLedger& ledger, const LedgerDay& last, double added)
{
    return {PADSIDE_SAY("Much charge added in one season: {0} up to {1}, {2} of the full charge; it leaks."),
            {Amount{added, QuantityKind::mass}, last.on, Amount{added / *ledger.fullChargeKg, QuantityKind::ratio}}};
}

} // namespace

std::vector<Worry> chargeAddedAgain(const UnitView& unit)
{
    const UnitLedger ledger = unitLedger(unit.record, unit.catalogue, unit.today);
    const LedgerDay* last = ledger.lastTopUp();
    const int months = static_cast<int>(unit.catalogue.assumption("top-up-again-months"));
    if (last == nullptr || addMonths(last->on, months) < unit.today || circuitRepairedSince(unit, last->on))
        return {};
    const LedgerDay* before = topUpBefore(ledger, *last, months);
    const double added = addedInSeason(ledger, *last, unit.catalogue.assumption("top-up-season-days"));
    const bool much
        = ledger.fullChargeKg && added > unit.catalogue.assumption("top-up-season-share") * *ledger.fullChargeKg;
    if (before == nullptr && !much)
        return {};
    const bool thisYear = (unit.today - last->on).count() <= leakYearDays;
    Worry worry;
    worry.severity = ledger.isOverLimit() && thisYear ? Severity::act : Severity::plan;
    worry.sentence = before != nullptr ? againSentence(*before, *last) : muchSentence(ledger, *last, added);
    worry.clears
        = {PADSIDE_SAY("The leak found and the repair or new part entered as work on the part that leaked; or {0} "
                       "months without another addition."),
           {static_cast<std::int64_t>(months)}};
    worry.extent = last->annualized ? *last->annualized : added;
    worry.charges = entriesOf(before, *last);
    return {worry};
}

} // namespace padside

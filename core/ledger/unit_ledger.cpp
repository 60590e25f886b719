// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/unit_ledger.h"

#include "core/ledger/charge_reason.h"
#include "core/ledger/sum_of_masses.h"
#include "core/record/reading_order.h"

#include <algorithm>
#include <map>
#include <ranges>

namespace padside {

namespace {

/// Masses of one day by where they went.
struct Moved
{
    std::vector<double> added;
    std::vector<double> recovered;
    std::vector<double> lost;
};

/// Texts each once, in reading order.
void note(std::vector<std::string>& texts, const std::string& text)
{
    if (!text.empty() && std::ranges::find(texts, text) == texts.end())
        texts.push_back(text);
}

void putInOrder(std::vector<std::string>& texts)
{
    std::ranges::sort(texts, [](const auto& one, const auto& other) { return inReadingOrder(one, other) < 0; });
}

std::optional<double> factoryCharge(const Unit& unit)
{
    for (const NameplateValue& line : unit.nameplate) {
        if (line.item == "charge" && line.value.kind == QuantityKind::mass && isMassMoved(line.value.si)
            && line.value.si > 0)
            return line.value.si;
    }
    return std::nullopt;
}

std::vector<LedgerDay> mergedByDay(const std::vector<ChargeEntry>& entries, const Unit& unit)
{
    std::map<Date, std::pair<LedgerDay, Moved>> byDay;
    for (const ChargeEntry& entry : entries) {
        auto& [day, moved] = byDay[entry.on];
        day.on = entry.on;
        day.entries.push_back(entry.id);
        note(day.cylinders, entry.cylinder);
        note(day.reasons, entry.because);
        switch (entry.direction) {
        case ChargeDirection::added:
            moved.added.push_back(entry.mass.si);
            day.firstCharge = day.firstCharge || isFirstCharge(entry.because)
                || (unit.installedOn && entry.on <= *unit.installedOn);
            break;
        case ChargeDirection::recovered:
            moved.recovered.push_back(entry.mass.si);
            break;
        case ChargeDirection::lost:
            moved.lost.push_back(entry.mass.si);
            break;
        }
    }
    std::vector<LedgerDay> days;
    for (auto& [on, dayAndMoved] : byDay) {
        auto& [day, moved] = dayAndMoved;
        day.addedKg = sumOfMasses(std::move(moved.added));
        day.recoveredKg = sumOfMasses(std::move(moved.recovered));
        day.lostKg = sumOfMasses(std::move(moved.lost));
        putInOrder(day.cylinders);
        putInOrder(day.reasons);
        std::ranges::sort(day.entries);
        days.push_back(std::move(day));
    }
    return days;
}

/// Recovered charge that may still be put back.
class Recovered
{
public:
    explicit Recovered(int daysItCounts)
        : m_daysItCounts(daysItCounts)
    {
    }

    void take(const LedgerDay& day)
    {
        if ((day.on - m_lastOn).count() > m_daysItCounts)
            m_massKg = 0;
        if (day.recoveredKg > 0) {
            m_massKg += day.recoveredKg;
            m_lastOn = day.on;
        }
    }
    /// Of an addition, what is no charge put back; the recovery is used up by it.
    [[nodiscard]] double beyond(double addedKg)
    {
        const double beyond = std::max(0.0, addedKg - m_massKg);
        m_massKg = 0;
        return beyond;
    }

private:
    int m_daysItCounts;
    double m_massKg = 0;
    Date m_lastOn{};
};

void tellLeaks(UnitLedger& ledger, const UnitRecord& record, const Catalogue& catalogue)
{
    Recovered recovered(static_cast<int>(catalogue.assumption("charge-put-back-days")));
    std::vector<TopUp> topUps;
    std::optional<Date> full = record.unit.installedOn; // the last day it is known to have been filled
    for (LedgerDay& day : ledger.days) {
        recovered.take(day);
        if (!(day.addedKg > 0))
            continue;
        const double beyond = recovered.beyond(day.addedKg);
        day.topUpKg = day.firstCharge ? 0 : beyond;
        if (full && *full < day.on)
            day.daysSinceAdded = static_cast<int>((day.on - *full).count());
        full = day.on;
        if (!(day.topUpKg > 0))
            continue;
        topUps.push_back(TopUp{day.on, day.topUpKg});
        if (ledger.fullChargeKg) {
            day.annualized = annualizedLeakRate(day.topUpKg, *ledger.fullChargeKg, day.daysSinceAdded);
            day.rolling = rollingLeakRate(topUps, *ledger.fullChargeKg, day.on);
        }
    }
    if (ledger.fullChargeKg)
        ledger.rollingToday = rollingLeakRate(topUps, *ledger.fullChargeKg, ledger.today);
}

void addUp(UnitLedger& ledger)
{
    for (const LedgerDay& day : ledger.days) {
        ledger.addedKg += day.addedKg;
        ledger.recoveredKg += day.recoveredKg;
        ledger.lostKg += day.lostKg;
        ledger.beyondFullKg = day.firstCharge ? 0 : ledger.beyondFullKg + day.addedKg - day.recoveredKg - day.lostKg;
    }
}

} // namespace

const LedgerDay* UnitLedger::lastTopUp() const
{
    const auto last = std::find_if(days.rbegin(), days.rend(), [](const auto& day) { return day.topUpKg > 0; });
    return last == days.rend() ? nullptr : &*last;
}

bool UnitLedger::isOverLimit() const
{
    const LedgerDay* last = lastTopUp();
    if (last == nullptr || !limit)
        return false;
    return last->annualized.value_or(0) > limit->rate || last->rolling.value_or(0) > limit->rate;
}

UnitLedger unitLedger(const UnitRecord& record, const Catalogue& catalogue, Date today)
{
    UnitLedger ledger;
    ledger.unitId = record.unit.id;
    ledger.today = today;
    ledger.refrigerant = record.unit.refrigerant;
    ledger.fullChargeKg = factoryCharge(record.unit);
    std::vector<ChargeEntry> entries = standing(record.charges);
    std::erase_if(entries, [&](const ChargeEntry& one) { return one.on > today || !isMassMoved(one.mass.si); });
    ledger.days = mergedByDay(entries, record.unit);
    tellLeaks(ledger, record, catalogue);
    addUp(ledger);
    if (ledger.fullChargeKg) {
        const LeakLimit* limit
            = leakLimitFor(catalogue, LeakUse::comfortCooling, ledger.refrigerant, *ledger.fullChargeKg, today);
        if (limit != nullptr)
            ledger.limit = *limit;
    }
    for (const ChargeEntry& entry : entries) {
        const bool conflicts = entry.direction == ChargeDirection::added && !ledger.refrigerant.empty()
            && !entry.refrigerant.empty() && !meansRefrigerant(entry.refrigerant, ledger.refrigerant);
        const auto key = std::pair(entry.on, entry.refrigerant);
        if (conflicts
            && (!ledger.otherRefrigerantOn || key > std::pair(*ledger.otherRefrigerantOn, ledger.otherRefrigerant))) {
            ledger.otherRefrigerant = entry.refrigerant;
            ledger.otherRefrigerantOn = entry.on;
        }
    }
    return ledger;
}

} // namespace padside

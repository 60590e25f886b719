// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/review/overdue_checks.h"

#include <algorithm>
#include <utility>

namespace padside {

double pressureOf(const SeasonCheck& check, Date on)
{
    double most = 0;
    for (const ZoneId zone : check.check().zones) {
        const ZoneRisk* risk = riskOf(check.unit->review.risks, zone);
        if (risk != nullptr && risk->tolerance > 0)
            most = std::max(most, risk->chanceOn(on) / risk->tolerance);
    }
    return most;
}

bool pressesMore(const SeasonCheck& one, const SeasonCheck& other, Date on)
{
    const double pressure = pressureOf(one, on);
    const double otherPressure = pressureOf(other, on);
    return pressure != otherPressure ? pressure > otherPressure : one.check().latest < other.check().latest;
}

OverdueCount overdueCount(std::span<const std::shared_ptr<const ReviewedUnit>> units, Date today)
{
    OverdueCount count;
    for (const auto& unit : units) {
        const auto checks = static_cast<std::size_t>(
            std::ranges::count_if(unit->review.checks, [today](const Check& check) { return check.latest < today; }));
        count.checks += checks;
        count.units += checks > 0 ? 1U : 0U;
    }
    return count;
}

std::vector<OverdueUnit> overdueUnits(std::span<const std::shared_ptr<const ReviewedUnit>> units, Date today)
{
    std::vector<OverdueUnit> all;
    for (const auto& unit : units) {
        std::vector<std::pair<double, SeasonCheck>> pressing;
        for (std::size_t i = 0; i < unit->review.checks.size(); ++i) {
            const SeasonCheck check{unit, i, static_cast<int>((today - unit->review.checks[i].latest).count())};
            if (check.daysLate > 0)
                pressing.emplace_back(pressureOf(check, today), check);
        }
        if (pressing.empty())
            continue;
        std::ranges::stable_sort(pressing, {},
                                 [](const auto& one) { return std::pair(-one.first, one.second.check().latest); });
        OverdueUnit overdue{unit, {}, pressing.front().first};
        for (auto& one : pressing)
            overdue.checks.push_back(std::move(one.second));
        all.push_back(std::move(overdue));
    }
    std::ranges::stable_sort(
        all, {}, [](const OverdueUnit& one) { return std::pair(-one.pressure, one.checks.front().check().latest); });
    return all;
}

} // namespace padside

// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/schedule/next_checks.h"

#include "core/schedule/season.h"

#include <algorithm>
#include <iterator>

namespace padside {

std::vector<Check> nextChecks(const UnitRecord& record, const Catalogue& catalogue, Date today,
                              std::span<const ZoneHistory> zones, std::span<const ZoneRisk> risks)
{
    if (record.unit.retiredOn && *record.unit.retiredOn <= today)
        return {};
    std::vector<Check> checks = promisedChecks(record, catalogue);
    std::ranges::move(zoneChecks(record, catalogue, today, zones, risks), std::back_inserter(checks));
    std::ranges::move(wallChecks(record, catalogue, today), std::back_inserter(checks));
    std::ranges::move(checklistChecks(record, catalogue, today), std::back_inserter(checks));
    std::ranges::stable_sort(checks, {}, [](const Check& check) { return std::pair(check.latest, check.earliest); });
    return checks;
}

Date nextVisitBy(const UnitRecord& record, const Catalogue& catalogue, Date today)
{
    Date by = Date::max();
    for (const Check& check : checklistChecks(record, catalogue, today))
        by = std::min(by, std::max(check.latest, today));
    return by != Date::max() ? by : seasonAfter(record.site, today).window.latest;
}

} // namespace padside

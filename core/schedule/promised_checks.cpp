// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/catalogue/subject.h"
#include "core/schedule/next_checks.h"

#include <algorithm>
#include <sstream>

namespace padside {

namespace {

/// Codes the program doesn't know (a newer file) can't be asked of the day and are left out; the person's words stay.
std::vector<Condition> conditionsIn(const std::string& codes)
{
    std::vector<Condition> conditions;
    std::istringstream words(codes);
    for (std::string word; words >> word;) {
        if (const auto condition = fromCode<Condition>(word))
            conditions.push_back(*condition);
    }
    return conditions;
}

Sentence whyOf(const UnitRecord& record, const FollowUp& promise)
{
    const Visit* visit = findVisit(record, promise.madeAt);
    if (promise.why.empty() && visit != nullptr)
        return Sentence{PADSIDE_SAY("Promised on {0}."), {visit->on}};
    if (visit != nullptr)
        return Sentence{PADSIDE_SAY("Promised on {0}: {1}"), {visit->on, promise.why}};
    return Sentence{PADSIDE_SAY("Promised: {0}"), {promise.why}};
}

} // namespace

std::vector<Check> promisedChecks(const UnitRecord& record, const Catalogue& catalogue)
{
    std::vector<Check> checks;
    for (const FollowUp& promise : record.followUps) {
        const Part* part = promise.zoneId ? partOfZone(record, *promise.zoneId) : nullptr;
        const Zone* zone = promise.zoneId ? findZone(record, *promise.zoneId) : nullptr;
        if (promise.settledAt || (part != nullptr && part->removedOn))
            continue;
        Check check;
        check.unitId = record.unit.id;
        check.followUpId = promise.id;
        check.zoneId = promise.zoneId;
        if (promise.zoneId)
            check.zones = {*promise.zoneId};
        if (part != nullptr) {
            check.partId = part->id;
            check.what
                = about(subjectOf(record, catalogue, *part, zone), PADSIDE_SAY("{0}{1}, {2}: look again as promised"));
        } else {
            check.what = Sentence{PADSIDE_SAY("Look again as promised"), {}};
        }
        check.earliest = std::min(promise.earliest, promise.latest);
        check.latest = promise.latest;
        check.conditions = conditionsIn(promise.conditions);
        check.why = whyOf(record, promise);
        checks.push_back(std::move(check));
    }
    return checks;
}

} // namespace padside

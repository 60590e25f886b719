// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/flags/raise_flags.h"
#include "tests/support/record_builder.h"
#include "tests/support/small_catalogue.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace padside::test {

/// The flags raised over a record on a day, with the small catalogue; those about chances left out.
[[nodiscard]] inline std::vector<Flag> raised(const RecordBuilder& builder, const std::string& today,
                                              const std::string& ownChanges = {})
{
    const UnitRecord record = builder.build();
    return raiseFlags(record, smallCatalogue(ownChanges), day(today), zoneHistories(record), {});
}

/// The flag of one rule, if it was raised.
[[nodiscard]] inline std::optional<Flag> raisedBy(const std::string& rule, const RecordBuilder& builder,
                                                  const std::string& today = "2026-06-01",
                                                  const std::string& ownChanges = {})
{
    for (const Flag& flag : raised(builder, today, ownChanges)) {
        if (flag.rule == rule)
            return flag;
    }
    return std::nullopt;
}

/// A unit with a suction accumulator whose bottom is looked at.
[[nodiscard]] inline RecordBuilder anAccumulator()
{
    return aUnit("HB-01").withPart("suction-accumulator", {"bottom"});
}

/// The grades of the findings a flag rests on, in its order; 0 where one is "not seen". A finding that does not exist
/// throws.
[[nodiscard]] inline std::vector<int> gradesOfEvidence(const Flag& flag, const RecordBuilder& builder)
{
    std::vector<int> grades;
    const UnitRecord record = builder.build();
    for (const FindingId id : flag.evidence) {
        const auto finding = std::ranges::find(record.findings, id, &Finding::id);
        if (finding == record.findings.end())
            throw std::out_of_range("the evidence is not in the record");
        grades.push_back(finding->grade() ? numeral(*finding->grade()) : 0);
    }
    return grades;
}

} // namespace padside::test

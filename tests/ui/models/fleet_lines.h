// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/review/reviewed_fleet.h"
#include "core/store/record_reader.h"

namespace padside::test {

/// A fleet written down line by line: what the file's list says, and what a review would add.
class FleetLines
{
public:
    static constexpr Date today{std::chrono::year{2026} / std::chrono::May / 4};

    FleetLines& unit(const std::string& tag, int site, int worstGrade); ///< 0: nothing was ever seen
    FleetLines& kind(const std::string& code); ///< of the unit entered last, as all below
    FleetLines& installed(Date day);
    FleetLines& visited(Date day);
    FleetLines& retired();
    FleetLines& flag(Severity severity, const std::string& says);
    FleetLines& check(Date latest);

    [[nodiscard]] const std::vector<UnitLine>& lines() const { return m_lines; }
    [[nodiscard]] std::shared_ptr<const ReviewedFleet> reviewed() const;
    [[nodiscard]] UnitId id(const std::string& tag) const;

    [[nodiscard]] static SiteId site(int number);

private:
    std::vector<UnitLine> m_lines;
    std::vector<ReviewedUnit> m_reviewed; ///< in the same order
};

} // namespace padside::test
